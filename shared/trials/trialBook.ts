import type { Book } from '../book/book.ts';
import { type BookIndex, indexBook } from '../book/bookIndex.ts';
import type { CellValue } from '../book/reading/parseCell.ts';
import { type Row, readTable } from '../book/reading/readTable.ts';
import { readShop } from '../book/settings/readShop.ts';
import { TABLES } from '../book/tables.ts';

/** The tables that trials, torn joints and their figures live in. */
export const TRIAL_TABLES = [
  'orders',
  'molds',
  'patterns',
  'doses',
  'materials',
  'plates',
  'pourLog',
  'heatTrials',
  'benchTrials',
  'measuredFigures',
] as const;

/** Raw cells of each sheet, heading row first. */
export type TrialCells = Readonly<
  Record<(typeof TRIAL_TABLES)[number] | 'shop', readonly (readonly CellValue[])[]>
>;

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

/** Reads the sheets of trials; what cannot be read is listed in the index's problems. */
export function readTrialBook(cells: TrialCells): TrialBook {
  const { shop, problems } = readShop(cells.shop);
  const orders = readTable(TABLES.orders, cells.orders);
  const molds = readTable(TABLES.molds, cells.molds);
  const patterns = readTable(TABLES.patterns, cells.patterns);
  const doses = readTable(TABLES.doses, cells.doses);
  const materials = readTable(TABLES.materials, cells.materials);
  const plates = readTable(TABLES.plates, cells.plates);
  const pourLog = readTable(TABLES.pourLog, cells.pourLog);
  const heatTrials = readTable(TABLES.heatTrials, cells.heatTrials);
  const benchTrials = readTable(TABLES.benchTrials, cells.benchTrials);
  const measuredFigures = readTable(TABLES.measuredFigures, cells.measuredFigures);
  const own = [molds, materials, plates, heatTrials, benchTrials, measuredFigures];
  const reads = [...own, orders, patterns, doses, pourLog];
  const book: Book = {
    shop,
    orders: orders.rows,
    molds: molds.rows,
    patterns: patterns.rows,
    doses: doses.rows,
    materials: materials.rows,
    plates: plates.rows,
    pourLog: pourLog.rows,
    problems: [...problems, ...reads.flatMap((read) => read.problems)],
  };
  return {
    index: indexBook(book),
    heatTrials: heatTrials.rows,
    benchTrials: benchTrials.rows,
    measuredFigures: measuredFigures.rows,
  };
}
