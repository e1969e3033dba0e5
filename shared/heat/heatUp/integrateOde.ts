import { findRoot } from '../findRoot.ts';

export interface OdePoint {
  readonly time: number;
  readonly state: readonly number[];
  readonly slope: readonly number[];
}

/** Rates of change that depend on the state alone. */
export interface OdeProblem {
  readonly rates: (state: readonly number[]) => readonly number[];
  readonly start: readonly number[];
  readonly from: number;
  readonly to: number;
  /** Largest error of one step, in the unit of the state, > 0 */
  readonly tolerance: number;
  /** Bounds the step, so that a cubic between two points is as good as the points, > 0 */
  readonly longestStep: number;
  /** Ends where this turns from below 0 to 0 or more. */
  readonly stopWhen?: (state: readonly number[]) => number;
}

const STAGES: readonly (readonly number[])[] = [
  [1 / 5],
  [3 / 40, 9 / 40],
  [44 / 45, -56 / 15, 32 / 9],
  [19372 / 6561, -25360 / 2187, 64448 / 6561, -212 / 729],
  [9017 / 3168, -355 / 33, 46732 / 5247, 49 / 176, -5103 / 18656],
  [35 / 384, 0, 500 / 1113, 125 / 192, -2187 / 6784, 11 / 84],
];
/** Fifth-order weights less fourth-order weights. */
const ERROR = [71 / 57600, 0, -71 / 16695, 71 / 1920, -17253 / 339200, 22 / 525, -1 / 40];

/**
 * Integrates ordinary differential equations, step by step as long as the error allows.
 *
 * Dormand and Prince's pair of orders 5 and 4. Non-stiff problems only: a fast partner forces short steps.
 *
 * @returns every accepted point, the first at `from`, the last at `to` or where `stopWhen` turned
 * @source DORMANDPRINCE, Table 2
 */
export function integrateOde(problem: OdeProblem): readonly OdePoint[] {
  const { rates, start, from, to, tolerance, longestStep, stopWhen } = problem;
  let last: OdePoint = { time: from, state: start, slope: rates(start) };
  const points = [last];
  let step = Math.min(longestStep, (to - from) / 10);
  while (last.time < to) {
    const width = Math.min(step, to - last.time);
    const { next, error } = trial(rates, last, width);
    // Order 5, with a margin; never more than fivefold either way.
    const factor = 0.9 * (tolerance / Math.max(error, tolerance * 1e-6)) ** 0.2;
    step = Math.min(longestStep, width * Math.min(5, Math.max(0.2, factor)));
    if (error > tolerance) continue;
    const before = last;
    last = to - next.time < 1e-12 * Math.abs(to) ? { ...next, time: to } : next;
    if (stopWhen && stopWhen(before.state) < 0 && stopWhen(last.state) >= 0) {
      points.push(turningPoint(before, last, problem, stopWhen));
      return points;
    }
    points.push(last);
  }
  return points;
}

function trial(rates: OdeProblem['rates'], { time, state, slope }: OdePoint, width: number) {
  const slopes = [slope];
  let reached = state;
  for (const weights of STAGES) {
    reached = state.map((value, index) => value + width * weighted(weights, slopes, index));
    slopes.push(rates(reached));
  }
  const errors = state.map((_, index) => Math.abs(width * weighted(ERROR, slopes, index)));
  const next: OdePoint = { time: time + width, state: reached, slope: slopes[6] ?? slope };
  return { next, error: Math.max(...errors) };
}

function weighted(
  weights: readonly number[],
  slopes: readonly (readonly number[])[],
  index: number,
): number {
  return weights.reduce((sum, weight, stage) => sum + weight * (slopes[stage]?.[index] ?? 0), 0);
}

function turningPoint(
  before: OdePoint,
  after: OdePoint,
  { rates }: OdeProblem,
  stopWhen: (state: readonly number[]) => number,
): OdePoint {
  const signed = (time: number) => stopWhen(stateBetween(before, after, time));
  const time = findRoot(signed, before.time, after.time);
  const state = stateBetween(before, after, time);
  return { time, state, slope: rates(state) };
}

/**
 * State between two neighboring points, by the cubic through both states and slopes.
 * @param time - within the two points' times
 */
export function stateBetween(before: OdePoint, after: OdePoint, time: number): readonly number[] {
  const width = after.time - before.time;
  const share = width > 0 ? (time - before.time) / width : 0;
  const rest = 1 - share;
  return before.state.map((low, index) => {
    const high = after.state[index] ?? low;
    const rise = (before.slope[index] ?? 0) * width;
    const end = (after.slope[index] ?? 0) * width;
    const cubic = rest * (rise - (high - low)) - share * (end - (high - low));
    return rest * low + share * high + share * rest * cubic;
  });
}
