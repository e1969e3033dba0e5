import { type Book, type BookCells, PLAN_TABLES, readBook } from '../../shared/book/book.ts';
import { headingOf } from '../../shared/book/reading/headingOf.ts';
import type { CellValue } from '../../shared/book/reading/parseCell.ts';
import { TABLES } from '../../shared/book/tables.ts';

type Rows = readonly Readonly<Record<string, CellValue>>[];

/** A book as its sheets would read, from rows in US units; tables that are not given are empty. */
export function logBook(rows: { readonly [Key in (typeof PLAN_TABLES)[number]]?: Rows }): Book {
  const cells: Record<string, readonly (readonly CellValue[])[]> = { shop: [] };
  for (const key of PLAN_TABLES) {
    const columns = Object.entries(TABLES[key].columns);
    const headings = columns.map(([, column]) => headingOf(column, 'US'));
    const lines = (rows[key] ?? []).map((row) => columns.map(([name]) => row[name] ?? ''));
    cells[key] = [headings, ...lines];
  }
  return readBook(PLAN_TABLES, cells as BookCells); // shop and every plan table were just set
}
