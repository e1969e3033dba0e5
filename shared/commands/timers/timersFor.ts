import { type Book, PLAN_TABLES } from '../../book/book.ts';
import { timerChoices } from '../../day/timers/timerChoices.ts';
import type { TimerChoice } from '../../day/timers/timerTypes.ts';
import type { Refused } from '../../errors/refuse.ts';
import { planOrder } from '../../plan/planOrder.ts';
import { isRefused, readCommand } from '../command.ts';
import { orderInBook } from '../orderInBook.ts';
import { planOrRefused } from '../plan/planOfOrder.ts';
import { OPTIONAL_TEXT } from '../readPayload.ts';

/** The timers that run, and those of an order that can be started. */
export const timersFor = readCommand<'timersFor', (typeof PLAN_TABLES)[number]>({
  payload: { order: OPTIONAL_TEXT },
  tables: PLAN_TABLES,
  answer: ({ order }, book, context) => {
    const choices = order ? choicesOf(book, order) : [];
    return isRefused(choices) ? choices : { kind: 'ok', timers: context.timers(), choices };
  },
});

/** The timers of an order by its number; they need no ranges, so the plan goes without. */
export function choicesOf(book: Book, order: string): readonly TimerChoice[] | Refused {
  const row = orderInBook(book, order);
  if (isRefused(row)) return row;
  const plan = planOrRefused(planOrder(book, row));
  return isRefused(plan) ? plan : timerChoices(plan);
}
