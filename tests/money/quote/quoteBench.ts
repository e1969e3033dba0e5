import type { Shop } from '../../../shared/book/settings/settings.ts';
import type { OrderRecord } from '../../../shared/book/tables.ts';
import { indexCosts } from '../../../shared/money/cost/costIndex.ts';
import type { Price } from '../../../shared/money/price/price.ts';
import { type QuoteFacts, quoteFacts } from '../../../shared/money/quote/quoteFacts.ts';
import { type QuotePrices, quotePrices } from '../../../shared/money/quote/quotePrices.ts';
import type { Pricing } from '../../../shared/money/quote/readPricing.ts';
import { demoMoneyBook } from '../stock/demoMoneyBook.ts';

/** An order of the invented shop that is asked for; 1012 stands in row 13. */
export function factsOf(order: OrderRecord = {}, shop: Partial<Shop> = {}): QuoteFacts {
  const book = demoMoneyBook();
  const asked: OrderRecord = {
    order: '1013',
    date: '2026-11-30',
    mold: 'Round stick 5 in',
    pattern: 'Dusk line',
    quantity: 50,
    status: 'asked',
    ...order,
  };
  const costs = indexCosts({ ...book, shop: { ...book.shop, ...shop } });
  const facts = quoteFacts(costs, { row: 14, record: asked });
  if ('missing' in facts) throw new Error(facts.missing.map(({ text }) => text).join('; '));
  return facts;
}

export function pricing(change: Partial<Pricing> = {}): Pricing {
  return { aim: { by: 'margin', margin: 0.45 }, terms: {}, ...change };
}

/** Prices of which the one asked for is there. */
export function pricesOf(
  facts: QuoteFacts,
  asked: Pricing,
): { readonly price: Price; readonly breaks: QuotePrices['breaks'] } {
  const { price, breaks } = quotePrices(facts, asked);
  if (price.kind === 'no price') throw new Error(price.because);
  return { price, breaks };
}
