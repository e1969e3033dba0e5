import type { YieldBelief } from './yieldBelief.ts';

export interface BadWalk {
  /** Good pieces wanted, whole, >= 1 */
  readonly goal: number;
  readonly belief: YieldBelief;
  /** Stop after this many bad pieces, whole, >= 0 */
  readonly mostBad: number;
  /** Stop as soon as the chance reaches this */
  readonly until: number;
}

/** Larger sums are scaled down, so that goals in the thousands neither overflow nor vanish. */
const LARGE = 1e250;
const SMALL = 1e-250;

/** Rounding of a sum of many terms: a chance this near below the one asked for is a tie, not a miss. */
const TIE = 1e-12;

/**
 * Chance of meeting at most `bad` bad pieces before the goal-th good one, for the first `bad` at which it reaches `until`.
 *
 * P(0) = chance that the first `goal` are all good; P(bad + 1) / P(bad) as in `nextBadRatio`: negative binomial for a fixed
 * yield, beta negative binomial for a learned one. The sum runs in units of P(0), whose logarithm is kept apart.
 *
 * @returns the number of bad pieces at the stop and the chance there, 0 to 1
 * @source JOHNSON-KOTZ, section 6.2.3
 */
export function chanceByBad({ goal, belief, mostBad, until }: BadWalk): {
  readonly bad: number;
  readonly chance: number;
} {
  let logUnit = logChanceAllGood(belief, goal);
  let enough = until * (1 - TIE) * Math.exp(-logUnit);
  let term = 1;
  let sum = 1;
  let bad = 0;
  while (sum < enough && bad < mostBad) {
    term *= nextBadRatio(belief, goal, bad);
    sum += term;
    bad++;
    if (sum < LARGE) continue;
    term *= SMALL;
    sum *= SMALL;
    logUnit += Math.log(LARGE);
    enough = until * (1 - TIE) * Math.exp(-logUnit);
  }
  const isReached = sum >= enough;
  const chance = Math.min(1, sum * Math.exp(logUnit));
  return { bad, chance: isReached ? Math.max(chance, until) : chance };
}

/** Logarithm of the product of the chances that each next piece is good too: yield, or (a + i) / (a + b + i). */
function logChanceAllGood(belief: YieldBelief, goal: number): number {
  if (belief.kind === 'fixed') return goal * Math.log(belief.yield);
  const { goodWeight, badWeight } = belief;
  let logarithm = 0;
  let product = 1;
  for (let index = 0; index < goal; index++) {
    product *= (goodWeight + index) / (goodWeight + badWeight + index);
    if (product > SMALL) continue;
    logarithm += Math.log(product);
    product = 1;
  }
  return logarithm + Math.log(product);
}

function nextBadRatio(belief: YieldBelief, goal: number, bad: number): number {
  const ways = (goal + bad) / (bad + 1);
  if (belief.kind === 'fixed') return ways * (1 - belief.yield);
  const { goodWeight, badWeight } = belief;
  return (ways * (badWeight + bad)) / (goodWeight + badWeight + goal + bad);
}
