import { type Book, PLAN_TABLES } from '../../book/book.ts';
import { indexBook, type OrderRow } from '../../book/bookIndex.ts';
import type { Missing } from '../../book/missingCells.ts';
import type { Refused } from '../../errors/refuse.ts';
import type { OrderPlan, PlanResult } from '../../plan/planTypes.ts';
import { planInDetail } from '../../trials/planInDetail.ts';
import { isRefused } from '../command.ts';
import type { OrderPayload } from '../commandTypes.ts';
import { orderInBook, withFirstPour } from '../orderInBook.ts';
import { NEEDED_TEXT, OPTIONAL_TEXT } from '../readPayload.ts';

/** Fixes the draws behind every range, so that panel and paper show the same ones. */
const SEED = 1;

/** The tables of a plan with its ranges and the readings beside its curve. */
export const DETAIL_TABLES = [...PLAN_TABLES, 'heatTrials'] as const;
type DetailBook = Book<(typeof DETAIL_TABLES)[number]>;

/** What names an order's plan, and its run. */
export const ORDER_FIELDS = { order: NEEDED_TEXT, firstPour: OPTIONAL_TEXT } as const;
export const RUN_FIELDS = { ...ORDER_FIELDS, runId: NEEDED_TEXT } as const;

/** The plan of a row with its ranges, for eyes and paper; the cells of *Orders* do without. */
export function planOfRow(book: DetailBook, row: OrderRow): PlanResult {
  return planInDetail(indexBook(book), row, book.heatTrials, SEED);
}

/** The plan of an order by its number, or everything that keeps it from being made. */
export function planOfOrder(
  book: DetailBook,
  { order, firstPour }: OrderPayload,
): OrderPlan | Refused {
  const found = orderInBook(book, order);
  const row = isRefused(found) ? found : withFirstPour(found, firstPour);
  return isRefused(row) ? row : planOrRefused(planOfRow(book, row));
}

/** What keeps a plan from being made, as a refusal. */
export function planOrRefused(plan: PlanResult): OrderPlan | Refused {
  if (plan.kind === 'plan') return plan;
  const problems = plan.missing.map((one) => ({ field: '', text: missingText(one) }));
  return { kind: 'refused', problems };
}

/** What is missing with its place: `In Orders, row 3: mold must be given`. */
export function missingText({ sheet, row, text }: Missing): string {
  return `In ${sheet}${row === undefined ? '' : `, row ${row}`}: ${text}`;
}
