import type { Book } from '../book/book.ts';
import { nameKey } from '../book/bookIndex.ts';
import { currentLogRows } from '../book/currentLogRows.ts';

/** Good pieces logged for an order, all its runs together; a corrected row counts once. */
export function goodSoFar(book: Book, order: string): number {
  return currentLogRows(book.pourLog).reduce(
    (sum, { record }) => sum + (nameKey(record.order) === nameKey(order) ? (record.good ?? 0) : 0),
    0,
  );
}
