import { formatPlain } from '../../units/formatPlain.ts';
import { exciseTerms } from '../excise/exciseTerms.ts';
import { marginOfMarkup } from '../price/marginOfMarkup.ts';
import { fromMinor } from '../toMinor.ts';
import type { QuoteFacts } from './quoteFacts.ts';
import type { AIM_KINDS } from './quoteFieldTypes.ts';
import { pieceMarkup, quotePrices } from './quotePrices.ts';
import type { Pricing } from './readPricing.ts';

/**
 * The price on show as another way to set it is typed, so that the price stays when the way is turned.
 *
 * Per cent are cut to two places, not rounded: the price of a piece is rounded up to its step again.
 * @returns `""` where the price has no such figure
 */
export function turnedAim(
  facts: QuoteFacts,
  pricing: Pricing,
  to: (typeof AIM_KINDS)[number],
): string {
  const { price } = quotePrices(facts, pricing);
  if (price.kind === 'no price') return '';
  if (to === 'price of a piece') return String(fromMinor(price.perPiece, price.currency));
  const { quantities, quantity, shop } = facts;
  const own = quantities.find((one) => one.quantity === quantity)?.carried ?? 0;
  const excise = exciseTerms(shop, pricing.terms);
  const markup = pieceMarkup(price.perPiece, own / quantity, { excise });
  if (markup === undefined) return '';
  const share = to === 'markup' ? markup : marginOfMarkup(markup);
  return formatPlain(Math.floor(Number((share * 1e4).toPrecision(12))) / 100);
}
