import { QUOTE_TABLES } from '../../book/book.ts';
import { nameKey } from '../../book/bookIndex.ts';
import { refuse } from '../../errors/refuse.ts';
import { acceptance } from '../../money/quote/acceptance.ts';
import { decided, isRefused, writeCommand } from '../command.ts';
import { orderInBook } from '../orderInBook.ts';
import { NEEDED_TEXT } from '../readPayload.ts';
import { quoteForm } from './quoteForm.ts';

/**
 * The customer accepts the quote of an order: price, pattern version and day are fixed in its row; an order that was accepted before
 * stays as it is. The quote is the one that the page shows: another one may have been made since.
 */
export const acceptQuote = writeCommand<'acceptQuote', (typeof QUOTE_TABLES)[number]>({
  payload: { order: NEEDED_TEXT, quote: NEEDED_TEXT },
  tables: QUOTE_TABLES,
  decide: ({ order, quote }, book, context) => {
    const row = orderInBook(book, order);
    if (isRefused(row)) return row;
    const found = acceptance(book, row, context.today());
    if (found.kind === 'not now') return refuse('', found.because);
    if (found.kind === 'before') {
      const form = quoteForm(book, row, context);
      return decided({ kind: 'ok', accepted: 'before', on: found.acceptedOn, form });
    }
    if (nameKey(found.quote) !== nameKey(quote))
      return refuse(
        '',
        `Order ${order} has quote ${found.quote} by now, not ${quote}: open it again and look at it first.`,
      );
    const { version, priceAgreed, acceptedOn, status } = found.cells;
    const cells = { version, priceAgreed, acceptedOn, status };
    const after = { row: row.row, record: { ...row.record, ...cells } };
    const form = quoteForm(book, after, context);
    return decided(
      { kind: 'ok', accepted: 'now', on: acceptedOn ?? '', form },
      { writes: [{ kind: 'change', table: 'orders', row: row.row, cells }] },
    );
  },
});
