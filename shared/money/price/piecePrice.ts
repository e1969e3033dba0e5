import { requireNumber } from '../../errors/requireNumber.ts';
import { ceilToStep, LARGEST_MINOR } from '../toMinor.ts';
import { marginOfMarkup, markupOfMargin } from './marginOfMarkup.ts';
import type { NoPrice, PriceAim } from './price.ts';

interface PieceAsk {
  /** Cost of one piece in smallest units, unrounded, >= 0. */
  readonly cost: number;
  readonly aim: PriceAim;
  /** Smallest units, a whole number >= 1. */
  readonly step: number;
  /** Tax inside the price as a share of the price without it; 0 when there is none. */
  readonly taxInside: number;
}

/**
 * Price of one piece that keeps the aim after the tax inside it, rounded up to the step.
 *
 * price = cost (1 + markup) (1 + tax inside), up to the step; markup = margin / (1 - margin). A price that was agreed stays as it is.
 * @returns smallest units, or why there is no price
 * @throws InputError on a figure out of range: `margin must be less than 1, got 1`
 * @source MARGIN-MARKUP
 */
export function piecePrice({ cost, aim, step, taxInside }: PieceAsk): number | NoPrice {
  requireNumber(cost, 'cost', { atLeast: 0 });
  requireNumber(step, 'price step', { atLeast: 1, whole: true });
  if (aim.by === 'price') {
    requireNumber(aim.perPiece, 'price of a piece', { atLeast: 0, whole: true });
    return aim.perPiece;
  }
  const markup = aim.by === 'margin' ? markupOfMargin(aim.margin) : aim.markup;
  // Checks the markup's bounds too.
  marginOfMarkup(markup);
  if (cost === 0)
    return {
      kind: 'no price',
      because: 'the cost is 0, and no margin on nothing makes a price: enter what it costs',
    };
  const price = ceilToStep(cost * (1 + markup) * (1 + taxInside), step);
  if (price <= LARGEST_MINOR) return price;
  return {
    kind: 'no price',
    because: 'so high a margin makes a price past all sense: lower the margin',
  };
}
