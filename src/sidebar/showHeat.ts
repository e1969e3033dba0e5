import { PLAN_TABLES } from '../../shared/book/book.ts';
import type { HeatShown, OrderPayload } from '../../shared/commands/commands.ts';
import type { Refused } from '../../shared/errors/refuse.ts';
import { readBookNow } from '../platform/readBookNow.ts';
import { isRefused, orderInBook } from './orderInBook.ts';
import { NEEDED_TEXT, OPTIONAL_TEXT, readPayload } from './readPayload.ts';
import { requestDialog } from './requestDialog.ts';

/**
 * Page call: opens the dialog that draws the heat of an order; it asks for the pictures itself.
 * @param payload `{ order, firstPour? }`
 */
export function showHeat(payload: unknown): HeatShown | Refused {
  const read = readPayload<OrderPayload>(HEAT_FIELDS, payload);
  if (read.kind === 'refused') return read;
  const found = orderInBook(readBookNow(PLAN_TABLES), read.value.order);
  if (isRefused(found)) return found;
  requestDialog('Heat', `Heat of order ${read.value.order}`, read.value);
  return { kind: 'ok', order: read.value.order };
}

/** What names an order's heat in a page's call. */
export const HEAT_FIELDS = { order: NEEDED_TEXT, firstPour: OPTIONAL_TEXT } as const;
