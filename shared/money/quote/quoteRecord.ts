import type { OrderRecord } from '../../book/tables.ts';
import type { Price } from '../price/price.ts';
import { fromMinor } from '../toMinor.ts';
import { type QuoteIdentity, quoteDocument } from './quoteDocument.ts';
import type { QuoteFacts } from './quoteFacts.ts';
import type { QuoteRecord } from './quoteOf.ts';
import { quotePrices } from './quotePrices.ts';
import type { Pricing } from './readPricing.ts';

/** What a quote writes: its own row, and cells of the order's; or why there is none. */
export type MadeQuote =
  | {
      readonly kind: 'quote';
      readonly record: QuoteRecord;
      readonly cells: Pick<OrderRecord, QuotedKey>;
    }
  | { readonly kind: 'no quote'; readonly because: string };

/** Columns of *Orders* that making a quote writes. */
export const QUOTED_KEYS = [
  'rush',
  'discount',
  'shipping',
  'saleKind',
  'exciseStatus',
  'quote',
  'quotedOn',
  'validUntil',
] as const;

type QuotedKey = (typeof QUOTED_KEYS)[number];

/** More would not stay on one page. */
const LONGEST_TERMS = 700;

/** A quote of an order at the terms of the sale, as it is kept. */
export function quoteRecord(
  facts: QuoteFacts,
  pricing: Pricing,
  { entry, ...identity }: QuoteIdentity & { readonly entry: string },
): MadeQuote {
  const { price, breaks } = quotePrices(facts, pricing);
  if (price.kind === 'no price')
    return { kind: 'no quote', because: `There is no price to quote: ${price.because}.` };
  if (facts.shop.quoteTerms.length > LONGEST_TERMS)
    return {
      kind: 'no quote',
      because: `In Shop, quote terms must be at most ${LONGEST_TERMS} characters long to stay on one page, got ${facts.shop.quoteTerms.length}.`,
    };
  const { quote, order, quotedOn, validUntil } = identity;
  const { customer, mold, pattern, version, quantity } = facts;
  const cells = { ...pricing.terms, quote, quotedOn, validUntil };
  return {
    kind: 'quote',
    cells,
    record: {
      ...cells,
      order,
      customer,
      mold,
      pattern,
      version,
      quantity,
      ...amountsOf(price),
      printed: JSON.stringify(quoteDocument(facts, { price, breaks }, identity)),
      entry,
    },
  };
}

function amountsOf({ currency, perPiece, goods, total, deposit }: Price) {
  const amount = (minor: number) => fromMinor(minor, currency);
  return {
    each: amount(perPiece),
    price: amount(goods),
    total: amount(total),
    deposit: amount(deposit),
  };
}
