import {
  BOOKS_TABLES,
  type BooksBook,
  type BooksCells,
  readBooksBook,
} from '../../shared/book/booksBook.ts';
import type { CellValue } from '../../shared/book/reading/parseCell.ts';
import { TABLES } from '../../shared/book/tables.ts';
import { readCells } from './workbook.ts';

/** The book with its payments and closed months as records, one read a sheet. */
export function readBooksBookNow(): BooksBook {
  const cells: Record<string, readonly (readonly CellValue[])[]> = { shop: readCells('Shop') };
  for (const key of BOOKS_TABLES) cells[key] = readCells(TABLES[key].sheet);
  return readBooksBook(cells as BooksCells); // shop and every table of the books were just set
}
