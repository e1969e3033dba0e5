import { meanYield, yieldBelief } from '../../batch/yieldBelief.ts';
import { requireNumber } from '../../errors/requireNumber.ts';
import type { CountedPieces, YieldSpread } from './betaBinomialLogLikelihood.ts';
import { betaQuantile } from './betaQuantile.ts';

/** Yield to expect of a group, and the interval it probably lies in. */
export interface ShrunkenYield {
  readonly expected: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Yield of a group with its own pieces and the prior together: beta(mean * weight + good, (1 - mean) * weight + bad).
 *
 * A few pieces move it little, many make it their own share. The interval takes the prior as known, so it is a little too
 * narrow where few groups stand behind it. It has equal tails: with a weight of good or bad together below one it may leave the
 * expected yield out.
 * @param confidence of the two-sided interval, between 0 and 1, both excluded
 * @throws InputError on a figure out of range
 * @source GELMAN, section 2.4; CASELLA1985
 */
export function shrunkenYield(
  group: CountedPieces,
  prior: YieldSpread,
  confidence: number,
): ShrunkenYield {
  requireNumber(confidence, 'confidence', { greaterThan: 0, lessThan: 1 });
  const belief = yieldBelief({ ...group, mean: prior.mean, weight: prior.weight });
  const tail = (1 - confidence) / 2;
  return {
    expected: meanYield(belief),
    low: betaQuantile(tail, belief.goodWeight, belief.badWeight),
    high: betaQuantile(1 - tail, belief.goodWeight, belief.badWeight),
  };
}
