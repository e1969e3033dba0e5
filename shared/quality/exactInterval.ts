import { chanceOfEnough } from '../batch/piecesToPour.ts';
import { requireNumber } from '../errors/requireNumber.ts';

/** Halvings after which a bound is exact to about 1e-15. */
const HALVINGS = 50;

/**
 * Exact (Clopper-Pearson) interval of the share of good pieces, from the binomial tails: at the low end so many good ones or
 * more have the chance (1 - confidence) / 2, at the high end so many or fewer. Never too narrow, often wider than Wilson's.
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
    low: lowestShare(good, poured, tail),
    high: 1 - lowestShare(poured - good, poured, tail),
  };
}

/** The share at which `good` or more of `poured` have this chance; 0 when there is none. */
function lowestShare(good: number, poured: number, chance: number): number {
  if (good === 0) return 0;
  let low = 0;
  let high = 1;
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (low + high) / 2;
    if (chanceOfEnough(good, poured, { kind: 'fixed', yield: middle }) < chance) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
