import type { HEAT_TRIALS } from '../../shared/book/tables/heatTrials.ts';
import type { TradeRow } from '../../shared/book/tradeRow.ts';

/** Invented readings. °F and minutes after switching on. */
// biome-ignore format: one row a line
export const DEMO_HEAT_TRIALS: readonly TradeRow<typeof HEAT_TRIALS>[] = [
  { trial: 'T-1', date: '2026-10-30', mold: 'Round stick 5 in', plate: 'Griddle A', setting: 270, minutes: 5, topTemperature: 87, notes: 'Probe on the face, no lid, no draft.' },
  { trial: 'T-1', date: '2026-10-30', mold: 'Round stick 5 in', plate: 'Griddle A', setting: 270, minutes: 10, topTemperature: 130 },
  { trial: 'T-1', date: '2026-10-30', mold: 'Round stick 5 in', plate: 'Griddle A', setting: 270, minutes: 15, topTemperature: 171 },
  { trial: 'T-1', date: '2026-10-30', mold: 'Round stick 5 in', plate: 'Griddle A', setting: 270, minutes: 20, topTemperature: 193 },
  { trial: 'T-1', date: '2026-10-30', mold: 'Round stick 5 in', plate: 'Griddle A', setting: 270, minutes: 30, topTemperature: 221 },
  { trial: 'T-2', date: '2026-10-31', mold: 'Split minnow 4 in', plate: 'Bench plate B', setting: 235, minutes: 5, topTemperature: 92, notes: 'Infrared on matt tape.' },
  { trial: 'T-2', date: '2026-10-31', mold: 'Split minnow 4 in', plate: 'Bench plate B', setting: 235, minutes: 10, topTemperature: 143 },
  { trial: 'T-2', date: '2026-10-31', mold: 'Split minnow 4 in', plate: 'Bench plate B', setting: 235, minutes: 15, topTemperature: 194 },
  { trial: 'T-2', date: '2026-10-31', mold: 'Split minnow 4 in', plate: 'Bench plate B', setting: 235, minutes: 20, topTemperature: 218 },
  { trial: 'T-2', date: '2026-10-31', mold: 'Split minnow 4 in', plate: 'Bench plate B', setting: 235, minutes: 30, topTemperature: 227 },
];
