import type { LogisticPoint } from './logisticPoint.ts';

/** Likelihood alone, or Firth's, which takes off the first-order bias and is finite on separated data. */
export type LogisticMethod = 'likelihood' | 'firth';

/** Of intercept and slope; symmetric. */
export interface Symmetric {
  readonly intercept: number;
  readonly slope: number;
  readonly both: number;
}

/** A point at one curve: chance of a pass there, and what it weighs in the information. */
export interface PointAtCurve {
  readonly point: LogisticPoint;
  readonly chance: number;
  readonly weight: number;
}

/** Chance of a pass: p = 1 / (1 + exp(-(intercept + slope x))). */
export function passChance(intercept: number, slope: number, at: number): number {
  const logit = intercept + slope * at;
  return logit >= 0 ? 1 / (1 + Math.exp(-logit)) : Math.exp(logit) / (1 + Math.exp(logit));
}

export function pointsAtCurve(
  points: readonly LogisticPoint[],
  intercept: number,
  slope: number,
): readonly PointAtCurve[] {
  return points.map((point) => {
    const chance = passChance(intercept, slope, point.at);
    return { point, chance, weight: point.of * chance * passChance(-intercept, -slope, point.at) };
  });
}

/** Fisher information: sum of w (1, x; x, x^2), w = n p (1 - p). */
export function information(states: readonly PointAtCurve[]): Symmetric {
  let [intercept, both, slope] = [0, 0, 0];
  for (const { point, weight } of states) {
    intercept += weight;
    both += weight * point.at;
    slope += weight * point.at ** 2;
  }
  return { intercept, both, slope };
}

export function determinant({ intercept, slope, both }: Symmetric): number {
  return intercept * slope - both ** 2;
}

/** Log-likelihood, for Firth's method plus half the logarithm of the information's determinant. */
export function objective(
  points: readonly LogisticPoint[],
  intercept: number,
  slope: number,
  method: LogisticMethod,
): number {
  const fit = logisticLogLikelihood(points, intercept, slope);
  return method === 'likelihood'
    ? fit
    : fit + Math.log(determinantAt(points, intercept, slope)) / 2;
}

/** Sum of passed ln p + failed ln(1 - p), stable far out. */
export function logisticLogLikelihood(
  points: readonly LogisticPoint[],
  intercept: number,
  slope: number,
): number {
  let sum = 0;
  for (const { at, passed, of } of points) {
    const logit = intercept + slope * at;
    const certain = Math.log1p(Math.exp(-Math.abs(logit)));
    sum -= logit > 0 ? (of - passed) * logit : -passed * logit;
    sum -= of * certain;
  }
  return sum;
}

/** The determinant as `determinant(information(pointsAtCurve(...)))`, without the lists: the profile asks for it thousands of times. */
function determinantAt(points: readonly LogisticPoint[], intercept: number, slope: number): number {
  let [level, both, tilt] = [0, 0, 0];
  for (const { at, of } of points) {
    const far = Math.exp(-Math.abs(intercept + slope * at));
    const weight = (of * far) / (1 + far) ** 2;
    level += weight;
    both += weight * at;
    tilt += weight * at ** 2;
  }
  return level * tilt - both ** 2;
}
