import { exactInterval } from '../exactInterval.ts';
import { yieldRate } from '../yieldRate.ts';
import type { CountedPieces, YieldSpread } from './betaBinomialLogLikelihood.ts';
import { type ShrunkenYield, shrunkenYield } from './shrunkenYield.ts';
import { type YieldPrior, yieldPrior } from './yieldPrior.ts';

/** A group with its own share, two intervals of it, and what to expect of it beside the others. */
export interface GroupYield extends CountedPieces, ShrunkenYield {
  readonly group: string;
  readonly rate: number;
  readonly wilson: { readonly low: number; readonly high: number };
  readonly exact: { readonly low: number; readonly high: number };
}

export interface YieldsCompared {
  readonly prior: YieldPrior;
  /** In the order given */
  readonly groups: readonly GroupYield[];
}

/**
 * Yields of groups side by side: each by itself, and drawn toward what the shop makes as a whole.
 * @param groups each with at least one piece
 * @param assumed the shop's yield before any record, and its weight
 * @param confidence of all intervals, between 0 and 1, both excluded
 * @throws InputError on a figure out of range
 */
export function compareYields(
  groups: readonly (CountedPieces & { readonly group: string })[],
  assumed: YieldSpread,
  confidence: number,
): YieldsCompared {
  const prior = yieldPrior(groups, assumed);
  return {
    prior,
    groups: groups.map(({ group, good, poured }) => {
      const { rate, low, high } = yieldRate(good, poured, confidence);
      return {
        group,
        good,
        poured,
        rate,
        wilson: { low, high },
        exact: exactInterval(good, poured, confidence),
        ...shrunkenYield({ good, poured }, prior, confidence),
      };
    }),
  };
}
