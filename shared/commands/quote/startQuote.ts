import { QUOTE_TABLES } from '../../book/book.ts';
import { refuse } from '../../errors/refuse.ts';
import { isRefused, readCommand } from '../command.ts';
import { orderInBook, selectedOrder } from '../orderInBook.ts';
import { OPTIONAL_TEXT } from '../readPayload.ts';
import { quoteForm } from './quoteForm.ts';

/** The quote form of an order, of the selected row, or a blank one. */
export const startQuote = readCommand<'startQuote', (typeof QUOTE_TABLES)[number]>({
  payload: { order: OPTIONAL_TEXT, from: OPTIONAL_TEXT },
  tables: QUOTE_TABLES,
  answer: ({ order = '', from }, book, context) => {
    if (order === '' && from === undefined) return quoteForm(book, undefined, context);
    const row = order === '' ? selectedOrder(book, context) : orderInBook(book, order);
    if (isRefused(row)) return row;
    if (row.record.order === undefined)
      return refuse('', `Row ${row.row} of Orders has no order number: give it one first.`);
    return quoteForm(book, row, context);
  },
});
