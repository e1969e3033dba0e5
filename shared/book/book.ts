import type { CellValue } from './reading/parseCell.ts';
import { type Problem, type Row, readTable } from './reading/readTable.ts';
import { readShop } from './settings/readShop.ts';
import type { Shop } from './settings/settings.ts';
import { TABLES } from './tables.ts';

/** The tables a plan is made from. */
export const PLAN_TABLES = [
  'orders',
  'molds',
  'patterns',
  'doses',
  'materials',
  'plates',
  'pourLog',
] as const;

type PlanTableKey = (typeof PLAN_TABLES)[number];

/** Raw cells of each sheet, heading row first, as one read from the platform gives them. */
export type BookCells = Readonly<Record<PlanTableKey | 'shop', readonly (readonly CellValue[])[]>>;

/** The book as records in engine units. */
export type Book = { readonly [Key in PlanTableKey]: readonly Row<(typeof TABLES)[Key]>[] } & {
  readonly shop: Shop;
  readonly problems: readonly Problem[];
};

/** Reads every table; nothing is refused as a whole, what cannot be read is listed in `problems`. */
export function readBook(cells: BookCells): Book {
  const { shop, problems } = readShop(cells.shop);
  const orders = readTable(TABLES.orders, cells.orders);
  const molds = readTable(TABLES.molds, cells.molds);
  const patterns = readTable(TABLES.patterns, cells.patterns);
  const doses = readTable(TABLES.doses, cells.doses);
  const materials = readTable(TABLES.materials, cells.materials);
  const plates = readTable(TABLES.plates, cells.plates);
  const pourLog = readTable(TABLES.pourLog, cells.pourLog);
  const reads = [orders, molds, patterns, doses, materials, plates, pourLog];
  return {
    shop,
    orders: orders.rows,
    molds: molds.rows,
    patterns: patterns.rows,
    doses: doses.rows,
    materials: materials.rows,
    plates: plates.rows,
    pourLog: pourLog.rows,
    problems: [...problems, ...reads.flatMap((read) => read.problems)],
  };
}
