import { requireNumber } from '../../errors/requireNumber.ts';
import { findRoot } from '../findRoot.ts';
import { followPlate, type PlatePoint, type Precision } from './followPlate.ts';
import { type OdePoint, stateBetween } from './integrateOde.ts';
import { type HeatUpSetup, type PlateRun, plateRun } from './plateRun.ts';
import { type SteadyPlate, steadyPlate } from './steadyPlate.ts';

/** When a mold top reads its target. */
export type CourseTime =
  | { readonly kind: 'reached'; readonly seconds: number }
  | {
      readonly kind: 'unreachable';
      readonly because: 'plateau below target' | 'later than half a day';
    };

/** The course of plate and molds, step by step. */
export interface HotRun {
  readonly run: PlateRun;
  readonly points: readonly PlatePoint[];
  /** One per mold, in order */
  readonly times: readonly CourseTime[];
  readonly settled: SteadyPlate;
}

export interface HotWanted {
  /** Mold top [°C] */
  readonly target: number;
  /** Followed at least so long [s], > 0, at most half a day */
  readonly duration: number;
  readonly precision?: Precision;
}

/** Nobody waits longer [s]. */
const LONGEST = 43_200;

/**
 * Follows plate and molds until every top that can read its target does; the physics are those of `heatUpCourse`.
 * @throws InputError on a figure out of range, or a setting not above the room
 */
export function runUntilHot(setup: HeatUpSetup, wanted: HotWanted): HotRun {
  const { target, duration, precision } = wanted;
  requireNumber(target, 'target temperature', { unit: 'degC' });
  requireNumber(duration, 'length of the curve', { unit: 's', greaterThan: 0, atMost: LONGEST });
  const run = plateRun(setup);
  const settled = steadyPlate(run.plate, run.molds, run.room);
  const hopeful = run.tops.filter((_, mold) => (settled.tops[mold] ?? target) > target);
  const done = (points: readonly OdePoint[]) =>
    hopeful.every((top) => points.some(({ state }) => (state[top] ?? target) >= target));
  const course = { duration, longest: LONGEST, done };
  const points = followPlate(run, precision ? { ...course, precision } : course);
  const times = run.tops.map((top): CourseTime => {
    const seconds = timeTo(points, top, target);
    if (seconds === 0 || (seconds !== undefined && hopeful.includes(top)))
      return { kind: 'reached', seconds };
    const because = hopeful.includes(top) ? 'later than half a day' : 'plateau below target';
    return { kind: 'unreachable', because };
  });
  return { run, points, times, settled };
}

function timeTo(points: readonly OdePoint[], top: number, target: number): number | undefined {
  const index = points.findIndex(({ state }) => (state[top] ?? target) >= target);
  const [before, after] = [points[index - 1], points[index]];
  if (!after) return undefined;
  if (!before) return 0;
  const above = (time: number) => (stateBetween(before, after, time)[top] ?? target) - target;
  return findRoot(above, before.time, after.time);
}
