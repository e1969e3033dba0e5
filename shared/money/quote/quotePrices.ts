import { withWholeCost } from '../carriedCost.ts';
import { effectiveRate } from '../excise/exciseLine.ts';
import type { NoPrice, Price, PriceTerms } from '../price/price.ts';
import { type PriceBreak, priceBreaks } from '../price/priceBreaks.ts';
import { priceFrom } from '../price/priceFrom.ts';
import { stepMinor } from '../price/stepMinor.ts';
import { priceTerms } from '../priceTerms.ts';
import type { QuantityCost, QuoteFacts } from './quoteFacts.ts';
import type { Pricing } from './readPricing.ts';

/** The price asked for, and what other quantities would be sold at on the same terms. */
export interface QuotePrices {
  readonly price: Price | NoPrice;
  readonly breaks: readonly PriceBreak[];
}

/**
 * Prices of a quote at the terms of the sale; pure, so that the page turns them while they are typed.
 *
 * A price of a piece that was typed in is a markup on this quantity's cost: the others are sold at the same markup. One
 * below the cost has no markup, so the quantity asked for stands alone.
 */
export function quotePrices(facts: QuoteFacts, pricing: Pricing): QuotePrices {
  const { shop, quantity, matching, quantities } = facts;
  const terms: PriceTerms = {
    ...priceTerms(shop, pricing.terms, matching),
    aim: pricing.aim,
  };
  const own = quantities.find((one) => one.quantity === quantity);
  const price = priced(own, terms, facts);
  const others = termsOfOthers(own?.carried ?? 0, quantity, terms);
  if (others === undefined) return { price, breaks: [{ quantity, price }] };
  const breaks = priceBreaks(
    quantities.map((one) => one.quantity),
    (asked) => {
      const found = quantities.find((one) => one.quantity === asked);
      return found?.carried ?? noPrice(found);
    },
    others,
  );
  return {
    price,
    breaks: breaks.map((one) => {
      const cost = quantities.find((found) => found.quantity === one.quantity)?.cost;
      return cost === undefined
        ? one
        : { ...one, price: withWholeCost(one.price, { ...facts.cost, total: cost }) };
    }),
  };
}

function priced(
  own: QuantityCost | undefined,
  terms: PriceTerms,
  { quantity, cost }: QuoteFacts,
): Price | NoPrice {
  if (own?.carried === undefined) return noPrice(own);
  return withWholeCost(priceFrom({ pieces: quantity, cost: own.carried }, terms), cost);
}

/** Terms at which other quantities are sold; undefined where the typed price says nothing about them. */
function termsOfOthers(carried: number, quantity: number, terms: PriceTerms) {
  const { aim, currency } = terms;
  if (aim.by !== 'price') return terms;
  const markup = pieceMarkup(aim.perPiece, carried / quantity, terms);
  if (markup === undefined) return undefined;
  // Off the step, the others are not held to it either: this quantity's own price must come out as typed.
  const isOnStep = aim.perPiece % stepMinor(terms.priceStep, currency) === 0;
  return {
    ...terms,
    aim: { by: 'markup', markup },
    priceStep: isOnStep ? terms.priceStep : 0,
  } as const;
}

/**
 * Markup that the price of a piece is on the cost that it carries, after the tax inside it.
 * @param perPiece - and `cost` in smallest units
 * @returns undefined for a price below the cost, and for a piece that costs nothing
 */
export function pieceMarkup(
  perPiece: number,
  cost: number,
  { excise }: Pick<PriceTerms, 'excise'>,
): number | undefined {
  const taxInside = excise.taxIn === 'inside the price' ? effectiveRate(excise) : 0;
  const markup = perPiece / (cost * (1 + taxInside)) - 1;
  // A price right at the cost may come out a hair below it.
  const clean = Math.abs(markup) < 1e-12 ? 0 : markup;
  return clean >= 0 && Number.isFinite(clean) ? clean : undefined;
}

function noPrice(own: QuantityCost | undefined): NoPrice {
  return { kind: 'no price', because: own?.because ?? 'its cost is not known' };
}
