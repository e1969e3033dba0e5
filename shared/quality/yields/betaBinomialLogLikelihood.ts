import { logRise, slopeOfRise } from './logRise.ts';

/** Pieces of one group, such as a mold. */
export interface CountedPieces {
  /** Whole, 0 to poured */
  readonly good: number;
  /** Whole, >= 1 */
  readonly poured: number;
}

/** Beta distribution of the yield of groups: goodWeight = mean * weight, badWeight = (1 - mean) * weight. */
export interface YieldSpread {
  /** Between 0 and 1 */
  readonly mean: number;
  /** How many pieces of its own a group needs to count as much as the others, > 0 */
  readonly weight: number;
}

/**
 * Logarithm of the chance of these groups in this order of good and bad pieces, beta-binomial.
 * Sum of ln B(a + good, b + bad) - ln B(a, b), without the binomial coefficients, which no parameter changes.
 * @source SKELLAM1948
 */
export function betaBinomialLogLikelihood(
  groups: readonly CountedPieces[],
  { mean, weight }: YieldSpread,
): number {
  const [goodWeight, badWeight] = [mean * weight, (1 - mean) * weight];
  return groups.reduce(
    (sum, { good, poured }) =>
      sum + logRise(goodWeight, good) + logRise(badWeight, poured - good) - logRise(weight, poured),
    0,
  );
}

/** The same where every group has the same yield: the limit of an endless weight. */
export function logLikelihoodAlike(groups: readonly CountedPieces[], mean: number): number {
  return groups.reduce(
    (sum, { good, poured }) => sum + good * Math.log(mean) + (poured - good) * Math.log1p(-mean),
    0,
  );
}

/** Slope of the likelihood along the mean, divided by the weight; it falls as the mean grows. */
export function slopeInMean(
  groups: readonly CountedPieces[],
  { mean, weight }: YieldSpread,
): number {
  return groups.reduce(
    (sum, { good, poured }) =>
      sum + slopeOfRise(mean * weight, good) - slopeOfRise((1 - mean) * weight, poured - good),
    0,
  );
}

/** Slope of the likelihood along the weight, the mean held. */
export function slopeInWeight(
  groups: readonly CountedPieces[],
  { mean, weight }: YieldSpread,
): number {
  return groups.reduce(
    (sum, { good, poured }) =>
      sum +
      mean * slopeOfRise(mean * weight, good) +
      (1 - mean) * slopeOfRise((1 - mean) * weight, poured - good) -
      slopeOfRise(weight, poured),
    0,
  );
}
