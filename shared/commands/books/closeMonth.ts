import { BOOKS_TABLES } from '../../book/book.ts';
import { refuse } from '../../errors/refuse.ts';
import { books } from '../../money/books/books.ts';
import { booksSummary } from '../../money/books/booksSummary.ts';
import { monthToClose } from '../../money/books/monthToClose.ts';
import { decided, writeCommand } from '../command.ts';
import { NEEDED_TEXT } from '../readPayload.ts';

/**
 * Freezes the figures of a month as one row of *Closed months*. A month that is closed already is not written again, whoever asks
 * how often.
 */
export const closeMonth = writeCommand<'closeMonth', (typeof BOOKS_TABLES)[number]>({
  payload: { month: NEEDED_TEXT, who: { longest: 20, needed: false } },
  tables: BOOKS_TABLES,
  decide: ({ month, who = '' }, book, context) => {
    const day = context.today();
    const now = books(book, day);
    const made = monthToClose(book, now, { month, who });
    if (made.kind === 'refused') return refuse(made.field, made.text);
    if (made.kind === 'closed')
      return decided({ kind: 'ok', closed: 'before', ...booksSummary(book, now) });
    const row = { row: context.cells('closedMonths').length + 1, record: made.record };
    const after = { ...book, closedMonths: [...book.closedMonths, row] };
    return decided(
      { kind: 'ok', closed: 'now', ...booksSummary(after, books(after, day)) },
      { writes: [{ kind: 'append', table: 'closedMonths', records: [made.record] }] },
    );
  },
});
