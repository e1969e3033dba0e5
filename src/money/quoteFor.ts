import type { QuoteBook } from '../../shared/book/book.ts';
import { QUOTE_TABLES } from '../../shared/book/book.ts';
import type { OrderRow } from '../../shared/book/bookIndex.ts';
import type { Missing } from '../../shared/book/missingCells.ts';
import { ORDERS } from '../../shared/book/tables/orders.ts';
import type { QuoteFactsAnswer, QuotePayload } from '../../shared/commands/quoteCommands.ts';
import type { Problem, Refused } from '../../shared/errors/refuse.ts';
import { indexCosts } from '../../shared/money/cost/costIndex.ts';
import { type QuoteFacts, quoteFacts } from '../../shared/money/quote/quoteFacts.ts';
import {
  GOODS_KEYS,
  LONGEST_FIELD,
  PRICING_KEYS,
  type QuoteValues,
} from '../../shared/money/quote/quoteFields.ts';
import { nextOrder } from '../../shared/money/quote/quoteNumber.ts';
import { readGoods } from '../../shared/money/quote/readGoods.ts';
import { readBookNow } from '../platform/readBookNow.ts';
import { today } from '../platform/today.ts';
import { isRefused, orderInBook } from '../sidebar/orderInBook.ts';
import { OPTIONAL_TEXT, readPayload } from '../sidebar/readPayload.ts';

/**
 * Page call: what an order, or what is typed where there is none yet, costs to make at its quantity and at those of the
 * price table. The page makes prices of it.
 * @param payload `{ order?, values }`, values as typed
 */
export function quoteFor(payload: unknown): QuoteFactsAnswer | Refused {
  const { values: sent, ...rest } = Object(payload) as Readonly<Record<string, unknown>>; // any value makes an object
  const asked = readPayload<Omit<QuotePayload, 'values'>>({ order: OPTIONAL_TEXT }, rest);
  const values = readValues(sent);
  if (asked.kind === 'refused') return asked;
  if (values.kind === 'refused') return values;
  const book = readBookNow(QUOTE_TABLES);
  const row = rowToQuote(book, { ...asked.value, values: values.value });
  if (isRefused(row)) return row;
  const facts = factsOf(book, row);
  return isRefused(facts) ? facts : { kind: 'ok', facts };
}

/** The fields of a quote, none of them longer than a cell should be. */
export function readValues(sent: unknown) {
  const field = { longest: LONGEST_FIELD, needed: false };
  const keys = [...GOODS_KEYS, ...PRICING_KEYS];
  return readPayload<QuoteValues>(
    Object.fromEntries(keys.map((key) => [key, field])) as Record<keyof QuoteValues, typeof field>, // one for each key
    sent,
  );
}

/** The order's own row, or one made of what is typed under the last of *Orders*. */
export function rowToQuote(
  book: QuoteBook,
  { order = '', values }: QuotePayload,
): OrderRow | Refused {
  if (order !== '') return orderInBook(book, order);
  const goods = readGoods(values);
  if (goods.kind === 'refused') return goods;
  const numbers = [...book.orders, ...book.quotes].map(({ record }) => record.order);
  const last = book.orders.reduce((most, { row }) => Math.max(most, row), 1);
  const date = today();
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
  return { kind: 'refused', problems: facts.missing.map((gap) => problemOf(gap, isTyped)) };
}

function problemOf({ sheet, row, heading, text }: Missing, isTyped: boolean): Problem {
  if (sheet === 'Orders' && isTyped)
    return { field: GOODS_KEYS.find((key) => ORDERS.columns[key].heading === heading) ?? '', text };
  return { field: '', text: `In ${sheet}${row === undefined ? '' : `, row ${row}`}: ${text}` };
}
