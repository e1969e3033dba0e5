import { type Book, type BookCells, PLAN_TABLES, readBook } from '../../book/book.ts';
import {
  MONEY_TABLES,
  type MoneyBook,
  type MoneyCells,
  readMoneyBook,
} from '../../book/moneyBook.ts';
import type { TableFunction } from '../defineFunction.ts';
import { sheetParameter } from './sheetParameter.ts';

type Ranges = Parameters<TableFunction['compute']>[0];

const PLANNED = {
  orders: sheetParameter('Orders'),
  molds: sheetParameter('Molds'),
  patterns: sheetParameter('Patterns'),
  doses: sheetParameter('Doses'),
  materials: sheetParameter('Materials'),
  plates: sheetParameter('Plates'),
  pourLog: sheetParameter('Pour log'),
} as const;

/** Parameters for every sheet that a plan reads, in the order in which formulas hand them over. */
export const PLAN_SHEETS = { ...PLANNED, shop: sheetParameter('Shop') } as const;

/** The same with what a price needs. */
export const MONEY_SHEETS = {
  ...PLANNED,
  supplies: sheetParameter('Supplies'),
  stockMoves: sheetParameter('Stock moves'),
  shop: sheetParameter('Shop'),
} as const;

export function readPlanSheets(ranges: Ranges): Book {
  const cells: Record<string, BookCells['shop']> = { shop: ranges['shop'] ?? [] };
  for (const key of PLAN_TABLES) cells[key] = ranges[key] ?? [];
  return readBook(cells as BookCells); // shop and every plan table were just set
}

export function readMoneySheets(ranges: Ranges): MoneyBook {
  const cells: Record<string, MoneyCells['shop']> = { shop: ranges['shop'] ?? [] };
  for (const key of MONEY_TABLES) cells[key] = ranges[key] ?? [];
  return readMoneyBook(cells as MoneyCells); // shop and every table of money were just set
}
