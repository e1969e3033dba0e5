import type { RecordOf } from './column.ts';
import { BENCH_TRIALS } from './tables/benchTrials.ts';
import { CLOSED_MONTHS } from './tables/closedMonths.ts';
import { DOSES } from './tables/doses.ts';
import { HEAT_TRIALS } from './tables/heatTrials.ts';
import { MATERIALS } from './tables/materials.ts';
import { MEASURED_FIGURES } from './tables/measuredFigures.ts';
import { MOLDS } from './tables/molds.ts';
import { ORDERS } from './tables/orders.ts';
import { PATTERNS } from './tables/patterns.ts';
import { PAYMENTS } from './tables/payments.ts';
import { PEOPLE } from './tables/people.ts';
import { PLATES } from './tables/plates.ts';
import { POUR_LOG } from './tables/pourLog.ts';
import { QUOTES } from './tables/quotes.ts';
import { STOCK_MOVES } from './tables/stockMoves.ts';
import { SUPPLIES } from './tables/supplies.ts';

/** Every table of the book, in the order of its sheets. *Shop* stands before them, generated sheets after. */
export const TABLES = {
  orders: ORDERS,
  molds: MOLDS,
  patterns: PATTERNS,
  doses: DOSES,
  materials: MATERIALS,
  supplies: SUPPLIES,
  plates: PLATES,
  people: PEOPLE,
  pourLog: POUR_LOG,
  heatTrials: HEAT_TRIALS,
  benchTrials: BENCH_TRIALS,
  measuredFigures: MEASURED_FIGURES,
  quotes: QUOTES,
  stockMoves: STOCK_MOVES,
  payments: PAYMENTS,
  closedMonths: CLOSED_MONTHS,
} as const;

export type TableKey = keyof typeof TABLES;

export type OrderRecord = RecordOf<typeof ORDERS>;
export type MoldRecord = RecordOf<typeof MOLDS>;
export type PatternRecord = RecordOf<typeof PATTERNS>;
export type DoseRecord = RecordOf<typeof DOSES>;
export type MaterialRecord = RecordOf<typeof MATERIALS>;
export type SupplyRecord = RecordOf<typeof SUPPLIES>;
export type PlateRecord = RecordOf<typeof PLATES>;
export type PourLogRecord = RecordOf<typeof POUR_LOG>;
export type MeasuredFigureRecord = RecordOf<typeof MEASURED_FIGURES>;
export type PaymentRecord = RecordOf<typeof PAYMENTS>;
export type ClosedMonthRecord = RecordOf<typeof CLOSED_MONTHS>;
