import { requireNumber } from '../../errors/requireNumber.ts';
import { findRoot } from '../findRoot.ts';
import { followPlate } from './followPlate.ts';
import { type OdePoint, stateBetween } from './integrateOde.ts';
import { type HeatUpSetup, plateRun } from './plateRun.ts';
import { type SteadyPlate, steadyPlate } from './steadyPlate.ts';

interface CourseSample {
  /** Since switch-on [s] */
  readonly seconds: number;
  /** [°C] */
  readonly plate: number;
  /** Mold tops, in the order of the molds [°C] */
  readonly tops: readonly number[];
}

type CourseTime =
  | { readonly kind: 'reached'; readonly seconds: number }
  | {
      readonly kind: 'unreachable';
      readonly because: 'plateau below target' | 'later than half a day';
    };

export interface HeatUpCourse {
  readonly samples: readonly CourseSample[];
  /** One per mold, in order */
  readonly times: readonly CourseTime[];
  readonly settled: SteadyPlate;
}

export interface CourseWanted {
  /** Mold top [°C] */
  readonly target: number;
  /** Of the curve [s], > 0, at most half a day */
  readonly duration: number;
  /** Between samples of the curve [s], > 0; at most 2000 samples */
  readonly interval: number;
}

/** Nobody waits longer [s]. */
const LONGEST = 43_200;
const MOST_SAMPLES = 2000;

/**
 * How plate and molds heat up, with losses that vary with temperature: the accurate path beside `moldHeatUp`.
 *
 * C dT/dt = h_c A (T_plate - T) - h(T) A_exposed (T - T_room) per block or half; the watts feed plate and molds together.
 * Each block or half is at one temperature throughout (Biot about 0.02), the room still; `lossShare` stands for lid and
 * draft. A top settling at or below the target counts as unreachable, even if the dead band's ripple touches it.
 *
 * @returns samples of the curve, time to target per mold, and where everything settles
 * @throws InputError on a figure out of range, or a setting not above the room
 * @source INCROPERA, section 5.3; face losses section 9.6
 */
export function heatUpCourse(setup: HeatUpSetup, wanted: CourseWanted): HeatUpCourse {
  const { target, duration, interval } = wanted;
  requireNumber(target, 'target temperature', { unit: 'degC' });
  requireNumber(duration, 'length of the curve', { unit: 's', greaterThan: 0, atMost: LONGEST });
  requireNumber(interval, 'time between samples', { unit: 's', atLeast: duration / MOST_SAMPLES });
  const run = plateRun(setup);
  const settled = steadyPlate(run.plate, run.molds, run.room);
  const hopeful = run.tops.filter((_, mold) => (settled.tops[mold] ?? target) > target);
  const done = (points: readonly OdePoint[]) =>
    hopeful.every((top) => points.some(({ state }) => (state[top] ?? target) >= target));
  const points = followPlate(run, { duration, longest: LONGEST, done });
  const times = run.tops.map((top): CourseTime => {
    const seconds = timeTo(points, top, target);
    if (seconds === 0 || (seconds !== undefined && hopeful.includes(top)))
      return { kind: 'reached', seconds };
    const because = hopeful.includes(top) ? 'later than half a day' : 'plateau below target';
    return { kind: 'unreachable', because };
  });
  const samples: CourseSample[] = [];
  const count = Math.floor(duration / interval + 1e-9);
  for (let index = 0; index <= count; index += 1) {
    const seconds = index * interval;
    const state = stateAt(points, seconds);
    samples.push({ seconds, plate: state[0] ?? 0, tops: run.tops.map((top) => state[top] ?? 0) });
  }
  return { samples, times, settled };
}

/** State at a time within the course. */
export function stateAt(points: readonly OdePoint[], time: number): readonly number[] {
  let low = 0;
  let high = points.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((points[middle]?.time ?? 0) <= time) low = middle;
    else high = middle;
  }
  const [before, after] = [points[low], points[high]];
  return before && after ? stateBetween(before, after, time) : [];
}

function timeTo(points: readonly OdePoint[], top: number, target: number): number | undefined {
  const index = points.findIndex(({ state }) => (state[top] ?? target) >= target);
  const [before, after] = [points[index - 1], points[index]];
  if (!after) return undefined;
  if (!before) return 0;
  const above = (time: number) => (stateBetween(before, after, time)[top] ?? target) - target;
  return findRoot(above, before.time, after.time);
}
