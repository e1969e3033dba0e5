import {
  determinant,
  information,
  type LogisticMethod,
  logisticLogLikelihood,
  objective,
  type PointAtCurve,
  pointsAtCurve,
  type Symmetric,
} from './logisticLogLikelihood.ts';
import { type LogisticPoint, requirePoints, type Telling, tellingOf } from './logisticPoint.ts';

/** A fitted curve of the chance to pass against a figure. */
export interface LogisticCurve {
  readonly kind: 'fitted';
  readonly method: LogisticMethod;
  readonly intercept: number;
  /** For each unit of the figure */
  readonly slope: number;
  /** Of the two: inverse of the information at the fit */
  readonly covariance: Symmetric;
  /** -2 log-likelihood, without Firth's penalty */
  readonly deviance: number;
}

export type LogisticFit =
  | LogisticCurve
  | { readonly kind: 'no fit'; readonly because: Exclude<Telling, 'mixed'> };

/** Far more than any data take. */
const MOST_STEPS = 500;
const MOST_HALVINGS = 40;
/** Of a step, in standard deviations of the figure, at which the fit stands. */
const STILL = 1e-11;
/** A step too short for the heights at its ends to differ by more than rounding; it is taken without comparing them. */
const SHORT = 1e-5;

/**
 * Logistic curve of passes against one figure, by Newton's method with step halving.
 *
 * p = 1 / (1 + exp(-(b0 + b1 x))). By likelihood the score is sum of (passed - n p) (1, x), and there is no finite fit unless
 * passes and fails overlap. Firth's method solves sum of (passed - n p + h (1/2 - p)) (1, x) = 0, h the point's share in
 * the information, which is the likelihood times the square root of the information (Jeffreys' prior): finite wherever the
 * figures differ, with one kind of outcome only as well, though then it says more about the prior than about the shop.
 *
 * @throws InputError on a count or figure that cannot be
 * @source FIRTH1993; HEINZESCHEMPER for logistic curves
 */
export function logisticFit(points: readonly LogisticPoint[], method: LogisticMethod): LogisticFit {
  requirePoints(points);
  const telling = tellingOf(points);
  if (telling === 'nothing' || telling === 'one figure')
    return { kind: 'no fit', because: telling };
  if (method === 'likelihood' && telling !== 'mixed') return { kind: 'no fit', because: telling };
  const { center, scale } = spreadOf(points);
  if (scale === 0) return { kind: 'no fit', because: 'one figure' };
  const scaled = points.map((point) => ({ ...point, at: (point.at - center) / scale }));
  const [own, steep] = climb(scaled, method);
  const states = pointsAtCurve(scaled, own, steep);
  const slope = steep / scale;
  return {
    kind: 'fitted',
    method,
    intercept: own - slope * center,
    slope,
    covariance: unscaled(inverse(information(states)), center, scale),
    deviance: -2 * logisticLogLikelihood(scaled, own, steep),
  };
}

/** Weighted mean and standard deviation of the figures: steps are taken where both coefficients weigh alike. */
export function spreadOf(points: readonly LogisticPoint[]) {
  const whole = points.reduce((sum, { of }) => sum + of, 0);
  const center = points.reduce((sum, { at, of }) => sum + at * of, 0) / whole;
  const square = points.reduce((sum, { at, of }) => sum + of * (at - center) ** 2, 0) / whole;
  return { center, scale: Math.sqrt(square) };
}

function climb(
  points: readonly LogisticPoint[],
  method: LogisticMethod,
): readonly [number, number] {
  let [intercept, slope] = [0, 0];
  let last: readonly [number, number] = [0, 0];
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const height = objective(points, intercept, slope, method);
    let [up, tilt] = newtonStep(pointsAtCurve(points, intercept, slope), method);
    // Firth's steps can overshoot to and fro for ever: one that turns back goes half the way.
    if (up * last[0] + tilt * last[1] < 0) [up, tilt] = [up / 2, tilt / 2];
    const length = Math.max(Math.abs(up), Math.abs(tilt));
    if (length < STILL) break;
    let next = objective(points, intercept + up, slope + tilt, method);
    // Turned around so that a determinant rounded to nothing halves the step too.
    for (let halving = 0; length > SHORT && !(next >= height); halving += 1) {
      if (halving === MOST_HALVINGS) return [intercept, slope];
      [up, tilt] = [up / 2, tilt / 2];
      next = objective(points, intercept + up, slope + tilt, method);
    }
    [intercept, slope] = [intercept + up, slope + tilt];
    last = [up, tilt];
  }
  return [intercept, slope];
}

function newtonStep(
  states: readonly PointAtCurve[],
  method: LogisticMethod,
): readonly [number, number] {
  const covariance = inverse(information(states));
  let [level, tilt] = [0, 0];
  for (const { point, chance, weight } of states) {
    const { at, passed, of } = point;
    const { intercept, slope, both } = covariance;
    const share = weight * (intercept + 2 * both * at + slope * at ** 2);
    const off = passed - of * chance + (method === 'firth' ? share * (0.5 - chance) : 0);
    level += off;
    tilt += off * at;
  }
  return [
    covariance.intercept * level + covariance.both * tilt,
    covariance.both * level + covariance.slope * tilt,
  ];
}

function inverse(matrix: Symmetric): Symmetric {
  const whole = determinant(matrix);
  return {
    intercept: matrix.slope / whole,
    slope: matrix.intercept / whole,
    both: -matrix.both / whole,
  };
}

function unscaled({ intercept, slope, both }: Symmetric, center: number, scale: number): Symmetric {
  const tilt = slope / scale ** 2;
  const cross = both / scale;
  return {
    intercept: intercept - 2 * center * cross + center ** 2 * tilt,
    slope: tilt,
    both: cross - center * tilt,
  };
}
