import type { QuoteBook } from '../../shared/book/book.ts';
import { QUOTE_TABLES } from '../../shared/book/book.ts';
import { nameKey } from '../../shared/book/bookIndex.ts';
import { ORDERS } from '../../shared/book/tables/orders.ts';
import { QUOTES } from '../../shared/book/tables/quotes.ts';
import type { MakeQuotePayload, QuoteMade } from '../../shared/commands/quoteCommands.ts';
import { type Problem, type Refused, refuse } from '../../shared/errors/refuse.ts';
import { whyNotQuotable } from '../../shared/money/quote/quotable.ts';
import { daysLater, nextQuote } from '../../shared/money/quote/quoteNumber.ts';
import { QUOTED_KEYS, quoteRecord } from '../../shared/money/quote/quoteRecord.ts';
import { readPricing } from '../../shared/money/quote/readPricing.ts';
import { appendRows } from '../book/appendRows.ts';
import { rowCells } from '../book/rowCells.ts';
import { readBookNow } from '../platform/readBookNow.ts';
import { today } from '../platform/today.ts';
import { withDocumentLock } from '../platform/withDocumentLock.ts';
import { isRefused } from '../sidebar/orderInBook.ts';
import { NEEDED_TEXT, OPTIONAL_TEXT, readPayload } from '../sidebar/readPayload.ts';
import { factsOf, readValues, rowToQuote } from './quoteFor.ts';
import { quoteForm } from './quoteForm.ts';

/**
 * Page call: makes a quote of an order, or of what is typed, which then becomes a row of *Orders*. It is kept in *Quotes* as
 * the customer reads it, and the order's row gets its number, days and terms. The same token again writes nothing.
 * @param payload `{ order?, token, values }`, values as typed
 */
export function makeQuote(payload: unknown): QuoteMade | Refused {
  const { values: sent, ...rest } = Object(payload) as Readonly<Record<string, unknown>>; // any value makes an object
  const asked = readPayload<Omit<MakeQuotePayload, 'values'>>(
    { order: OPTIONAL_TEXT, token: NEEDED_TEXT },
    rest,
  );
  const values = readValues(sent);
  if (asked.kind === 'refused') return asked;
  if (values.kind === 'refused') return values;
  return withDocumentLock(() => makeOnce({ ...asked.value, values: values.value }));
}

/** Everything is read anew inside the lock: somebody may just have taken the number, or made the same quote. */
function makeOnce(asked: MakeQuotePayload): QuoteMade | Refused {
  const book = readBookNow(QUOTE_TABLES);
  const same = book.quotes.find(({ record }) => record.entry === asked.token);
  if (same) return answer(book, 'before', same.record.quote ?? '', same.record.order ?? '');
  const pricing = readPricing(asked.values, book.shop);
  const row = rowToQuote(book, asked);
  const problems = problemsOf(pricing, row);
  if (isRefused(row) || isRefused(pricing)) return { kind: 'refused', problems };
  const because = whyNotQuotable(row.record);
  if (because !== undefined) return refuse('', because);
  const facts = factsOf(book, row);
  if (isRefused(facts)) return facts;
  const quotedOn = today();
  const numbers = [...book.orders, ...book.quotes].map(({ record }) => record.quote);
  const made = quoteRecord(facts, pricing.pricing, {
    quote: nextQuote(numbers, quotedOn),
    order: facts.order,
    quotedOn,
    validUntil: daysLater(quotedOn, book.shop.quoteDays),
    entry: asked.token,
  });
  if (made.kind === 'no quote') return refuse('', made.because);
  // Found before anything is written, so that no quote is kept that its order does not name.
  const cells = rowCells(ORDERS, QUOTED_KEYS, book.shop.units);
  if (isRefused(cells)) return cells;
  const kept = appendRows(QUOTES, [made.record], book.shop.units);
  if (kept.kind === 'refused') return kept;
  const isNew = !book.orders.some((one) => one.row === row.row);
  if (!isNew) cells.write(row.row, made.cells);
  else {
    const added = appendRows(ORDERS, [{ ...row.record, ...made.cells }], book.shop.units);
    if (added.kind === 'refused') return added;
  }
  const written = { row: row.row, record: { ...row.record, ...made.cells } };
  const orders = book.orders.map((one) => (one.row === row.row ? written : one));
  const after: QuoteBook = {
    ...book,
    orders: isNew ? [...orders, written] : orders,
    quotes: [...book.quotes, { row: kept.row, record: made.record }],
  };
  return answer(after, 'now', made.record.quote ?? '', facts.order);
}

/** All that is wrong with what was typed, at once. */
function problemsOf(...parts: readonly object[]): readonly Problem[] {
  return parts.flatMap((part) => (isRefused(part) ? part.problems : []));
}

function answer(book: QuoteBook, made: QuoteMade['made'], quote: string, order: string): QuoteMade {
  const row = book.orders.find(({ record }) => nameKey(record.order) === nameKey(order));
  return { kind: 'ok', made, quote, order, form: quoteForm(book, row) };
}
