import type { HEAT_TRIALS } from '../../shared/book/tables/heatTrials.ts';
import { type TradeLine, type TradeRow, tradeRows } from '../../shared/book/tradeRow.ts';

/** What stands in a line, in order. */
const COLUMNS = [
  'trial',
  'date',
  'mold',
  'plate',
  'setting',
  'minutes',
  'topTemperature',
  'notes',
] as const;

// biome-ignore format: one row a line
const LINES: readonly TradeLine<typeof HEAT_TRIALS, typeof COLUMNS>[] = [
  ['T-1', '2026-10-30', 'Round stick 5 in', 'Griddle A', 270, 5, 87, 'Probe on the face, no lid, no draft.'],
  ['T-1', '2026-10-30', 'Round stick 5 in', 'Griddle A', 270, 10, 130],
  ['T-1', '2026-10-30', 'Round stick 5 in', 'Griddle A', 270, 15, 171],
  ['T-1', '2026-10-30', 'Round stick 5 in', 'Griddle A', 270, 20, 193],
  ['T-1', '2026-10-30', 'Round stick 5 in', 'Griddle A', 270, 30, 221],
  ['T-2', '2026-10-31', 'Split minnow 4 in', 'Bench plate B', 235, 5, 92, 'Infrared on matt tape.'],
  ['T-2', '2026-10-31', 'Split minnow 4 in', 'Bench plate B', 235, 10, 143],
  ['T-2', '2026-10-31', 'Split minnow 4 in', 'Bench plate B', 235, 15, 194],
  ['T-2', '2026-10-31', 'Split minnow 4 in', 'Bench plate B', 235, 20, 218],
  ['T-2', '2026-10-31', 'Split minnow 4 in', 'Bench plate B', 235, 30, 227],
];

/** Invented readings. °F and minutes after switching on. */
export function demoHeatTrials(): readonly TradeRow<typeof HEAT_TRIALS>[] {
  return tradeRows<typeof HEAT_TRIALS, typeof COLUMNS>(COLUMNS, LINES);
}
