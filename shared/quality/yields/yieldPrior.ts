import type { CountedPieces, YieldSpread } from './betaBinomialLogLikelihood.ts';
import { fitYieldSpread, type SpreadFit } from './fitYieldSpread.ts';

/** With fewer groups the spread between them cannot be told from chance. Common practice, no source. */
export const FEWEST_GROUPS = 5;

/** Yield expected of a group before its own pieces are looked at, and what it rests on. */
export type YieldPrior = YieldSpread &
  (
    | {
        readonly from: 'record';
        readonly groups: number;
        /** Whether the record settles the weight, or only keeps the assumed one within what it does not rule out. */
        readonly weightBy: 'record' | 'assumption within the record';
      }
    | {
        readonly from: 'assumption';
        readonly groups: number;
        readonly because: 'few groups' | 'all good' | 'all bad';
      }
  );

/**
 * The prior of a shop: beta distribution of greatest likelihood over its groups once there are enough of them.
 *
 * - Fewer than five groups, or not one piece good or bad: the shop's assumption.
 * - The 90 % interval of the weight has both ends: mean and weight of greatest likelihood.
 * - An end is missing, because the likelihood is flat or because chance alone explains how the groups differ: the mean of the
 *   record and the shop's assumed weight, moved to the end of the interval that it lies beyond.
 * @param assumed mean between 0 and 1, weight > 0, by the shop's settings
 * @throws InputError on a figure out of range
 * @source CASELLA1985 (empirical Bayes); the rule for a flat likelihood is ours
 */
export function yieldPrior(groups: readonly CountedPieces[], assumed: YieldSpread): YieldPrior {
  const count = groups.length;
  const assumption = { ...assumed, from: 'assumption', groups: count } as const;
  if (count < FEWEST_GROUPS) return { ...assumption, because: 'few groups' };
  const fit = fitYieldSpread(groups);
  if (fit.kind === 'no fit')
    return { ...assumption, because: fit.because === 'all good' ? 'all good' : 'all bad' };
  const { mean } = fit;
  const isSettled =
    fit.kind === 'differ' && fit.weightFrom !== undefined && fit.weightTo !== undefined;
  return {
    from: 'record',
    groups: count,
    mean,
    weight: isSettled ? fit.weight : heldWithin(fit, assumed.weight),
    weightBy: isSettled ? 'record' : 'assumption within the record',
  };
}

function heldWithin(fit: Exclude<SpreadFit, { kind: 'no fit' }>, weight: number): number {
  const to = fit.kind === 'differ' ? fit.weightTo : undefined;
  return Math.min(Math.max(weight, fit.weightFrom ?? 0), to ?? Number.POSITIVE_INFINITY);
}
