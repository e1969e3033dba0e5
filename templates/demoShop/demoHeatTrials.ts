import { type TypedLine, type TypedRow, typedRows } from '../../shared/book/layout/typedRow.ts';
import type { HEAT_TRIALS } from '../../shared/book/tables/heatTrials.ts';

/** What stands in a line, in order. */
const COLUMNS = [
  'trial',
  'date',
  'mold',
  'plate',
  'setting',
  'minutes',
  'topTemperature',
  'roomTemperature',
  'notes',
] as const;

// biome-ignore format: one row a line
const LINES: readonly TypedLine<typeof HEAT_TRIALS, typeof COLUMNS>[] = [
  ['T-1', '2026-10-30', 'Round stick 5 in', 'Griddle A', 270, 5, 81, 68, 'Probe on the face, no draft.'],
  ['T-1', '2026-10-30', 'Round stick 5 in', 'Griddle A', 270, 10, 122],
  ['T-1', '2026-10-30', 'Round stick 5 in', 'Griddle A', 270, 15, 161],
  ['T-1', '2026-10-30', 'Round stick 5 in', 'Griddle A', 270, 20, 187],
  ['T-1', '2026-10-30', 'Round stick 5 in', 'Griddle A', 270, 30, 212],
  ['T-1', '2026-10-30', 'Round stick 5 in', 'Griddle A', 270, 45, 227],
  ['T-2', '2026-10-31', 'Split minnow 4 in', 'Bench plate B', 235, 5, 98, 68, 'Infrared on matt tape.'],
  ['T-2', '2026-10-31', 'Split minnow 4 in', 'Bench plate B', 235, 10, 149],
  ['T-2', '2026-10-31', 'Split minnow 4 in', 'Bench plate B', 235, 15, 201],
  ['T-2', '2026-10-31', 'Split minnow 4 in', 'Bench plate B', 235, 20, 215],
  ['T-2', '2026-10-31', 'Split minnow 4 in', 'Bench plate B', 235, 30, 223],
  ['T-3', '2026-11-06', 'Wedge tail 4.5 in', 'Griddle A', 280, 5, 78, 64, 'Probe on the face; a cool morning.'],
  ['T-3', '2026-11-06', 'Wedge tail 4.5 in', 'Griddle A', 280, 10, 121],
  ['T-3', '2026-11-06', 'Wedge tail 4.5 in', 'Griddle A', 280, 15, 161],
  ['T-3', '2026-11-06', 'Wedge tail 4.5 in', 'Griddle A', 280, 25, 205],
  ['T-3', '2026-11-06', 'Wedge tail 4.5 in', 'Griddle A', 280, 40, 234],
];

/** Invented readings, °F and minutes after switching on: griddle A as if its contact were 85 W/m2K, give or take a probe. */
export function demoHeatTrials(): readonly TypedRow<typeof HEAT_TRIALS>[] {
  return typedRows<typeof HEAT_TRIALS, typeof COLUMNS>(COLUMNS, LINES);
}
