import { type BookIndex, nameKey, type OrderRow } from '../../book/bookIndex.ts';
import type { PourLogRecord } from '../../book/tables.ts';
import { type FoundOrder, findOrder } from '../../plan/facts/findOrder.ts';

/** The order of a log row as it was poured: mold, pattern and version are the row's, plate and molds in use the order's. */
export function loggedOrder(index: BookIndex, log: PourLogRecord): OrderRow {
  const order = index.orders.get(nameKey(log.order));
  return {
    row: order?.row ?? 0,
    record: {
      quantity: log.poured,
      ...order?.record,
      order: log.order,
      mold: log.mold,
      pattern: log.pattern,
      version: log.version ?? order?.record.version,
    },
  };
}

/** What was poured into what, or what the book does not say any more. */
export function loggedFacts(index: BookIndex, log: PourLogRecord): FoundOrder {
  return findOrder(index, loggedOrder(index, log));
}
