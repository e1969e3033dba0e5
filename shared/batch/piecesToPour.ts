import { requireNumber } from '../errors/requireNumber.ts';
import { logChanceAllGood, meanYield, nextBadRatio, type YieldBelief } from './yieldBelief.ts';

/** Past this many pieces for each good one wanted, the yield is too poor to plan with. */
const MOST_PER_GOOD = 20;

export type PiecesToPour =
  | {
      readonly kind: 'pieces';
      readonly pieces: number;
      readonly expectedGood: number;
      /** Chance that at least the goal is good, >= the confidence asked for. */
      readonly attained: number;
    }
  | { readonly kind: 'unreachable'; readonly because: string };

/**
 * Smallest number of pieces n with P(good >= goal) >= confidence: the goal plus the quantile of the number of bad pieces met
 * before the goal-th good one. Binomial for a fixed yield, beta-binomial for a yield learned from a record.
 *
 * Pieces are taken as alike and independent given the yield; a round that fails whole (a cold mold) breaks that.
 * @param goal good pieces wanted, a whole number from 1 to 100,000
 * @param confidence chance of reaching the goal, between 0 and 1, both excluded
 * @throws InputError on a figure out of range
 * @source JOHNSON-KOTZ, section 6.2.3
 */
export function piecesToPour(goal: number, belief: YieldBelief, confidence: number): PiecesToPour {
  requireNumber(goal, 'good pieces wanted', { atLeast: 1, atMost: 100_000, whole: true });
  requireBelief(belief);
  if (confidence === 1)
    return {
      kind: 'unreachable',
      because:
        'no number of pieces makes enough good ones certain; ask for a confidence below 100 %',
    };
  requireNumber(confidence, 'confidence', { greaterThan: 0, lessThan: 1 });
  if (belief.kind === 'fixed' && belief.yield === 0)
    return { kind: 'unreachable', because: 'at a yield of 0 % no piece comes out good' };
  const most = MOST_PER_GOOD * goal;
  let logChance = logChanceAllGood(belief, goal);
  let attained = Math.exp(logChance);
  for (let bad = 0; goal + bad <= most; bad++) {
    if (attained >= confidence)
      return {
        kind: 'pieces',
        pieces: goal + bad,
        expectedGood: (goal + bad) * meanYield(belief),
        attained: Math.min(attained, 1),
      };
    logChance += Math.log(nextBadRatio(belief, goal, bad));
    attained += Math.exp(logChance);
  }
  return {
    kind: 'unreachable',
    because: `even ${most} pieces would not give ${goal} good ones with that confidence: mend the yield first`,
  };
}

/**
 * Chance that at least `goal` of `pieces` are good.
 * @param goal good pieces wanted, a whole number >= 0
 * @param pieces pieces poured, a whole number >= 0
 * @throws InputError on a figure out of range
 */
export function chanceOfEnough(goal: number, pieces: number, belief: YieldBelief): number {
  requireNumber(goal, 'good pieces wanted', { atLeast: 0, whole: true });
  requireNumber(pieces, 'pieces', { atLeast: 0, whole: true });
  requireBelief(belief);
  if (goal === 0) return 1;
  if (pieces < goal || (belief.kind === 'fixed' && belief.yield === 0)) return 0;
  let logChance = logChanceAllGood(belief, goal);
  let sum = Math.exp(logChance);
  for (let bad = 0; bad < pieces - goal; bad++) {
    logChance += Math.log(nextBadRatio(belief, goal, bad));
    sum += Math.exp(logChance);
  }
  return Math.min(sum, 1);
}

function requireBelief(belief: YieldBelief): void {
  if (belief.kind === 'fixed') {
    requireNumber(belief.yield, 'yield', { atLeast: 0, atMost: 1 });
    return;
  }
  requireNumber(belief.goodWeight, 'good weight', { greaterThan: 0 });
  requireNumber(belief.badWeight, 'bad weight', { greaterThan: 0 });
}
