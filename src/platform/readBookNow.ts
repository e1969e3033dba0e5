import { type Book, type BookCells, readBook } from '../../shared/book/book.ts';
import { TABLES, type TableKey } from '../../shared/book/tables.ts';
import { readCells } from './workbook.ts';

/** Tables of the workbook as records, one read a sheet. */
export function readBookNow<Key extends TableKey>(tables: readonly Key[]): Book<Key> {
  const cells: Record<string, BookCells['shop']> = { shop: readCells('Shop') };
  for (const key of tables) cells[key] = readCells(TABLES[key].sheet);
  return readBook(tables, cells as BookCells<Key>); // shop and every table were just set
}
