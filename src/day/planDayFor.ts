import { DAY_TABLES } from '../../shared/book/book.ts';
import type { DayAnswer } from '../../shared/commands/dayCommands.ts';
import { pourDay } from '../../shared/day/shop/pourDay.ts';
import { describe } from '../../shared/errors/describe.ts';
import { InputError } from '../../shared/errors/InputError.ts';
import { type Refused, refuse } from '../../shared/errors/refuse.ts';
import { readBookNow } from '../platform/readBookNow.ts';
import { dayQuestion } from './dayQuestion.ts';

/**
 * Page call: the timetable of some orders over some days. Nothing is written; the same book and question give the same plan.
 * @param payload `{ orders?, firstDay?, days? }`
 */
export function planDayFor(payload?: unknown): DayAnswer | Refused {
  const asked = dayQuestion(payload);
  if ('kind' in asked) return asked;
  try {
    return { kind: 'ok', ...pourDay(readBookNow(DAY_TABLES), asked) };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return refuse('', describe(error));
  }
}
