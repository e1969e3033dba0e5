import type { STOCK_MOVES } from '../../shared/book/tables/stockMoves.ts';
import type { TradeRow } from '../../shared/book/tradeRow.ts';

/** Invented movements, each in the material's pack unit; money in the workbook's currency. */
// biome-ignore format: one row a line
export const DEMO_STOCK_MOVES: readonly TradeRow<typeof STOCK_MOVES>[] = [
  { date: '2026-10-19', material: 'Plastisol medium', lot: 'PM-2610', amount: 5, reason: 'purchase', money: 310 },
  { date: '2026-10-19', material: 'Plastisol soft', lot: 'PS-2609', amount: 2, reason: 'purchase', money: 124 },
  { date: '2026-10-19', material: 'Heat stabilizer', lot: 'HS-2606', amount: 8, reason: 'purchase', money: 14 },
  { date: '2026-10-20', material: 'Black', lot: 'C-0117', amount: 4, reason: 'purchase', money: 9.5 },
  { date: '2026-10-20', material: 'White', lot: 'C-0121', amount: 4, reason: 'purchase', money: 9.5 },
  { date: '2026-10-20', material: 'Brown', lot: 'C-0109', amount: 4, reason: 'purchase', money: 9.5 },
  { date: '2026-10-20', material: 'Pearl white mica', lot: 'M-31', amount: 4, reason: 'purchase', money: 13 },
  { date: '2026-10-20', material: 'Copper mica', lot: 'M-34', amount: 4, reason: 'purchase', money: 14 },
  { date: '2026-10-22', material: 'Fine silver glitter', lot: 'G-12', amount: 4, reason: 'purchase', money: 11 },
  { date: '2026-10-22', material: 'Zip bag, 4 x 6 in', amount: 500, reason: 'purchase', money: 31 },
  { date: '2026-10-22', material: 'Bag label', amount: 1000, reason: 'purchase', money: 26 },
  { date: '2026-11-03', material: 'Plastisol medium', lot: 'PM-2610', amount: -0.45, reason: 'used', order: '1001', run: 'R-1001' },
  { date: '2026-11-05', material: 'Plastisol medium', lot: 'PM-2610', amount: -0.35, reason: 'used', order: '1002', run: 'R-1002' },
  { date: '2026-11-05', material: 'Plastisol medium', lot: 'PM-2610', amount: -0.06, reason: 'scrapped', order: '1002', run: 'R-1002', notes: 'Scorched cup.' },
  { date: '2026-11-06', material: 'Zip bag, 4 x 6 in', amount: -15, reason: 'used', order: '1001' },
  { date: '2026-11-06', material: 'Bag label', amount: -15, reason: 'used', order: '1001' },
  { date: '2026-11-09', material: 'Zip bag, 4 x 6 in', amount: -10, reason: 'used', order: '1002' },
  { date: '2026-11-10', material: 'Plastisol medium', lot: 'PM-2610', amount: -0.41, reason: 'used', order: '1003', run: 'R-1003' },
  { date: '2026-11-10', material: 'Copper mica', lot: 'M-34', amount: -0.25, reason: 'used', order: '1003', run: 'R-1003' },
  { date: '2026-11-13', material: 'Plastisol medium', lot: 'PM-2610', amount: -0.34, reason: 'used', order: '1004', run: 'R-1004' },
  { date: '2026-11-14', material: 'Zip bag, 4 x 6 in', amount: 468, reason: 'counted', notes: '475 expected, 468 on the shelf.' },
  { date: '2026-11-16', material: 'Zip bag, 4 x 6 in', amount: -16, reason: 'used', order: '1003' },
  { date: '2026-11-19', material: 'Plastisol soft', lot: 'PS-2609', amount: -0.31, reason: 'used', order: '1005', run: 'R-1005' },
  { date: '2026-11-24', material: 'Plastisol medium', lot: 'PM-2610', amount: -0.34, reason: 'used', order: '1006', run: 'R-1006' },
  { date: '2026-11-27', material: 'Plastisol medium', lot: 'PM-2611', amount: 2, reason: 'purchase', money: 124, notes: 'New lot; open it when PM-2610 is gone.' },
];
