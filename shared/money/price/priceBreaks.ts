import type { NoPrice, Price, PriceTerms } from './price.ts';
import { priceFrom } from './priceFrom.ts';

/** The price of one quantity beside those of the others asked for. */
export interface PriceBreak {
  readonly quantity: number;
  readonly price: Price | NoPrice;
  /** The most pieces asked for that cost no more in all than these. */
  readonly sameFor?: number;
  /** The nearest smaller quantity whose price of a piece is lower: here a new round or a bigger loss begins. */
  readonly dearerThan?: number;
}

/**
 * A price for each quantity from what that quantity costs, so that the breaks are those of set-up, rounds and pieces.
 *
 * The price of a piece may rise with the quantity where a further round begins; it is shown as it is, and marked.
 * @param quantities whole numbers, in any order; the answer keeps it
 * @param costAt cost of the whole order in smallest units, or why that quantity has none
 * @throws InputError on a figure out of range
 */
export function priceBreaks(
  quantities: readonly number[],
  costAt: (quantity: number) => number | NoPrice,
  terms: PriceTerms,
): readonly PriceBreak[] {
  const priced = quantities.map((quantity) => {
    const cost = costAt(quantity);
    const price = typeof cost === 'number' ? priceFrom({ pieces: quantity, cost }, terms) : cost;
    return { quantity, price };
  });
  return priced.map(({ quantity, price }) => {
    if (price.kind !== 'price') return { quantity, price };
    const same = mostOf(
      priced.filter((more) => more.quantity > quantity),
      (more) => more.total <= price.total,
    );
    const cheaper = mostOf(
      priced.filter((less) => less.quantity < quantity),
      (less) => less.perPiece < price.perPiece,
    );
    return {
      quantity,
      price,
      ...(same === undefined ? {} : { sameFor: same }),
      ...(cheaper === undefined ? {} : { dearerThan: cheaper }),
    };
  });
}

function mostOf(
  breaks: readonly PriceBreak[],
  isSought: (price: Price) => boolean,
): number | undefined {
  const found = breaks
    .filter(({ price }) => price.kind === 'price' && isSought(price))
    .map(({ quantity }) => quantity);
  return found.length > 0 ? Math.max(...found) : undefined;
}

/** What is odd about a break, in words; nothing for most. */
export function breakText({ quantity, sameFor, dearerThan }: PriceBreak): string {
  if (sameFor !== undefined) return `${sameFor} cost no more in all than ${quantity}`;
  if (dearerThan !== undefined) return `a piece costs more than at ${dearerThan}`;
  return '';
}
