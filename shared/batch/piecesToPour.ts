import { requireNumber } from '../errors/requireNumber.ts';
import { chanceByBad } from './chanceByBad.ts';
import { meanYield, requireBelief, type YieldBelief } from './yieldBelief.ts';

/** Past this many pieces for each good one wanted the yield is too poor to plan with; few goods get the floor below. */
const MOST_PER_GOOD = 20;
const MOST_AT_LEAST = 1000;

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
 * @param belief fixed yield 0 to 1, or its beta distribution with both weights > 0
 * @param confidence chance of reaching the goal, above 0 and below 1; 1 only has an answer at a fixed yield of 1
 * @returns pieces, or why no number of pieces is enough
 * @throws InputError on a figure out of range
 * @source JOHNSON-KOTZ, section 6.2.3
 */
export function piecesToPour(goal: number, belief: YieldBelief, confidence: number): PiecesToPour {
  requireNumber(goal, 'good pieces wanted', { atLeast: 1, atMost: 100_000, whole: true });
  requireBelief(belief);
  requireNumber(confidence, 'confidence', { greaterThan: 0, atMost: 1 });
  if (belief.kind === 'fixed' && belief.yield === 1)
    return { kind: 'pieces', pieces: goal, expectedGood: goal, attained: 1 };
  if (belief.kind === 'fixed' && belief.yield === 0)
    return { kind: 'unreachable', because: 'at a yield of 0 % no piece comes out good' };
  if (confidence === 1)
    return {
      kind: 'unreachable',
      because:
        'no number of pieces makes enough good ones certain; ask for a confidence below 100 %',
    };
  const most = Math.max(MOST_AT_LEAST, MOST_PER_GOOD * goal);
  const { bad, chance } = chanceByBad({ goal, belief, mostBad: most - goal, until: confidence });
  const pieces = goal + bad;
  if (chance >= confidence)
    return { kind: 'pieces', pieces, expectedGood: pieces * meanYield(belief), attained: chance };
  return {
    kind: 'unreachable',
    because: `even ${most} pieces would not give ${goal} good ones with that confidence: mend the yield first`,
  };
}

/**
 * Chance that at least `goal` of `pieces` are good: the upper tail of the binomial or beta-binomial distribution.
 * @param goal good pieces wanted, a whole number >= 0
 * @param pieces pieces poured, a whole number >= 0
 * @returns 0 to 1
 * @throws InputError on a figure out of range
 */
export function chanceOfEnough(goal: number, pieces: number, belief: YieldBelief): number {
  requireNumber(goal, 'good pieces wanted', { atLeast: 0, whole: true });
  requireNumber(pieces, 'pieces', { atLeast: 0, whole: true });
  requireBelief(belief);
  if (goal === 0) return 1;
  if (pieces < goal || (belief.kind === 'fixed' && belief.yield === 0)) return 0;
  return chanceByBad({ goal, belief, mostBad: pieces - goal, until: Number.POSITIVE_INFINITY })
    .chance;
}
