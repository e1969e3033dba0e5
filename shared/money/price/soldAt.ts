import { type ExciseLine, exciseLine } from '../excise/exciseLine.ts';
import { toMinor } from '../toMinor.ts';
import { gainOf } from './marginOfMarkup.ts';
import type { PriceTerms } from './price.ts';

/** A whole line sold at a price, in smallest units. */
export interface SoldAt {
  /** The price, tax inside included; shipping, sales tax and excise added to it are not. */
  readonly goods: number;
  readonly excise: ExciseLine;
  /** What the shop keeps: goods less the excise inside them. */
  readonly net: number;
  /** (net - cost) / net; absent when nothing is kept. */
  readonly margin?: number;
  /** (net - cost) / cost; absent when nothing was spent. */
  readonly markup?: number;
}

/**
 * What is kept of a line's agreed price, which holds every charge and discount already.
 * @param price in the currency, >= 0
 * @param cost in smallest units
 */
export function soldAt(
  price: number,
  cost: number,
  { currency, excise }: Pick<PriceTerms, 'currency' | 'excise'>,
): SoldAt {
  const goods = toMinor(price, currency, 'price agreed');
  const line = exciseLine(goods, excise);
  const net = goods - line.inside;
  return { goods, excise: line, net, ...gainOf(net, cost) };
}
