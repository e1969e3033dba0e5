import { goodSoFar } from '../../shared/log/goodSoFar.ts';
import { orderToLog } from '../../shared/log/orderToLog.ts';
import { runChoices } from '../../shared/log/runIds.ts';
import type { LogForm, OrderPayload, Refused } from '../../shared/verbs/verbs.ts';
import { runOnSheet } from '../log/runOnSheet.ts';
import { readBookNow } from '../platform/readBookNow.ts';
import { NEEDED_TEXT, OPTIONAL_TEXT, readPayload } from './readPayload.ts';

/**
 * Page call: what the log form of an order needs, and a token that makes its entry one of a kind.
 * @param payload `{ order }`
 */
export function startLog(payload: unknown): LogForm | Refused {
  const read = readPayload<OrderPayload>({ order: NEEDED_TEXT, firstPour: OPTIONAL_TEXT }, payload);
  if (read.kind === 'refused') return read;
  const book = readBookNow();
  const found = orderToLog(book, read.value.order);
  if (found.kind === 'refused') return found;
  const { order, mold, pattern, version, layers, quantity } = found;
  return {
    kind: 'ok',
    order,
    mold,
    pattern,
    version,
    layers,
    quantity,
    good: goodSoFar(book, order),
    system: book.shop.units,
    runs: runChoices(book, order, runOnSheet()),
    token: Utilities.getUuid(),
  };
}
