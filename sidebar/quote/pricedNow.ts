import type { Problem } from '../../shared/errors/refuse.ts';
import type { QuoteFacts } from '../../shared/money/quote/quoteFacts.ts';
import type { QuoteKey, QuoteValues } from '../../shared/money/quote/quoteFieldTypes.ts';
import { type QuotePrices, quotePrices } from '../../shared/money/quote/quotePrices.ts';
import { readPricing } from '../../shared/money/quote/readPricing.ts';
import type { QuoteView } from '../panel/view.ts';

/** What the cost follows from. */
const COST_KEYS: readonly QuoteKey[] = ['mold', 'pattern', 'quantity', 'moldsInUse'];

export function isCostKey(key: QuoteKey): boolean {
  return COST_KEYS.includes(key);
}

/** Tells facts of other goods apart. */
export function factsKey(values: QuoteValues): string {
  return JSON.stringify(COST_KEYS.map((key) => (values[key] ?? '').trim()));
}

/** Whether there is enough to ask what it costs. */
export function isAskable({ mold = '', pattern = '', quantity = '' }: QuoteValues): boolean {
  return [mold, pattern, quantity].every((text) => text.trim() !== '');
}

/** What the page can price now. */
export type Priced =
  | { readonly kind: 'prices'; readonly facts: QuoteFacts; readonly prices: QuotePrices }
  /** Nothing was worked out yet, or for other goods. */
  | { readonly kind: 'no facts' }
  | { readonly kind: 'problems'; readonly problems: readonly Problem[] };

export function pricedNow({ form, values, facts, factsOf }: QuoteView): Priced {
  const isOther = form.order === '' && factsOf !== factsKey(values);
  if (facts === undefined || isOther) return { kind: 'no facts' };
  const read = readPricing(values, facts.shop);
  if (read.kind === 'refused') return { kind: 'problems', problems: read.problems };
  return { kind: 'prices', facts, prices: quotePrices(facts, read.pricing) };
}
