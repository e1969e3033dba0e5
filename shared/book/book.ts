import type { CellValue } from './reading/parseCell.ts';
import { type CellProblem, type Row, readTable, type TableRead } from './reading/readTable.ts';
import { readShop } from './settings/readShop.ts';
import type { Shop } from './settings/settings.ts';
import { TABLES, type TableKey } from './tables.ts';

/** The tables a plan is made from. */
export const PLAN_TABLES = [
  'orders',
  'molds',
  'patterns',
  'doses',
  'materials',
  'plates',
  'pourLog',
] as const;
/** The tables that the cost of an order is made from. */
export const MONEY_TABLES = [...PLAN_TABLES, 'supplies', 'stockMoves'] as const;
/** The tables that a quote is made and accepted with. */
export const QUOTE_TABLES = [...MONEY_TABLES, 'quotes'] as const;
/** The tables that sales, taxes and receivables are made from. */
export const BOOKS_TABLES = [...MONEY_TABLES, 'payments', 'closedMonths'] as const;
/** The tables that a pour day is planned from. */
export const DAY_TABLES = [...PLAN_TABLES, 'people'] as const;
/** The tables that trials, torn joints and measured figures live in. */
export const TRIAL_TABLES = [
  ...PLAN_TABLES,
  'heatTrials',
  'benchTrials',
  'measuredFigures',
] as const;

/** Tables that came later: a workbook without the sheet has no rows of it, which is no problem. */
const LATER: ReadonlySet<TableKey> = new Set<TableKey>([
  'supplies',
  'stockMoves',
  'quotes',
  'payments',
  'closedMonths',
  'people',
]);

type PlanTable = (typeof PLAN_TABLES)[number];

/** Raw cells of sheets, heading row first, as one read of each from the platform gives them; a sheet that is not there has none. */
export type BookCells<Key extends TableKey = PlanTable> = Readonly<
  Record<Key | 'shop', readonly (readonly CellValue[])[]>
>;

/** Tables of the workbook as records in engine units, with the shop's settings; those of a plan where no others are named. */
export type Book<Key extends TableKey = PlanTable> = {
  readonly [Each in Key]: readonly Row<(typeof TABLES)[Each]>[];
} & {
  readonly shop: Shop;
  /** Cells that were refused, and columns that are missing. */
  readonly problems: readonly CellProblem[];
};

export type MoneyBook = Book<(typeof MONEY_TABLES)[number]>;
export type QuoteBook = Book<(typeof QUOTE_TABLES)[number]>;
export type BooksBook = Book<(typeof BOOKS_TABLES)[number]>;
export type DayBook = Book<(typeof DAY_TABLES)[number]>;

/** Reads tables of the workbook; nothing is refused as a whole, what cannot be read is listed in `problems`. */
export function readBook<Key extends TableKey>(
  tables: readonly Key[],
  cells: BookCells<Key>,
): Book<Key> {
  const { shop, problems } = readShop(cells.shop);
  const reads = tables.map((key) => [key, readCells(key, cells[key])] as const);
  const rows = Object.fromEntries(reads.map(([key, read]) => [key, read.rows]));
  const found = [...problems, ...reads.flatMap(([, read]) => read.problems)];
  return { ...rows, shop, problems: found } as unknown as Book<Key>; // every table was just read into its key
}

function readCells(
  key: TableKey,
  cells: BookCells['shop'],
): Pick<TableRead<(typeof TABLES)[TableKey]>, 'rows' | 'problems'> {
  if (cells.length === 0 && LATER.has(key)) return { rows: [], problems: [] };
  return readTable<(typeof TABLES)[TableKey]>(TABLES[key], cells);
}
