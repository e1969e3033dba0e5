import { type Book, PLAN_TABLES, readBook } from '../../shared/book/book.ts';
import type { CellValue } from '../../shared/book/reading/parseCell.ts';
import { TABLES } from '../../shared/book/tables.ts';
import { readCells } from './workbook.ts';

/** The whole book as records, one read a sheet. */
export function readBookNow(): Book {
  const cells: Record<string, readonly (readonly CellValue[])[]> = { shop: readCells('Shop') };
  for (const key of PLAN_TABLES) cells[key] = readCells(TABLES[key].sheet);
  return readBook(cells as Parameters<typeof readBook>[0]); // shop and every plan table were just set
}
