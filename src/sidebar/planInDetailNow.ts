import type { Book } from '../../shared/book/book.ts';
import { indexBook, type OrderRow } from '../../shared/book/bookIndex.ts';
import { readTable } from '../../shared/book/reading/readTable.ts';
import { TABLES } from '../../shared/book/tables.ts';
import type { PlanResult } from '../../shared/plan/plan.ts';
import { planInDetail } from '../../shared/trials/planInDetail.ts';
import { readCells } from '../platform/workbook.ts';

/** Fixes the draws behind every band, so that panel and paper show the same ones. */
const SEED = 1;

/** The plan of a row with its bands, for eyes and paper; the cells of *Orders* do without. */
export function planInDetailNow(book: Book, row: OrderRow): PlanResult {
  const { rows } = readTable(TABLES.heatTrials, readCells(TABLES.heatTrials.sheet));
  return planInDetail(indexBook(book), row, rows, SEED);
}
