/// <reference path="../quality/jstat-esm.d.ts" />
import { erfcinv } from 'jstat-esm';
import { requireNumber } from '../errors/requireNumber.ts';

/** A fitted figure that cannot be below 0. */
export interface Fitted {
  /** > 0 */
  readonly value: number;
  /** Standard error, > 0 */
  readonly error: number;
}

/** Standard errors beyond which nothing is drawn; a normal has 0.3 % there. */
const FARTHEST = 3;
/** Of the fitted value: a conductance that went to nothing would be another plate. */
const LEAST_SHARE = 0.1;

/**
 * Value that a fitted figure stays below with a given chance: normal about its value, held within three standard errors
 * and above a tenth of the value.
 *
 * value + error z(share), z the inverse of the normal distribution. What lies beyond is moved to the end, not spread.
 *
 * @param share - the chance, 0 to 1
 * @throws InputError on a figure out of range
 */
export function normal(share: number, { value, error }: Fitted): number {
  requireNumber(share, 'share', { atLeast: 0, atMost: 1 });
  requireNumber(value, 'fitted value', { greaterThan: 0 });
  requireNumber(error, 'standard error', { greaterThan: 0 });
  const z = -Math.SQRT2 * erfcinv(2 * share);
  return Math.max(LEAST_SHARE * value, value + error * Math.max(-FARTHEST, Math.min(FARTHEST, z)));
}
