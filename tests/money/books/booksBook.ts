import type { BooksBook } from '../../../shared/book/book.ts';
import type { ClosedMonthRecord, OrderRecord, PaymentRecord } from '../../../shared/book/tables.ts';
import { books } from '../../../shared/money/books/books.ts';
import type { Books } from '../../../shared/money/books/booksTypes.ts';
import { monthToClose } from '../../../shared/money/books/monthToClose.ts';
import { type CostChanges, costBook } from '../cost/costBook.ts';

export interface BooksChanges extends CostChanges {
  readonly payments?: readonly PaymentRecord[];
  readonly closedMonths?: readonly ClosedMonthRecord[];
}

/** The demo's book with prices, changed where a test says so, frozen. */
export function booksBook({ payments, closedMonths, ...changes }: BooksChanges = {}): BooksBook {
  return Object.freeze({
    ...costBook(changes),
    payments: onRows(payments ?? []),
    closedMonths: onRows(closedMonths ?? []),
  });
}

/** A shipped order of the demo: 24 pieces at 120, with a sale day. */
export function shipped(changes: OrderRecord = {}): OrderRecord {
  return {
    order: '1',
    mold: 'Paddle 3 in',
    pattern: 'Two tone',
    quantity: 24,
    priceAgreed: 120,
    status: 'shipped',
    shippedOn: '2026-11-10',
    ...changes,
  };
}

/** The row that closing a month gives, as the book then holds it. */
export function closedRow(book: BooksBook, month: string, day: string): ClosedMonthRecord {
  const made = monthToClose(book, books(book, day), { month, who: 'AK' });
  if (made.kind !== 'record') throw new Error(`${month} was not closed: ${made.kind}`);
  return made.record;
}

/** The month's figures; there must be some. */
export function monthOf(found: Books, month: string): Books['months'][number] {
  const figures = found.months.find((one) => one.month === month);
  if (figures === undefined) throw new Error(`no figures of ${month}`);
  return figures;
}

function onRows<Record>(records: readonly Record[]) {
  return records.map((record, index) =>
    Object.freeze({ row: index + 2, record: Object.freeze(record) }),
  );
}
