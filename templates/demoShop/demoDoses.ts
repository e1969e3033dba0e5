import { type TypedLine, type TypedRow, typedRows } from '../../shared/book/layout/typedRow.ts';
import type { DOSES } from '../../shared/book/tables/doses.ts';

/** What stands in a line, in order. */
const COLUMNS = [
  'pattern',
  'version',
  'layer',
  'material',
  'amount',
  'unit',
  'per',
  'notes',
] as const;

// biome-ignore format: one row a line
const LINES: readonly TypedLine<typeof DOSES, typeof COLUMNS>[] = [
  ['Slate over pearl', 1, 'belly', 'Pearl white mica', 0.5, 'tsp', 8],
  ['Slate over pearl', 1, 'back', 'Black', 4, 'drop', 8],
  ['Slate over pearl', 1, 'back', 'Fine silver glitter', 0.25, 'tsp', 8],
  ['Moss over sand', 1, 'belly', 'Brown', 6, 'drop', 8],
  ['Moss over sand', 1, 'belly', 'Yellow', 4, 'drop', 8],
  ['Moss over sand', 1, 'belly', 'Fine salt', 20, 'g', 8],
  ['Moss over sand', 1, 'back', 'Green', 10, 'drop', 8],
  ['Moss over sand', 1, 'back', 'Black', 2, 'drop', 8],
  ['Dusk line', 1, 'belly', 'White', 12, 'drop', 8],
  ['Dusk line', 1, 'belly', 'Heat stabilizer', 1.5, 'mL', 8],
  ['Dusk line', 1, 'line', 'Blue', 6, 'drop', 8],
  ['Dusk line', 1, 'line', 'Red', 4, 'drop', 8],
  ['Dusk line', 1, 'back', 'Black', 4, 'drop', 8],
  ['Dusk line', 1, 'back', 'Fine black glitter', 0.25, 'tsp', 8],
  ['Dusk line', 2, 'belly', 'White', 10, 'drop', 8],
  ['Dusk line', 2, 'belly', 'Pearl white mica', 0.125, 'tsp', 8],
  ['Dusk line', 2, 'belly', 'Heat stabilizer', 1.5, 'mL', 8],
  ['Dusk line', 2, 'line', 'Blue', 8, 'drop', 8],
  ['Dusk line', 2, 'line', 'Red', 4, 'drop', 8],
  ['Dusk line', 2, 'back', 'Black', 5, 'drop', 8],
  ['Copper vein', 1, 'belly', 'Brown', 4, 'drop', 8],
  ['Copper vein', 1, 'belly', 'Copper mica', 0.25, 'tsp', 8],
  ['Copper vein', 1, 'vein', 'Copper mica', 1, 'tsp', 8],
  ['Copper vein', 1, 'back', 'Brown', 12, 'drop', 8],
  ['Copper vein', 1, 'back', 'Black', 2, 'drop', 8],
  ['Copper vein', 1, 'back', 'Copper mica', 0.125, 'tsp', 8, 'The vein, faintly again.'],
  ['River stone', 1, 'belly', 'White', 8, 'drop', 8],
  ['River stone', 1, 'belly', 'Heat stabilizer', 1.5, 'mL', 8],
  ['River stone', 1, 'stone', 'Black', 3, 'drop', 8],
  ['River stone', 1, 'stone', 'White', 2, 'drop', 8],
  ['River stone', 1, 'line', 'Brown', 8, 'drop', 8],
  ['River stone', 1, 'back', 'Green', 8, 'drop', 8],
  ['River stone', 1, 'back', 'Black', 2, 'drop', 8],
  ['River stone', 1, 'back', 'Fine black glitter', 0.25, 'tsp', 8],
  ['Night glass', 1, 'belly', 'Blue', 3, 'drop', 8],
  ['Night glass', 1, 'core', 'Fine silver glitter', 0.5, 'tsp', 8],
  ['Night glass', 1, 'back', 'Black', 8, 'drop', 8],
  ['Night glass', 1, 'back', 'Blue', 4, 'drop', 8],
];

/** Invented recipes, each amount for 8 fl oz of base. Four drops of black in 8 fl oz of clear give dark gray: common practice, no source. */
export function demoDoses(): readonly TypedRow<typeof DOSES>[] {
  return typedRows<typeof DOSES, typeof COLUMNS>(COLUMNS, LINES);
}
