import { requireNumber } from '../errors/requireNumber.ts';
import { betaQuantile } from './yields/betaQuantile.ts';

/**
 * Exact (Clopper-Pearson) interval of the share of good pieces, from the binomial tails: at the low end so many good ones or
 * more have the chance (1 - confidence) / 2, at the high end so many or fewer. These tails are those of beta distributions. Never too narrow, often wider than Wilson's.
 * @param good whole, 0 to poured
 * @param poured whole, >= 1
 * @param confidence of the two-sided interval, between 0 and 1, both excluded
 * @returns low and high end, 0 to 1
 * @throws InputError on a figure out of range
 * @source NEWCOMBE1998, method 5; NISTHANDBOOK, section 7.2.4.2
 */
export function exactInterval(
  good: number,
  poured: number,
  confidence: number,
): { readonly low: number; readonly high: number } {
  requireNumber(poured, 'poured', { atLeast: 1, whole: true });
  requireNumber(good, 'good', { atLeast: 0, atMost: poured, whole: true });
  requireNumber(confidence, 'confidence', { greaterThan: 0, lessThan: 1 });
  const tail = (1 - confidence) / 2;
  return {
    low: good === 0 ? 0 : betaQuantile(tail, good, poured - good + 1),
    high: good === poured ? 1 : betaQuantile(1 - tail, good + 1, poured - good),
  };
}
