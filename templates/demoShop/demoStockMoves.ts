import { type TypedLine, type TypedRow, typedRows } from '../../shared/book/layout/typedRow.ts';
import type { STOCK_MOVES } from '../../shared/book/tables/stockMoves.ts';

/** What stands in a line, in order. */
const COLUMNS = [
  'date',
  'material',
  'lot',
  'amount',
  'reason',
  'order',
  'run',
  'money',
  'entry',
  'notes',
] as const;

// biome-ignore format: one row a line
const LINES: readonly TypedLine<typeof STOCK_MOVES, typeof COLUMNS>[] = [
  ['2026-10-19', 'Plastisol medium', 'PM-2610', 2, 'purchase', null, null, 124],
  ['2026-10-19', 'Plastisol soft', 'PS-2609', 2, 'purchase', null, null, 124],
  ['2026-10-19', 'Softener', 'SO-2604', 32, 'purchase', null, null, 24],
  ['2026-10-19', 'Hardener', 'HA-2604', 16, 'purchase', null, null, 19.5],
  ['2026-10-19', 'Heat stabilizer', 'HS-2606', 8, 'purchase', null, null, 14],
  ['2026-10-20', 'Black', 'C-0117', 4, 'purchase', null, null, 9.5],
  ['2026-10-20', 'White', 'C-0121', 4, 'purchase', null, null, 9.5],
  ['2026-10-20', 'Brown', 'C-0109', 4, 'purchase', null, null, 9.5],
  ['2026-10-20', 'Green', 'C-0112', 4, 'purchase', null, null, 9.5],
  ['2026-10-20', 'Blue', 'C-0113', 4, 'purchase', null, null, 9.5],
  ['2026-10-20', 'Red', 'C-0098', 4, 'purchase', null, null, 9.5],
  ['2026-10-20', 'Yellow', 'C-0104', 4, 'purchase', null, null, 9.5],
  ['2026-10-20', 'Pearl white mica', 'M-31', 4, 'purchase', null, null, 13],
  ['2026-10-20', 'Copper mica', 'M-34', 4, 'purchase', null, null, 14],
  ['2026-10-22', 'Fine silver glitter', 'G-12', 4, 'purchase', null, null, 11],
  ['2026-10-22', 'Fine black glitter', 'G-15', 4, 'purchase', null, null, 11],
  ['2026-10-22', 'Fine salt', 'S-2', 5, 'purchase', null, null, 4.5],
  ['2026-10-22', 'Worm hook, size 4', null, 200, 'purchase', null, null, 56],
  ['2026-10-22', 'Nail weight, 1/16 oz', null, 100, 'purchase', null, null, 18],
  ['2026-10-22', 'Zip bag, 4 x 6 in', null, 500, 'purchase', null, null, 31],
  ['2026-10-22', 'Bag label', null, 1000, 'purchase', null, null, 26],
  ['2026-11-03', 'Plastisol medium', 'PM-2610', -0.45, 'used', '1001', 'R-1001'],
  ['2026-11-03', 'Black', 'C-0117', -0.06, 'used', '1001', 'R-1001'],
  ['2026-11-05', 'Plastisol medium', 'PM-2610', -0.35, 'used', '1002', 'R-1002'],
  ['2026-11-05', 'Plastisol medium', 'PM-2610', -0.06, 'scrapped', '1002', 'R-1002', null, null, 'Scorched cup.'],
  ['2026-11-06', 'Zip bag, 4 x 6 in', null, -15, 'used', '1001'],
  ['2026-11-06', 'Bag label', null, -15, 'used', '1001'],
  ['2026-11-09', 'Zip bag, 4 x 6 in', null, -10, 'used', '1002'],
  ['2026-11-09', 'Plastisol medium', 'PM-2611', 2, 'purchase', null, null, 131, null, 'New lot, dearer; open it when PM-2610 is gone.'],
  ['2026-11-10', 'Plastisol medium', 'PM-2610', -0.41, 'used', '1003', 'R-1003'],
  ['2026-11-10', 'Copper mica', 'M-34', -0.25, 'used', '1003', 'R-1003'],
  ['2026-11-13', 'Plastisol medium', 'PM-2610', -0.34, 'used', '1004', 'R-1004'],
  ['2026-11-13', 'Worm hook, size 4', null, -66, 'used', '1004', 'R-1004'],
  ['2026-11-14', 'Zip bag, 4 x 6 in', null, 468, 'counted', null, null, null, null, '475 expected, 468 on the shelf.'],
  ['2026-11-16', 'Zip bag, 4 x 6 in', null, -16, 'used', '1003'],
  ['2026-11-19', 'Plastisol soft', 'PS-2609', -0.31, 'used', '1005', 'R-1005'],
  ['2026-11-19', 'Nail weight, 1/16 oz', null, -53, 'used', '1005', 'R-1005'],
  ['2026-11-24', 'Plastisol medium', 'PM-2610', -0.34, 'used', '1006', 'R-1006'],
  ['2026-11-24', 'Plastisol medium', 'PM-2611', -0.02, 'used', '1006', 'R-1006'],
  ['2026-11-27', 'Plastisol soft', 'PS-2609', 0.09, 'counted', null, null, null, null, 'A jug had been left open and set; three pours were not written down.'],
  ['2026-11-28', 'Copper mica', 'M-34', 3.8, 'counted', null, null, null, null, 'Weighed with its jar: a little more than expected.'],
];

/** Invented movements, each in the material's pack unit; money in the workbook's currency. */
export function demoStockMoves(): readonly TypedRow<typeof STOCK_MOVES>[] {
  return typedRows<typeof STOCK_MOVES, typeof COLUMNS>(COLUMNS, LINES);
}
