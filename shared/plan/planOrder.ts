import type { Book } from '../book/book.ts';
import { type BookIndex, indexBook, nameKey, type OrderRow } from '../book/bookIndex.ts';
import type { Missing } from '../book/missingCells.ts';
import { describe } from '../errors/describe.ts';
import { computePlan } from './computePlan.ts';
import { findOrder } from './facts/findOrder.ts';
import type { PlanResult } from './planTypes.ts';

/**
 * The plan of one order: what to pour, weigh, heat and wait for, or everything that is missing with its place.
 * @param which - row on the sheet *Orders* (2 is the first), an order's number as text, or an order row that is not on the sheet as it stands
 */
export function planOrder(book: Book, which: number | string | OrderRow): PlanResult {
  const index = indexBook(book);
  if (typeof which === 'object') return planRow(index, which);
  const row =
    typeof which === 'number'
      ? book.orders.find((one) => one.row === which)
      : index.orders.get(nameKey(which));
  return row ? planRow(index, row) : unknownOrder(which);
}

/** The plan of an order row in a book already arranged for look-ups; many rows share one index. */
export function planRow(index: BookIndex, row: OrderRow): PlanResult {
  const found = findOrder(index, row);
  const computed = found.kind === 'found' ? computePlan(index, found.facts) : found;
  if (computed.kind === 'plan') return computed;
  return {
    kind: 'missing',
    order: row.record.order ?? '',
    row: row.row,
    missing: computed.missing,
  };
}

function unknownOrder(which: number | string): PlanResult {
  const isRow = typeof which === 'number';
  const gap: Missing = {
    sheet: 'Orders',
    ...(isRow ? { row: which } : {}),
    heading: 'Order',
    text: isRow
      ? `row ${which} of Orders holds no order`
      : describe({ field: 'order', rule: { kind: 'known', where: 'Orders' }, value: which }),
  };
  return { kind: 'missing', order: isRow ? '' : which, row: isRow ? which : 0, missing: [gap] };
}
