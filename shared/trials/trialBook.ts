import type { Book, TRIAL_TABLES } from '../book/book.ts';
import { type BookIndex, indexBook } from '../book/bookIndex.ts';
import type { Row } from '../book/reading/readTable.ts';
import type { TABLES } from '../book/tables.ts';

export type HeatTrialRow = Row<typeof TABLES.heatTrials>;
export type BenchTrialRow = Row<typeof TABLES.benchTrials>;
export type MeasuredFigureRow = Row<typeof TABLES.measuredFigures>;

/** What the shop measured, and what the measurements are of; engine units. */
export interface TrialBook {
  /** Molds, materials and plates by name, and what is wrong on every sheet that was read. */
  readonly index: BookIndex;
  readonly heatTrials: readonly HeatTrialRow[];
  readonly benchTrials: readonly BenchTrialRow[];
  readonly measuredFigures: readonly MeasuredFigureRow[];
}

/** The trials of a book beside its look-ups. */
export function trialBook(book: Book<(typeof TRIAL_TABLES)[number]>): TrialBook {
  const { heatTrials, benchTrials, measuredFigures } = book;
  return { index: indexBook(book), heatTrials, benchTrials, measuredFigures };
}
