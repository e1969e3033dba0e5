import { QUOTE_TABLES } from '../../shared/book/book.ts';
import type { QuoteForm, StartQuotePayload } from '../../shared/commands/quoteCommands.ts';
import { type Refused, refuse } from '../../shared/errors/refuse.ts';
import { readBookNow } from '../platform/readBookNow.ts';
import { isRefused, orderInBook } from '../sidebar/orderInBook.ts';
import { OPTIONAL_TEXT, readPayload } from '../sidebar/readPayload.ts';
import { selectedOrder } from '../sidebar/selectedOrder.ts';
import { quoteForm } from './quoteForm.ts';

/**
 * Page call: the quote form of an order, of the selected row, or a blank one.
 * @param payload `{ order?, from? }`
 */
export function startQuote(payload: unknown): QuoteForm | Refused {
  const read = readPayload<StartQuotePayload>(
    { order: OPTIONAL_TEXT, from: OPTIONAL_TEXT },
    payload,
  );
  if (read.kind === 'refused') return read;
  const { order = '', from } = read.value;
  const book = readBookNow(QUOTE_TABLES);
  if (order === '' && from === undefined) return quoteForm(book, undefined);
  const row = order === '' ? selectedOrder(book) : orderInBook(book, order);
  if (isRefused(row)) return row;
  if (row.record.order === undefined)
    return refuse('', `Row ${row.row} of Orders has no order number: give it one first.`);
  return quoteForm(book, row);
}
