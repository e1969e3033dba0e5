import { QUOTE_TABLES, type QuoteBook } from '../../book/book.ts';
import { nameKey, type OrderRow } from '../../book/bookIndex.ts';
import { type Problem, type Refused, refuse } from '../../errors/refuse.ts';
import { daysLater, nextQuote } from '../../money/quote/nextQuote.ts';
import { type MadeQuote, QUOTED_KEYS, quoteRecord } from '../../money/quote/quoteRecord.ts';
import { readPricing } from '../../money/quote/readPricing.ts';
import { whyNotQuotable } from '../../money/quote/whyNotQuotable.ts';
import { type Context, type Decision, decided, isRefused, writeCommand } from '../command.ts';
import type { MakeQuotePayload, QuoteMade } from '../quoteCommands.ts';
import { NEEDED_TEXT, OPTIONAL_TEXT } from '../readPayload.ts';
import type { Write } from '../write.ts';
import { factsOf, QUOTE_VALUES, rowToQuote } from './quoteFor.ts';
import { quoteForm } from './quoteForm.ts';

/**
 * Makes a quote of an order, or of what is typed, which then becomes a row of *Orders*. It is kept in *Quotes* as the customer reads
 * it, and the order's row gets its number, days and terms. The same token again writes nothing.
 */
export const makeQuote = writeCommand<'makeQuote', (typeof QUOTE_TABLES)[number]>({
  payload: { order: OPTIONAL_TEXT, token: NEEDED_TEXT, values: QUOTE_VALUES },
  tables: QUOTE_TABLES,
  decide: made,
});

function made(
  asked: MakeQuotePayload,
  book: QuoteBook,
  context: Context,
): Decision<QuoteMade> | Refused {
  const same = book.quotes.find(({ record }) => record.entry === asked.token);
  if (same) {
    const { quote = '', order = '' } = same.record;
    return decided(answer(book, 'before', { quote, order }, context));
  }
  const quotedOn = context.today();
  const pricing = readPricing(asked.values, book.shop);
  const row = rowToQuote(book, asked, quotedOn);
  const problems = problemsOf(pricing, row);
  if (isRefused(row) || isRefused(pricing)) return { kind: 'refused', problems };
  const because = whyNotQuotable(row.record);
  if (because !== undefined) return refuse('', because);
  const facts = factsOf(book, row);
  if (isRefused(facts)) return facts;
  const { order } = facts;
  const numbers = [...book.orders, ...book.quotes].map(({ record }) => record.quote);
  const quote = nextQuote(numbers, quotedOn);
  const found = quoteRecord(facts, pricing.pricing, {
    quote,
    order,
    quotedOn,
    validUntil: daysLater(quotedOn, book.shop.quoteDays),
    entry: asked.token,
  });
  if (found.kind === 'no quote') return refuse('', found.because);
  const { after, writes } = kept(book, row, found, context);
  return decided(answer(after, 'now', { quote, order }, context), { writes });
}

type Found = Extract<MadeQuote, { readonly kind: 'quote' }>;

/** The rows that a quote makes, and the book with them. */
function kept(
  book: QuoteBook,
  row: OrderRow,
  { record, cells }: Found,
  context: Context,
): { readonly after: QuoteBook; readonly writes: readonly Write[] } {
  const isNew = !book.orders.some((one) => one.row === row.row);
  const written = { row: row.row, record: { ...row.record, ...cells } };
  const orders = book.orders.map((one) => (one.row === row.row ? written : one));
  const quotes = [...book.quotes, { row: context.cells('quotes').length + 1, record }];
  return {
    after: { ...book, orders: isNew ? [...orders, written] : orders, quotes },
    writes: [
      { kind: 'append', table: 'quotes', records: [record] },
      isNew
        ? { kind: 'append', table: 'orders', records: [written.record] }
        : { kind: 'change', table: 'orders', row: row.row, cells: everyQuoted(cells) },
    ],
  };
}

/** With the terms that were left out, so that their cells are cleared. */
function everyQuoted(cells: Found['cells']): Found['cells'] {
  return Object.fromEntries(QUOTED_KEYS.map((key) => [key, cells[key]]));
}

/** All that is wrong with what was typed, at once. */
function problemsOf(...parts: readonly object[]): readonly Problem[] {
  return parts.flatMap((part) => (isRefused(part) ? part.problems : []));
}

function answer(
  book: QuoteBook,
  when: QuoteMade['made'],
  { quote, order }: { readonly quote: string; readonly order: string },
  context: Context,
): QuoteMade {
  const row = book.orders.find(({ record }) => nameKey(record.order) === nameKey(order));
  return { kind: 'ok', made: when, quote, order, form: quoteForm(book, row, context) };
}
