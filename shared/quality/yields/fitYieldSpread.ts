import { requireNumber } from '../../errors/requireNumber.ts';
import { findRoot } from '../../heat/findRoot.ts';
import {
  betaBinomialLogLikelihood,
  type CountedPieces,
  logLikelihoodAlike,
  slopeInMean,
  slopeInWeight,
  type YieldSpread,
} from './betaBinomialLogLikelihood.ts';

/**
 * What the likelihood says of how groups differ. `weightFrom` and `weightTo` are the ends of the 90 % interval of the weight
 * by likelihood ratio; an end that the record does not set is left out.
 */
export type SpreadFit =
  | ({
      readonly kind: 'differ';
      readonly logLikelihood: number;
      readonly weightFrom?: number;
      readonly weightTo?: number;
    } & YieldSpread)
  /** Chance alone explains the differences: the likelihood grows without end with the weight. */
  | { readonly kind: 'alike'; readonly mean: number; readonly weightFrom?: number }
  | { readonly kind: 'no fit'; readonly because: 'no pieces' | 'all good' | 'all bad' };

/** Weights looked at: a tenth of a piece, where groups come out all good or all bad, to a million pieces. */
const WEIGHTS = Array.from({ length: 29 }, (_, index) => 0.1 * 10 ** (index / 4));
/** Half the 90 % point of the chi-squared distribution with one degree of freedom. */
const FALL = 2.705543 / 2;
const EDGE = 1e-12;

/**
 * Mean and weight of greatest likelihood of a beta distribution of yields, from groups of good and bad pieces.
 *
 * The mean is solved for at each weight (the likelihood is concave in it), then the weight on the profile; every local
 * maximum is compared, and all with the limit of one common yield.
 * @param groups any number; those without pieces must be left out
 * @throws InputError on a figure out of range
 * @source SKELLAM1948; LINDSEYALTHAM1998
 */
export function fitYieldSpread(groups: readonly CountedPieces[]): SpreadFit {
  for (const { good, poured } of groups) {
    requireNumber(poured, 'poured', { atLeast: 1, whole: true });
    requireNumber(good, 'good', { atLeast: 0, atMost: poured, whole: true });
  }
  const poured = groups.reduce((sum, group) => sum + group.poured, 0);
  const good = groups.reduce((sum, group) => sum + group.good, 0);
  if (poured === 0) return { kind: 'no fit', because: 'no pieces' };
  if (good === poured) return { kind: 'no fit', because: 'all good' };
  if (good === 0) return { kind: 'no fit', because: 'all bad' };
  return fitOf(groups, good / poured);
}

function fitOf(groups: readonly CountedPieces[], common: number): SpreadFit {
  const alike = logLikelihoodAlike(groups, common);
  const profile = profileOf(groups);
  const best = peaksOf(profile).reduce<Peak>(
    (one, other) => (other.height > one.height ? other : one),
    { weight: Number.POSITIVE_INFINITY, height: alike },
  );
  const level = best.height - FALL;
  const above = (weight: number) => profile(weight).height - level;
  const [first = 0, last = 0] = [WEIGHTS[0], WEIGHTS[WEIGHTS.length - 1]];
  const middle = Math.min(best.weight, last);
  const from = above(first) < 0 ? { weightFrom: Math.exp(rootOf(above, first, middle)) } : {};
  if (best.weight === Number.POSITIVE_INFINITY) return { kind: 'alike', mean: common, ...from };
  const to =
    alike < level && above(last) < 0 ? { weightTo: Math.exp(rootOf(above, middle, last)) } : {};
  const { mean } = profile(best.weight);
  return { kind: 'differ', mean, weight: best.weight, logLikelihood: best.height, ...from, ...to };
}

interface Peak {
  readonly weight: number;
  readonly height: number;
}

interface ProfilePoint {
  readonly mean: number;
  readonly height: number;
  readonly slope: number;
}

type Profile = (weight: number) => ProfilePoint;

/** The likelihood over the weight, the mean always the best for it. */
function profileOf(groups: readonly CountedPieces[]): Profile {
  return (weight) => {
    const mean = findRoot((one) => slopeInMean(groups, { mean: one, weight }), EDGE, 1 - EDGE);
    const spread = { mean, weight };
    return {
      mean,
      height: betaBinomialLogLikelihood(groups, spread),
      slope: slopeInWeight(groups, spread),
    };
  };
}

/** Local maxima over the weights looked at; the lowest weight stands for all below it. */
function peaksOf(profile: Profile): readonly Peak[] {
  const points = WEIGHTS.map((weight) => ({ weight, ...profile(weight) }));
  return points.flatMap((point, index) => {
    const next = points[index + 1];
    if (index === 0 && point.slope <= 0) return [point];
    if (next === undefined || point.slope <= 0 || next.slope > 0) return [];
    const slope = (weight: number) => profile(weight).slope;
    const weight = Math.exp(rootOf(slope, point.weight, next.weight));
    return [{ weight, height: profile(weight).height }];
  });
}

/** Logarithm of the weight at which a value changes sign. */
function rootOf(value: (weight: number) => number, from: number, to: number): number {
  return findRoot((logarithm) => value(Math.exp(logarithm)), Math.log(from), Math.log(to));
}
