import { type BookIndex, nameKey, type OrderRow, remember } from '../book/bookIndex.ts';

/** An order that was only asked for, or called off, has not had its colors matched. */
const NOT_MADE: readonly (string | undefined)[] = ['asked', 'canceled'];

/**
 * Whether an order is the one that a pattern's colors are matched for: it is of version 1, and no other order of the pattern,
 * any version, came before it, by its date, else by its row; nor was one poured.
 * @param version - the one the plan pours
 */
export function patternMatching(
  index: BookIndex,
  order: OrderRow,
  version: number,
): 'new pattern' | 'known pattern' {
  if (version > 1) return 'known pattern';
  const key = nameKey(order.record.pattern);
  const others = ordersByPattern(index).get(key) ?? [];
  const hasEarlier = others.some((other) => isBefore(other, order));
  return hasEarlier || isPouredForOther(index, key, order) ? 'known pattern' : 'new pattern';
}

function isBefore(other: OrderRow, order: OrderRow): boolean {
  const { date: earlier = '' } = other.record;
  const { date: later = '' } = order.record;
  if (earlier === '' || later === '' || earlier === later) return other.row < order.row;
  return earlier < later;
}

function ordersByPattern(index: BookIndex): ReadonlyMap<string, readonly OrderRow[]> {
  return remember(index, 'orders by pattern', () => {
    const first = new Map<string, OrderRow[]>();
    for (const row of index.book.orders) {
      if (NOT_MADE.includes(row.record.status)) continue;
      const key = nameKey(row.record.pattern);
      const found = first.get(key);
      if (found) found.push(row);
      else first.set(key, [row]);
    }
    return first;
  });
}

function isPouredForOther(index: BookIndex, pattern: string, { record }: OrderRow): boolean {
  const poured = remember(index, 'poured orders by pattern', () => {
    const orders = new Map<string, Set<string>>();
    for (const { record: logged } of index.book.pourLog) {
      const key = nameKey(logged.pattern);
      const found = orders.get(key) ?? new Set();
      orders.set(key, found.add(nameKey(logged.order)));
    }
    return orders;
  }).get(pattern);
  if (poured === undefined) return false;
  return poured.size > 1 || !poured.has(nameKey(record.order));
}
