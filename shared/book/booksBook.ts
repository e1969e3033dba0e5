import { MONEY_TABLES, type MoneyBook, type MoneyCells, readMoneyBook } from './moneyBook.ts';
import type { CellValue } from './reading/parseCell.ts';
import { type Row, readTable } from './reading/readTable.ts';
import { TABLES } from './tables.ts';

/** The tables that the books are made from. */
export const BOOKS_TABLES = [...MONEY_TABLES, 'payments', 'closedMonths'] as const;

/** Raw cells of each sheet, heading row first; a sheet that is not there has none. */
export type BooksCells = MoneyCells &
  Readonly<Record<'payments' | 'closedMonths', readonly (readonly CellValue[])[]>>;

/** The book with its payments and the months that were closed. */
export interface BooksBook extends MoneyBook {
  readonly payments: readonly Row<typeof TABLES.payments>[];
  readonly closedMonths: readonly Row<typeof TABLES.closedMonths>[];
}

/** Reads every table; a book from before there were payments has none. */
export function readBooksBook(cells: BooksCells): BooksBook {
  const book = readMoneyBook(cells);
  const none = { rows: [], problems: [] } as const;
  const payments = cells.payments.length === 0 ? none : readTable(TABLES.payments, cells.payments);
  const closedMonths =
    cells.closedMonths.length === 0 ? none : readTable(TABLES.closedMonths, cells.closedMonths);
  return {
    ...book,
    payments: payments.rows,
    closedMonths: closedMonths.rows,
    problems: [...book.problems, ...payments.problems, ...closedMonths.problems],
  };
}
