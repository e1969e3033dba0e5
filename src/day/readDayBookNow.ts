import { DAY_TABLES, type DayBook, type DayCells, readDayBook } from '../../shared/book/dayBook.ts';
import type { CellValue } from '../../shared/book/reading/parseCell.ts';
import { TABLES } from '../../shared/book/tables.ts';
import { readCells } from '../platform/workbook.ts';

/** The book with its people as records, one read a sheet. */
export function readDayBookNow(): DayBook {
  const cells: Record<string, readonly (readonly CellValue[])[]> = { shop: readCells('Shop') };
  for (const key of DAY_TABLES) cells[key] = readCells(TABLES[key].sheet);
  return readDayBook(cells as DayCells); // shop and every table of the day were just set
}
