import { type TypedLine, type TypedRow, typedRows } from '../../shared/book/layout/typedRow.ts';
import type { BENCH_TRIALS } from '../../shared/book/tables/benchTrials.ts';

/** What stands in a line, in order. */
const COLUMNS = [
  'trial',
  'date',
  'kind',
  'material',
  'weight',
  'drops',
  'startTemperature',
  'endTemperature',
  'seconds',
  'tiltEvery',
  'layerThickness',
  'moldTop',
  'cupTemperature',
  'notes',
] as const;

// biome-ignore format: one row a line
const LINES: readonly TypedLine<typeof BENCH_TRIALS, typeof COLUMNS>[] = [
  ['B-1', '2026-11-02', 'puck', 'Plastisol medium', null, null, null, null, 38, 4, 0.12, 140, 330, 'Flat face of the round stick mold.'],
  ['B-1', '2026-11-02', 'puck', 'Plastisol medium', null, null, null, null, 45, 4, 0.12, 158, 328],
  ['B-1', '2026-11-02', 'puck', 'Plastisol medium', null, null, null, null, 31, 4, 0.12, 115, 331],
  ['B-2', '2026-11-02', 'microwave', null, 185, null, 68, 152, 45, null, null, null, null, 'Stirred half a minute before reading.'],
  ['B-2', '2026-11-02', 'microwave', null, 184, null, 69, 158, 45],
  ['B-3', '2026-11-06', 'drops', 'Black', 2.31, 50],
  ['B-3', '2026-11-06', 'drops', 'Black', 2.28, 50],
];

/** Invented measurements. Grams, °F, seconds, inches. */
export function demoBenchTrials(): readonly TypedRow<typeof BENCH_TRIALS>[] {
  return typedRows<typeof BENCH_TRIALS, typeof COLUMNS>(COLUMNS, LINES);
}
