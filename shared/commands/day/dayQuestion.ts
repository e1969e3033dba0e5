import type { DayQuestion } from '../../day/shop/pourDay.ts';
import { describe } from '../../errors/describe.ts';
import { InputError } from '../../errors/InputError.ts';
import { type Refused, refuse } from '../../errors/refuse.ts';
import { requireNumber } from '../../errors/requireNumber.ts';
import type { DayPayload } from '../dayCommands.ts';
import { OPTIONAL_TEXT } from '../readPayload.ts';

const DAYS = 5;
const MOST_DAYS = 31;

/** What names the days and orders of a plan. */
export const DAY_FIELDS = {
  orders: { ...OPTIONAL_TEXT, longest: 4000 },
  firstDay: OPTIONAL_TEXT,
  days: OPTIONAL_TEXT,
} as const;

/**
 * What a page asks of a pour day, read and checked.
 * @param today - `yyyy-mm-dd`, for a first day that is left blank
 */
export function dayQuestion(
  { orders, firstDay: typedDay, days: typedDays }: DayPayload,
  today: string,
): DayQuestion | Refused {
  const firstDay = typedDay?.trim() || today;
  if (!/^\d{4}-\d\d-\d\d$/.test(firstDay) || Number.isNaN(Date.parse(firstDay)))
    return refuse('first day', `first day must be a date such as 2026-11-30, got "${firstDay}"`);
  const days = Number(typedDays?.trim() || DAYS);
  try {
    requireNumber(days, 'days', { whole: true, atLeast: 1, atMost: MOST_DAYS });
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return refuse('days', describe(error));
  }
  const names = (orders ?? '').split(',').map((name) => name.trim());
  return { firstDay, days, orders: names.filter((name) => name !== '') };
}
