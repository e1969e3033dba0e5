import type { Book } from '../../shared/book/book.ts';
import type { Missing } from '../../shared/book/missingCells.ts';
import type { OrderPayload } from '../../shared/commands/commands.ts';
import type { Refused } from '../../shared/errors/refuse.ts';
import type { OrderPlan, PlanResult } from '../../shared/plan/plan.ts';
import { isRefused, orderInBook, withFirstPour } from './orderInBook.ts';
import { planInDetailNow } from './planInDetailNow.ts';

/** The plan of an order by its number, or everything that keeps it from being made. */
export function planFor(book: Book, { order, firstPour }: OrderPayload): OrderPlan | Refused {
  const found = orderInBook(book, order);
  const row = isRefused(found) ? found : withFirstPour(found, firstPour);
  if (isRefused(row)) return row;
  return planOrRefused(planInDetailNow(book, row));
}

/** What keeps a plan from being made, as a refusal. */
export function planOrRefused(plan: PlanResult): OrderPlan | Refused {
  if (plan.kind === 'plan') return plan;
  return {
    kind: 'refused',
    problems: plan.missing.map((gap) => ({ field: '', text: gapText(gap) })),
  };
}

function gapText({ sheet, row, text }: Missing): string {
  return `In ${sheet}${row === undefined ? '' : `, row ${row}`}: ${text}`;
}
