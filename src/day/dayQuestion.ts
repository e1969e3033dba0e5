import type { DayPayload } from '../../shared/commands/dayCommands.ts';
import type { DayQuestion } from '../../shared/day/shop/pourDay.ts';
import { describe } from '../../shared/errors/describe.ts';
import { InputError } from '../../shared/errors/InputError.ts';
import { type Refused, refuse } from '../../shared/errors/refuse.ts';
import { requireNumber } from '../../shared/errors/requireNumber.ts';
import { today } from '../platform/today.ts';
import { OPTIONAL_TEXT, readPayload } from '../sidebar/readPayload.ts';

const DAYS = 5;
const MOST_DAYS = 31;

/** What a page asks of a pour day, read and checked. */
export function dayQuestion(payload: unknown): DayQuestion | Refused {
  const fields = {
    orders: { ...OPTIONAL_TEXT, longest: 4000 },
    firstDay: OPTIONAL_TEXT,
    days: OPTIONAL_TEXT,
  };
  const read = readPayload<DayPayload>(fields, payload);
  if (read.kind === 'refused') return read;
  const { orders, firstDay: typedDay, days: typedDays } = read.value;
  const firstDay = typedDay?.trim() || today();
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
