import { findRoot } from '../../heat/findRoot.ts';
import { type LogisticCurve, spreadOf } from './logisticFit.ts';
import { objective } from './logisticLogLikelihood.ts';
import type { LogisticPoint } from './logisticPoint.ts';
import { logisticThreshold, squaredNormal, type Threshold } from './logisticThreshold.ts';

/** Slopes tried, on a scale of logarithms, in standard deviations of the figure: from all but flat to a step. */
const FLATTEST = Math.log(1e-5);
const STEEPEST = Math.log(1e4);
const GOLDEN = (Math.sqrt(5) - 1) / 2;
const NARROW = 1e-4;
/** How far out a limit is looked for, in standard deviations of the figure; beyond it the data set none. */
const FARTHEST = 30;
const FIRST_STEP = 0.05;

/**
 * The figure at which half pass, with limits from the profile of the (penalized) likelihood.
 *
 * For a threshold held at T the best slope is found; T is inside while twice the drop of the objective stays below the
 * chi-squared quantile with one degree of freedom. Slopes keep the sign of the fit. It holds for few and for separated data,
 * where limits from the standard errors do not. The standard error is the delta method's, as in `logisticThreshold`.
 *
 * @param points - those that the curve was fitted to
 * @source HEINZESCHEMPER, section 2.4: profile penalized likelihood
 */
export function profileThreshold(
  points: readonly LogisticPoint[],
  curve: LogisticCurve,
  confidence: number,
): Threshold {
  const { value, standardError } = logisticThreshold(curve, confidence);
  const { center, scale } = spreadOf(points);
  const scaled = points.map((point) => ({ ...point, at: (point.at - center) / scale }));
  const sign = Math.sign(curve.slope);
  const best = (threshold: number) => profile(scaled, threshold, sign, curve.method);
  const middle = (value - center) / scale;
  const floor = best(middle) - squaredNormal(confidence) / 2;
  const low = limit((threshold) => best(threshold) - floor, middle, -1);
  const high = limit((threshold) => best(threshold) - floor, middle, 1);
  return {
    value,
    standardError,
    ...(low === undefined ? {} : { low: center + scale * low }),
    ...(high === undefined ? {} : { high: center + scale * high }),
  };
}

/** Greatest objective with the threshold held, over slopes of one sign: golden sections of their logarithm. */
function profile(
  points: readonly LogisticPoint[],
  threshold: number,
  sign: number,
  method: LogisticCurve['method'],
): number {
  const at = (logarithm: number) => {
    const slope = sign * Math.exp(logarithm);
    const height = objective(points, -slope * threshold, slope, method);
    // A step so steep that no point weighs anything has no information left.
    return Number.isNaN(height) ? Number.NEGATIVE_INFINITY : height;
  };
  let [low, high] = [FLATTEST, STEEPEST];
  let [left, right] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
  let [heightLeft, heightRight] = [at(left), at(right)];
  while (high - low > NARROW) {
    if (heightLeft >= heightRight) {
      [high, right, heightRight] = [right, left, heightLeft];
      left = high - GOLDEN * (high - low);
      heightLeft = at(left);
    } else {
      [low, left, heightLeft] = [left, right, heightRight];
      right = low + GOLDEN * (high - low);
      heightRight = at(right);
    }
  }
  return Math.max(heightLeft, heightRight);
}

function limit(
  above: (threshold: number) => number,
  middle: number,
  side: 1 | -1,
): number | undefined {
  let inside = middle;
  for (let step = FIRST_STEP; step < FARTHEST; step *= 2) {
    const outside = middle + side * step;
    if (above(outside) < 0) return findRoot(above, inside, outside);
    inside = outside;
  }
  return undefined;
}
