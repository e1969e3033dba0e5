import { type Book, PLAN_TABLES, readBook } from './book.ts';
import type { Table } from './column.ts';
import type { CellValue } from './reading/parseCell.ts';
import { type Row, readTable, type TableRead } from './reading/readTable.ts';
import { TABLES } from './tables.ts';

/** The tables that the cost of an order is made from. */
export const MONEY_TABLES = [...PLAN_TABLES, 'supplies', 'stockMoves'] as const;

export type MoneyTableKey = (typeof MONEY_TABLES)[number];

/** Raw cells of each sheet, heading row first. */
export type MoneyCells = Readonly<
  Record<MoneyTableKey | 'shop', readonly (readonly CellValue[])[]>
>;

/** The book with what goes with the pieces and what moved in and out of stock. */
export interface MoneyBook extends Book {
  readonly supplies: readonly Row<typeof TABLES.supplies>[];
  readonly stockMoves: readonly Row<typeof TABLES.stockMoves>[];
}

/** Reads every table; a book from before there were supplies has none, and what cannot be read is listed in `problems`. */
export function readMoneyBook(cells: MoneyCells): MoneyBook {
  const book = readBook(cells);
  const supplies = readIfThere(TABLES.supplies, cells.supplies);
  const stockMoves = readIfThere(TABLES.stockMoves, cells.stockMoves);
  const problems = [supplies, stockMoves].flatMap((read) => read.problems);
  return {
    ...book,
    supplies: supplies.rows,
    stockMoves: stockMoves.rows,
    problems: [...book.problems, ...problems],
  };
}

function readIfThere<T extends Table>(
  table: T,
  cells: readonly (readonly CellValue[])[],
): TableRead<T> {
  return cells.length === 0 ? { rows: [], problems: [] } : readTable(table, cells);
}
