import { requireNumber } from '../../errors/requireNumber.ts';
import { findRoot } from '../../heat/findRoot.ts';
import { logGamma } from './logRise.ts';

/** The fraction needs about the root of the larger weight; past this the weights are no counts of pieces. */
const MOST_TERMS = 100_000;
const TINY = 1e-300;
const PRECISION = 1e-15;

/**
 * Chance that a beta-distributed share lies below x: the regularized incomplete beta function, by its continued fraction.
 * @param x 0 to 1
 * @param goodWeight > 0, at most 1e9
 * @param badWeight > 0, at most 1e9
 * @returns 0 to 1
 * @throws InputError on a figure out of range
 * @source ABRAMOWITZSTEGUN, 26.5.8
 */
export function betaChance(x: number, goodWeight: number, badWeight: number): number {
  requireNumber(x, 'share', { atLeast: 0, atMost: 1 });
  requireWeights(goodWeight, badWeight);
  return chanceBelow(x, goodWeight, badWeight);
}

/**
 * The share below which a beta-distributed share lies with a given chance.
 * @param chance between 0 and 1, both excluded
 * @param goodWeight > 0, at most 1e9
 * @param badWeight > 0, at most 1e9
 * @returns 0 to 1
 * @throws InputError on a figure out of range
 */
export function betaQuantile(chance: number, goodWeight: number, badWeight: number): number {
  requireNumber(chance, 'chance', { greaterThan: 0, lessThan: 1 });
  requireWeights(goodWeight, badWeight);
  return findRoot((x) => chanceBelow(x, goodWeight, badWeight) - chance, 0, 1);
}

function requireWeights(goodWeight: number, badWeight: number): void {
  requireNumber(goodWeight, 'good weight', { greaterThan: 0, atMost: 1e9 });
  requireNumber(badWeight, 'bad weight', { greaterThan: 0, atMost: 1e9 });
}

/** The fraction converges fast below the mean; above it the mirror image is taken. */
function chanceBelow(x: number, a: number, b: number): number {
  if (x === 0 || x === 1) return x;
  const isBelow = x < (a + 1) / (a + b + 2);
  const front = Math.exp(
    a * Math.log(x) + b * Math.log1p(-x) + logGamma(a + b) - logGamma(a) - logGamma(b),
  );
  if (isBelow) return Math.min(1, (front * fraction(x, a, b)) / a);
  return Math.max(0, 1 - (front * fraction(1 - x, b, a)) / b);
}

/** Continued fraction by the modified Lentz method. */
function fraction(x: number, a: number, b: number): number {
  let ratio = 1;
  let inverse = 1 / away(1 - ((a + b) * x) / (a + 1));
  let value = inverse;
  for (let term = 1; term <= MOST_TERMS; term++) {
    const even = (term * (b - term) * x) / ((a + 2 * term - 1) * (a + 2 * term));
    inverse = 1 / away(1 + even * inverse);
    ratio = away(1 + even / ratio);
    value *= inverse * ratio;
    const odd = (-(a + term) * (a + b + term) * x) / ((a + 2 * term) * (a + 2 * term + 1));
    inverse = 1 / away(1 + odd * inverse);
    ratio = away(1 + odd / ratio);
    value *= inverse * ratio;
    if (Math.abs(inverse * ratio - 1) < PRECISION) return value;
  }
  return value;
}

function away(value: number): number {
  return Math.abs(value) < TINY ? TINY : value;
}
