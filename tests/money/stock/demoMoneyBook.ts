import type { MoneyBook } from '../../../shared/book/book.ts';
import type { RecordOf, Table } from '../../../shared/book/column.ts';
import { type TypedRow, typedRecords } from '../../../shared/book/layout/typedRow.ts';
import type { Row } from '../../../shared/book/reading/readTable.ts';
import { TABLES } from '../../../shared/book/tables.ts';
import { demoBook } from '../../../templates/demoShop/demoBook.ts';
import { demoRows } from '../../../templates/demoShop/demoShop.ts';

/** The invented shop with its supplies and stock moves. */
export function demoMoneyBook(): MoneyBook {
  const rows = demoRows();
  return {
    ...demoBook(),
    supplies: onRows(TABLES.supplies, rows.supplies),
    stockMoves: onRows(TABLES.stockMoves, rows.stockMoves),
  };
}

function onRows<T extends Table>(table: T, rows: readonly TypedRow<T>[]): readonly Row<T>[] {
  return typedRecords(table, rows).map((record: RecordOf<T>, index) => ({
    row: index + 2,
    record,
  }));
}
