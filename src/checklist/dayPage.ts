import { readShop } from '../../shared/book/settings/readShop.ts';
import type { DayPage, DayPagePayload } from '../../shared/commands/checklistCommands.ts';
import type { Refused } from '../../shared/errors/refuse.ts';
import { planDayFor } from '../day/planDayFor.ts';
import { replanDayFor } from '../day/replanDayFor.ts';
import { readCells } from '../platform/workbook.ts';
import { OPTIONAL_TEXT, readPayload } from '../sidebar/readPayload.ts';
import { requestDialog } from '../sidebar/requestDialog.ts';

const FIELDS = {
  orders: { ...OPTIONAL_TEXT, longest: 4000 },
  firstDay: OPTIONAL_TEXT,
  days: OPTIONAL_TEXT,
  from: OPTIONAL_TEXT,
} as const;

/**
 * Page call: opens the dialog that shows and prints a pour day; it asks for the plan itself.
 * @param payload `{ orders?, firstDay?, days?, from? }`
 */
export function showDay(payload: unknown): { readonly kind: 'ok' } | Refused {
  const read = readPayload<DayPagePayload>(FIELDS, payload);
  if (read.kind === 'refused') return read;
  requestDialog('PourDay', 'Pour day', read.value);
  return { kind: 'ok' };
}

/**
 * Page call: the pour day as its page draws it.
 * @param payload as for `showDay`
 */
export function dayPageFor(payload: unknown): DayPage | Refused {
  const read = readPayload<DayPagePayload>(FIELDS, payload);
  if (read.kind === 'refused') return read;
  const { from, ...asked } = read.value;
  const day = from === 'ticks' ? replanDayFor() : planDayFor(asked);
  if (day.kind === 'refused') return day;
  return { kind: 'ok', shopName: readShop(readCells('Shop')).shop.shopName, day };
}
