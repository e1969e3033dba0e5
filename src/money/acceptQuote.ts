import { QUOTE_TABLES } from '../../shared/book/book.ts';
import { nameKey } from '../../shared/book/bookIndex.ts';
import { ORDERS } from '../../shared/book/tables/orders.ts';
import type { PrintedQuote, QuoteAccepted } from '../../shared/commands/quoteCommands.ts';
import { type Refused, refuse } from '../../shared/errors/refuse.ts';
import { acceptance } from '../../shared/money/quote/acceptance.ts';
import { rowCells } from '../book/rowCells.ts';
import { readBookNow } from '../platform/readBookNow.ts';
import { today } from '../platform/today.ts';
import { withDocumentLock } from '../platform/withDocumentLock.ts';
import { isRefused, orderInBook } from '../sidebar/orderInBook.ts';
import { NEEDED_TEXT, readPayload } from '../sidebar/readPayload.ts';
import { quoteForm } from './quoteForm.ts';

/** Cells of *Orders* that accepting fixes. */
const FIXED = ['version', 'priceAgreed', 'acceptedOn', 'status'] as const;

/** What names a quote in a page's call. */
export const QUOTE_FIELDS = {
  order: NEEDED_TEXT,
  quote: NEEDED_TEXT,
} as const;

/**
 * Page call: the customer accepts the quote of an order. Price, pattern version and day are fixed in its row; an order that
 * was accepted before stays as it is.
 * @param payload `{ order, quote }`, the quote as the page shows it: another one may have been made since
 */
export function acceptQuote(payload: unknown): QuoteAccepted | Refused {
  const read = readPayload<PrintedQuote>(QUOTE_FIELDS, payload);
  if (read.kind === 'refused') return read;
  return withDocumentLock(() => acceptOnce(read.value));
}

function acceptOnce({ order, quote }: PrintedQuote): QuoteAccepted | Refused {
  const book = readBookNow(QUOTE_TABLES);
  const row = orderInBook(book, order);
  if (isRefused(row)) return row;
  const found = acceptance(book, row, today());
  if (found.kind === 'not now') return refuse('', found.because);
  if (found.kind === 'before')
    return { kind: 'ok', accepted: 'before', on: found.acceptedOn, form: quoteForm(book, row) };
  if (nameKey(found.quote) !== nameKey(quote))
    return refuse(
      '',
      `Order ${order} has quote ${found.quote} by now, not ${quote}: open it again and look at it first.`,
    );
  const cells = rowCells(ORDERS, FIXED, book.shop.units);
  if (isRefused(cells)) return cells;
  cells.write(row.row, found.cells);
  const after = { row: row.row, record: { ...row.record, ...found.cells } };
  const form = quoteForm(book, after);
  return { kind: 'ok', accepted: 'now', on: found.cells.acceptedOn ?? '', form };
}
