import { DAY_TABLES, type DayBook } from '../../book/book.ts';
import { pourDay } from '../../day/shop/pourDay.ts';
import type { Refused } from '../../errors/refuse.ts';
import { type Context, isRefused, readCommand } from '../command.ts';
import type { DayAnswer, DayPayload } from '../dayCommands.ts';
import { DAY_FIELDS, dayQuestion } from './dayQuestion.ts';
import { orRefused } from './orRefused.ts';

/** The timetable of some orders over some days. The same book and question give the same plan. */
export const planDayFor = readCommand<'planDayFor', (typeof DAY_TABLES)[number]>({
  payload: DAY_FIELDS,
  tables: DAY_TABLES,
  answer: plannedDay,
});

export function plannedDay(
  payload: DayPayload,
  book: DayBook,
  context: Context,
): DayAnswer | Refused {
  const asked = dayQuestion(payload, context.today());
  if (isRefused(asked)) return asked;
  return orRefused(() => ({ kind: 'ok', ...pourDay(book, asked) }));
}
