import type { QuoteBook } from '../../book/book.ts';
import { nameKey, type OrderRow } from '../../book/bookIndex.ts';
import { indexCosts } from '../../money/cost/costIndex.ts';
import { planMoney } from '../../money/planMoney.ts';
import { quoteFacts } from '../../money/quote/quoteFacts.ts';
import type { QuoteValues } from '../../money/quote/quoteFieldTypes.ts';
import { quoteOf } from '../../money/quote/quoteOf.ts';
import { whyNotQuotable } from '../../money/quote/whyNotQuotable.ts';
import { toMinor } from '../../money/toMinor.ts';
import { formatPlain } from '../../units/formatPlain.ts';
import type { Context } from '../command.ts';
import type { QuotedBefore, QuoteForm } from '../quoteCommands.ts';

/** The form of an order of the book, or a blank one. */
export function quoteForm(book: QuoteBook, row: OrderRow | undefined, context: Context): QuoteForm {
  const { shop, molds, patterns } = book;
  return {
    kind: 'ok',
    order: '',
    currency: shop.currency,
    choices: {
      molds: names(molds.map(({ record }) => record.mold)),
      patterns: names(patterns.map(({ record }) => record.pattern)),
    },
    values: { by: 'target margin', aim: percent(shop.targetMargin) },
    token: context.freshToken(),
    missing: [],
    ...(row === undefined ? {} : ofOrder(book, row, context)),
  };
}

function ofOrder(book: QuoteBook, row: OrderRow, context: Context): Partial<QuoteForm> {
  const costs = indexCosts(book);
  const facts = quoteFacts(costs, row);
  const { record } = row;
  const notQuotable = whyNotQuotable(record);
  return {
    order: record.order ?? '',
    values: { ...startingAim(book, row), ...typedTerms(row) },
    ...('missing' in facts ? { missing: facts.missing } : { facts }),
    ...(notQuotable === undefined ? {} : { notQuotable }),
    ...(record.quote === undefined ? {} : { quoted: quotedBefore(book, row, context.today()) }),
    ...(record.acceptedOn === undefined
      ? {}
      : { accepted: { on: record.acceptedOn, ...agreedOf(planMoney(costs, row)) } }),
  };
}

/** An order that was quoted opens at the price that the customer was told. */
function startingAim(book: QuoteBook, row: OrderRow): QuoteValues {
  const each = quoteOf(book, row)?.record.each;
  if (each !== undefined && row.record.acceptedOn === undefined)
    return { by: 'price of a piece', aim: String(each) };
  return { by: 'target margin', aim: percent(book.shop.targetMargin) };
}

function agreedOf(money: ReturnType<typeof planMoney>) {
  if (money.kind === 'missing' || money.agreed === undefined) return {};
  const { goods: price, margin } = money.agreed;
  return margin === undefined ? { price } : { price, margin };
}

/** Fields of the terms as the row holds them. */
function typedTerms({ record }: OrderRow): QuoteValues {
  const { rush, discount, shipping, saleKind, exciseStatus } = record;
  return {
    rush: rush ?? '',
    discount: discount === undefined ? '' : percent(discount),
    shipping: shipping === undefined ? '' : String(shipping),
    saleKind: saleKind ?? '',
    exciseStatus: exciseStatus ?? '',
  };
}

function quotedBefore(book: QuoteBook, row: OrderRow, today: string): QuotedBefore {
  const { quote = '', quotedOn, validUntil } = row.record;
  const kept = quoteOf(book, row)?.record;
  const until = validUntil ?? kept?.validUntil ?? '';
  const total = kept?.printed === undefined ? undefined : kept.total;
  return {
    quote,
    quotedOn: quotedOn ?? kept?.quotedOn ?? '',
    validUntil: until,
    isExpired: until !== '' && until < today,
    ...(total === undefined ? {} : { total: toMinor(total, book.shop.currency) }),
  };
}

function percent(share: number): string {
  return formatPlain(share * 100);
}

/** Each name once, as it is written first. */
function names(all: readonly (string | undefined)[]): readonly string[] {
  const found = new Map<string, string>();
  for (const name of all)
    if (name !== undefined && !found.has(nameKey(name))) found.set(nameKey(name), name);
  return [...found.values()];
}
