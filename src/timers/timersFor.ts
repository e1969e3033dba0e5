import { PLAN_TABLES } from '../../shared/book/book.ts';
import type { TimersAnswer, TimersPayload } from '../../shared/commands/timerCommands.ts';
import type { TimerChoice } from '../../shared/day/timers/timer.ts';
import { timerChoices } from '../../shared/day/timers/timerChoices.ts';
import type { Refused } from '../../shared/errors/refuse.ts';
import { planOrder } from '../../shared/plan/planOrder.ts';
import { readBookNow } from '../platform/readBookNow.ts';
import { isRefused, orderInBook } from '../sidebar/orderInBook.ts';
import { planOrRefused } from '../sidebar/planFor.ts';
import { OPTIONAL_TEXT, readPayload } from '../sidebar/readPayload.ts';
import { keptTimers } from './keptTimers.ts';

/**
 * Page call: the timers that run, and those of an order that can be started.
 * @param payload `{ order? }`
 */
export function timersFor(payload: unknown): TimersAnswer | Refused {
  const read = readPayload<TimersPayload>({ order: OPTIONAL_TEXT }, payload);
  if (read.kind === 'refused') return read;
  const { order } = read.value;
  const choices = order ? choicesFor(order) : [];
  if (isRefused(choices)) return choices;
  return { kind: 'ok', timers: keptTimers(), choices };
}

/** The timers of an order by its number; they need no bands, so the plan goes without. */
export function choicesFor(order: string): readonly TimerChoice[] | Refused {
  const book = readBookNow(PLAN_TABLES);
  const row = orderInBook(book, order);
  if (isRefused(row)) return row;
  const plan = planOrRefused(planOrder(book, row));
  return isRefused(plan) ? plan : timerChoices(plan);
}
