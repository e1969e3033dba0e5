import type { Book } from '../book/book.ts';
import { nameKey } from '../runSheet/bookIndex.ts';

/** Good pieces logged for an order, all its runs together. */
export function goodSoFar(book: Book, order: string): number {
  return book.pourLog.reduce(
    (sum, { record }) => sum + (nameKey(record.order) === nameKey(order) ? (record.good ?? 0) : 0),
    0,
  );
}
