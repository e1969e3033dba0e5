import {
  MONEY_TABLES,
  type MoneyBook,
  type MoneyCells,
  readMoneyBook,
} from '../../shared/book/moneyBook.ts';
import type { CellValue } from '../../shared/book/reading/parseCell.ts';
import { TABLES } from '../../shared/book/tables.ts';
import { readCells } from './workbook.ts';

/** The book with its supplies and stock moves as records, one read a sheet. */
export function readMoneyBookNow(): MoneyBook {
  const cells: Record<string, readonly (readonly CellValue[])[]> = { shop: readCells('Shop') };
  for (const key of MONEY_TABLES) cells[key] = readCells(TABLES[key].sheet);
  return readMoneyBook(cells as MoneyCells); // shop and every table of money were just set
}
