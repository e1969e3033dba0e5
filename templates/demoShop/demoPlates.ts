import { type TypedLine, type TypedRow, typedRows } from '../../shared/book/layout/typedRow.ts';
import type { PLATES } from '../../shared/book/tables/plates.ts';

/** What stands in a line, in order. */
const COLUMNS = [
  'plate',
  'kind',
  'usableLength',
  'usableWidth',
  'watts',
  'lowestSetting',
  'highestSetting',
  'warmUp',
  'contactConductance',
  'deadBand',
  'lid',
  'dialOffset',
  'circuit',
  'notes',
] as const;

// biome-ignore format: one row a line
const LINES: readonly TypedLine<typeof PLATES, typeof COLUMNS>[] = [
  ['Griddle A', 'thin griddle', 20, 10, 1500, 200, 400, 9, 96, 30, 'none', null, 'Bench', 'Conductance guessed. Left rear corner runs cool.'],
  ['Bench plate B', 'flat thick plate', 18, 12, 1800, 150, 450, 14, null, 8, 'lid', -6, 'Island', 'Surface read with the probe, 6 °F below the dial.'],
];

/** Invented plates. Inches, watts, °F, minutes. */
export function demoPlates(): readonly TypedRow<typeof PLATES>[] {
  return typedRows<typeof PLATES, typeof COLUMNS>(COLUMNS, LINES);
}
