import { requireNumber } from '../errors/requireNumber.ts';

/** What is believed of the share of good pieces: a fixed yield, or a beta distribution of it. */
export type YieldBelief =
  | { readonly kind: 'fixed'; readonly yield: number }
  | { readonly kind: 'beta'; readonly goodWeight: number; readonly badWeight: number };

/**
 * The belief after a record: the shop's assumption counts as `weight` pieces beside the logged ones.
 * Beta(mean * weight + good, (1 - mean) * weight + poured - good).
 * @param record.mean assumed yield before any record, between 0 and 1
 * @param record.weight how many pieces the assumption is worth, > 0
 * @param record.good logged good pieces, 0 to poured
 * @param record.poured logged pieces
 * @throws InputError on a figure out of range
 * @source GELMAN, section 2.4 (conjugate beta prior)
 */
export function yieldBelief(record: {
  readonly mean: number;
  readonly weight: number;
  readonly good: number;
  readonly poured: number;
}): YieldBelief & { readonly kind: 'beta' } {
  requireNumber(record.mean, 'yield before any record', { greaterThan: 0, lessThan: 1 });
  requireNumber(record.weight, 'weight of that yield', { greaterThan: 0 });
  requireNumber(record.poured, 'poured', { atLeast: 0, whole: true });
  requireNumber(record.good, 'good', { atLeast: 0, atMost: record.poured, whole: true });
  return {
    kind: 'beta',
    goodWeight: record.mean * record.weight + record.good,
    badWeight: (1 - record.mean) * record.weight + record.poured - record.good,
  };
}

/** Expected share of good pieces, between 0 and 1. */
export function meanYield(belief: YieldBelief): number {
  if (belief.kind === 'fixed') return belief.yield;
  return belief.goodWeight / (belief.goodWeight + belief.badWeight);
}

/**
 * Throws unless the belief is a yield of 0 to 1, or has both weights > 0.
 * @throws InputError naming the figure out of range
 */
export function requireBelief(belief: YieldBelief): void {
  if (belief.kind === 'fixed') {
    requireNumber(belief.yield, 'yield', { atLeast: 0, atMost: 1 });
    return;
  }
  requireNumber(belief.goodWeight, 'good weight', { greaterThan: 0 });
  requireNumber(belief.badWeight, 'bad weight', { greaterThan: 0 });
}
