import { QUOTE_TABLES, type QuoteBook } from '../../book/book.ts';
import type { OrderRow } from '../../book/bookIndex.ts';
import type { Missing } from '../../book/missingCells.ts';
import { ORDERS } from '../../book/tables/orders.ts';
import type { Problem, Refused } from '../../errors/refuse.ts';
import { indexCosts } from '../../money/cost/costIndex.ts';
import { nextOrder } from '../../money/quote/nextQuote.ts';
import { type QuoteFacts, quoteFacts } from '../../money/quote/quoteFacts.ts';
import { GOODS_KEYS, LONGEST_FIELD, PRICING_KEYS } from '../../money/quote/quoteFieldTypes.ts';
import { readGoods } from '../../money/quote/readGoods.ts';
import { isRefused, readCommand } from '../command.ts';
import { orderInBook } from '../orderInBook.ts';
import { missingText } from '../plan/planOfOrder.ts';
import type { QuotePayload } from '../quoteCommands.ts';
import { OPTIONAL_TEXT } from '../readPayload.ts';

/** The fields of a quote as typed, none of them longer than a cell should be. */
const TYPED = { longest: LONGEST_FIELD, needed: false };
export const QUOTE_VALUES = {
  texts: Object.fromEntries([...GOODS_KEYS, ...PRICING_KEYS].map((key) => [key, TYPED])),
};

/**
 * What an order, or what is typed where there is none yet, costs to make at its quantity and at those of the price table. The page
 * makes prices of it.
 */
export const quoteFor = readCommand<'quoteFor', (typeof QUOTE_TABLES)[number]>({
  payload: { order: OPTIONAL_TEXT, values: QUOTE_VALUES },
  tables: QUOTE_TABLES,
  answer: (asked, book, context) => {
    const row = rowToQuote(book, asked, context.today());
    if (isRefused(row)) return row;
    const facts = factsOf(book, row);
    return isRefused(facts) ? facts : { kind: 'ok', facts };
  },
});

/** The order's own row, or one made of what is typed under the last of *Orders*. */
export function rowToQuote(
  book: QuoteBook,
  { order = '', values }: QuotePayload,
  date: string,
): OrderRow | Refused {
  if (order !== '') return orderInBook(book, order);
  const goods = readGoods(values);
  if (goods.kind === 'refused') return goods;
  const numbers = [...book.orders, ...book.quotes].map(({ record }) => record.order);
  const last = book.orders.reduce((most, { row }) => Math.max(most, row), 1);
  return {
    row: last + 1,
    record: { ...goods.record, order: nextOrder(numbers), date, status: 'asked' },
  };
}

/** What a row costs, or what keeps that from being known: at the form's fields where they are in question. */
export function factsOf(book: QuoteBook, row: OrderRow): QuoteFacts | Refused {
  const facts = quoteFacts(indexCosts(book), row);
  if (!('missing' in facts)) return facts;
  const isTyped = !book.orders.some((one) => one.row === row.row);
  return { kind: 'refused', problems: facts.missing.map((one) => problemOf(one, isTyped)) };
}

function problemOf(missing: Missing, isTyped: boolean): Problem {
  const { sheet, heading, text } = missing;
  if (sheet === 'Orders' && isTyped)
    return { field: GOODS_KEYS.find((key) => ORDERS.columns[key].heading === heading) ?? '', text };
  return { field: '', text: missingText(missing) };
}
