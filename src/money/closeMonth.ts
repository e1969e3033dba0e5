import { BOOKS_TABLES } from '../../shared/book/book.ts';
import { CLOSED_MONTHS } from '../../shared/book/tables/closedMonths.ts';
import type { CloseMonthPayload, MonthClosed } from '../../shared/commands/booksCommands.ts';
import { type Refused, refuse } from '../../shared/errors/refuse.ts';
import { books } from '../../shared/money/books/books.ts';
import { booksSummary } from '../../shared/money/books/booksSummary.ts';
import { monthToClose } from '../../shared/money/books/monthToClose.ts';
import { appendRows } from '../book/appendRows.ts';
import { readBookNow } from '../platform/readBookNow.ts';
import { today } from '../platform/today.ts';
import { withDocumentLock } from '../platform/withDocumentLock.ts';
import { NEEDED_TEXT, readPayload } from '../sidebar/readPayload.ts';

const FIELDS = { month: NEEDED_TEXT, who: { longest: 20, needed: false } } as const;

/**
 * Page call: freezes the figures of a month as one row of *Closed months*. A month that is closed already is not written
 * again, whoever asks how often.
 * @param payload `{ month, who? }`, the month as `yyyy-mm`
 */
export function closeMonth(payload: unknown): MonthClosed | Refused {
  const read = readPayload<CloseMonthPayload>(FIELDS, payload);
  if (read.kind === 'refused') return read;
  return withDocumentLock(() => closeOnce(read.value));
}

/** Everything is read anew inside the lock: somebody may just have closed it. */
function closeOnce({ month, who }: CloseMonthPayload): MonthClosed | Refused {
  const book = readBookNow(BOOKS_TABLES);
  const day = today();
  const now = books(book, day);
  const made = monthToClose(book, now, { month, who: who ?? '' });
  if (made.kind === 'refused') return refuse(made.field, made.text);
  if (made.kind === 'closed') return { kind: 'ok', closed: 'before', ...booksSummary(book, now) };
  const appended = appendRows(CLOSED_MONTHS, [made.record], book.shop.units);
  if (appended.kind === 'refused') return appended;
  const row = { row: appended.row, record: made.record };
  const after = { ...book, closedMonths: [...book.closedMonths, row] };
  return { kind: 'ok', closed: 'now', ...booksSummary(after, books(after, day)) };
}
