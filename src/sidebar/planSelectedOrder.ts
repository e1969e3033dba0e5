import { PLAN_TABLES } from '../../shared/book/book.ts';
import type { PlanAnswer, PlanPayload } from '../../shared/commands/commands.ts';
import type { Refused } from '../../shared/errors/refuse.ts';
import { readBookNow } from '../platform/readBookNow.ts';
import { isRefused, orderInBook, withFirstPour } from './orderInBook.ts';
import { planInDetailNow } from './planInDetailNow.ts';
import { OPTIONAL_TEXT, readPayload } from './readPayload.ts';
import { selectedOrder } from './selectedOrder.ts';

/**
 * Page call: the plan of the selected row of *Orders*, or of the order on show when one is named, so that another pour
 * time does not jump to another row.
 * @param payload `{ order?, firstPour? }`
 */
export function planSelectedOrder(payload?: unknown): PlanAnswer | Refused {
  const read = readPayload<PlanPayload>(
    { order: OPTIONAL_TEXT, firstPour: OPTIONAL_TEXT },
    payload,
  );
  if (read.kind === 'refused') return read;
  const { order, firstPour } = read.value;
  const book = readBookNow(PLAN_TABLES);
  const found = order === undefined ? selectedOrder(book) : orderInBook(book, order);
  const row = isRefused(found) ? found : withFirstPour(found, firstPour);
  return isRefused(row) ? row : { kind: 'ok', plan: planInDetailNow(book, row) };
}
