import type { CurrencyCode } from '../../book/currencies.ts';
import { requireNumber } from '../../errors/requireNumber.ts';
import { fromEngine } from '../../units/toEngine.ts';
import { fromMinor, shareMinor, toMinor } from '../toMinor.ts';

export interface SimpleCostFacts {
  /** Weighed out, all layers, and in one pack [m3], >= 0 and > 0 */
  readonly plastisol: number;
  readonly packSize: number;
  readonly packPrice: number;
  /** Colorants, hooks, bags: everything else that is bought for the order, in the currency */
  readonly supplies: number;
  /** Hands-on time [s], and the price of an hour of it */
  readonly work: number;
  readonly laborRate: number;
  /** What bears no overhead, in the currency */
  readonly other: number;
  /** Share of material and work */
  readonly overheadShare: number;
  /** Good pieces, a whole number >= 1 */
  readonly pieces: number;
  readonly currency: CurrencyCode;
}

/** In the currency, each a whole number of its smallest units but the price of a piece. */
export interface SimpleCost {
  readonly total: number;
  readonly perPiece: number;
  readonly material: number;
  readonly work: number;
  readonly overhead: number;
}

/**
 * Cost of an order from a few figures.
 *
 * material = plastisol / pack size x pack price + supplies; work = hours x rate; overhead = share x (material + work);
 * total = material + work + overhead + other; a piece = total / pieces. Each part is rounded to the smallest unit once.
 * @throws InputError on a figure out of range
 */
export function simpleCost(facts: SimpleCostFacts): SimpleCost {
  const { currency, overheadShare, pieces } = facts;
  requireNumber(facts.plastisol, 'plastisol', { unit: 'm3', atLeast: 0 });
  requireNumber(facts.packSize, 'pack size', { unit: 'm3', greaterThan: 0 });
  requireNumber(facts.packPrice, 'pack price', { atLeast: 0 });
  requireNumber(facts.supplies, 'supplies', { atLeast: 0 });
  requireNumber(facts.work, 'minutes of work', { unit: 's', atLeast: 0 });
  requireNumber(facts.laborRate, 'labor rate', { atLeast: 0 });
  requireNumber(facts.other, 'other', { atLeast: 0 });
  requireNumber(overheadShare, 'overhead', { atLeast: 0 });
  requireNumber(pieces, 'pieces', { atLeast: 1, whole: true });
  const bought = (facts.plastisol / facts.packSize) * facts.packPrice + facts.supplies;
  const material = toMinor(bought, currency, 'material');
  const work = toMinor(fromEngine(facts.work, 'h') * facts.laborRate, currency, 'work');
  const overhead = shareMinor(material + work, overheadShare);
  const total = material + work + overhead + toMinor(facts.other, currency, 'other');
  const shown = (minor: number) => fromMinor(minor, currency);
  return {
    total: shown(total),
    perPiece: shown(total) / pieces,
    material: shown(material),
    work: shown(work),
    overhead: shown(overhead),
  };
}
