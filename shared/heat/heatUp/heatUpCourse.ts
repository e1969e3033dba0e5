import { requireNumber } from '../../errors/requireNumber.ts';
import type { HeatUpSetup } from './plateRun.ts';
import { type CourseTime, runUntilHot } from './runUntilHot.ts';
import { stateAt } from './stateAt.ts';
import type { SteadyPlate } from './steadyPlate.ts';

interface CourseSample {
  /** Since switch-on [s] */
  readonly seconds: number;
  /** [°C] */
  readonly plate: number;
  /** Mold tops, in the order of the molds [°C] */
  readonly tops: readonly number[];
}

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

const MOST_SAMPLES = 2000;

/**
 * How plate and molds heat up, with losses that vary with temperature: the accurate path beside `blockTime`.
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
  const { duration, interval } = wanted;
  requireNumber(interval, 'time between samples', { unit: 's', atLeast: duration / MOST_SAMPLES });
  const { run, points, times, settled } = runUntilHot(setup, wanted);
  const samples: CourseSample[] = [];
  const count = Math.floor(duration / interval + 1e-9);
  for (let index = 0; index <= count; index += 1) {
    const seconds = index * interval;
    const state = stateAt(points, seconds);
    samples.push({ seconds, plate: state[0] ?? 0, tops: run.tops.map((top) => state[top] ?? 0) });
  }
  return { samples, times, settled };
}
