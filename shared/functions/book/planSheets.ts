import {
  type Book,
  type BookCells,
  MONEY_TABLES,
  type MoneyBook,
  PLAN_TABLES,
  readBook,
} from '../../book/book.ts';
import type { TableKey } from '../../book/tables.ts';
import type { TableFunction } from '../sheetFunctionTypes.ts';
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

/** The book of a plan from the ranges of a cell's formula. */
export function readPlanSheets(ranges: Ranges): Book {
  return readBook(PLAN_TABLES, cellsOf(PLAN_TABLES, ranges));
}

/** The book of an order's cost from the ranges of a cell's formula. */
export function readMoneySheets(ranges: Ranges): MoneyBook {
  return readBook(MONEY_TABLES, cellsOf(MONEY_TABLES, ranges));
}

function cellsOf<Key extends TableKey>(tables: readonly Key[], ranges: Ranges): BookCells<Key> {
  const keys = [...tables, 'shop'] as const;
  return Object.fromEntries(keys.map((key) => [key, ranges[key] ?? []])) as BookCells<Key>; // shop and every table were just set
}
