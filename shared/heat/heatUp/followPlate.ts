import { integrateOde, type OdePoint } from './integrateOde.ts';
import { type Heater, type PlateRun, plateRates } from './plateRun.ts';

/** Error of one step [K]: a hundred steps stay far below what a probe can tell. */
const TOLERANCE = 1e-4;
/** Longest step [s], and longest stretch before the end is looked for again [s]. */
const LONGEST_STEP = 30;
const STRETCH = 900;

export interface FollowUntil {
  /** Never ends before [s] */
  readonly duration: number;
  /** Never goes on beyond [s] */
  readonly longest: number;
  /** Asked about each stretch; once true it ends after `duration` */
  readonly done: (points: readonly OdePoint[]) => boolean;
}

/**
 * Follows plate and molds in time, switching the heater at the edges of its dead band.
 * @returns the points of the course; the state as in {@link PlateRun}
 */
export function followPlate(run: PlateRun, until: FollowUntil): readonly OdePoint[] {
  const { duration, longest, done } = until;
  let heater = firstHeater(run);
  let state = run.start;
  let time = 0;
  let finished = false;
  const points: OdePoint[] = [];
  while (time < duration || (!finished && time < longest)) {
    const to = Math.min(time < duration ? duration : longest, time + STRETCH);
    const stretch = follow(run, heater, { state, from: time, to });
    // A switching is kept twice: before it and after it the slopes differ.
    points.push(...stretch);
    finished = finished || done(stretch);
    const last = stretch[stretch.length - 1];
    if (!last) return points;
    if (last.time < to) heater = switched(run, heater);
    ({ state, time } = last);
  }
  return points;
}

function firstHeater({ plate, start, ...rest }: PlateRun): Heater {
  if (plate.kind === 'held') return 'holding';
  const at = start[0] ?? 0;
  if (plate.deadBand > 0) return at < plate.setting + plate.deadBand / 2 ? 'on' : 'off';
  if (at > plate.setting) return 'off';
  const { drawn } = plateRates({ plate, start, ...rest }, start, 'holding');
  return at === plate.setting && drawn <= plate.watts ? 'holding' : 'on';
}

function switched({ plate }: PlateRun, heater: Heater): Heater {
  if (plate.kind === 'heated' && plate.deadBand === 0) return 'holding';
  return heater === 'on' ? 'off' : 'on';
}

function follow(
  run: PlateRun,
  heater: Heater,
  { state, from, to }: { state: readonly number[]; from: number; to: number },
) {
  const { plate } = run;
  const rates = (now: readonly number[]) => plateRates(run, now, heater).rates;
  const problem = { rates, start: state, from, to, tolerance: TOLERANCE };
  const bounded = { ...problem, longestStep: LONGEST_STEP };
  if (plate.kind === 'held' || heater === 'holding') return integrateOde(bounded);
  const edge = plate.setting + (heater === 'on' ? plate.deadBand : -plate.deadBand) / 2;
  const sign = heater === 'on' ? 1 : -1;
  return integrateOde({ ...bounded, stopWhen: (now) => sign * ((now[0] ?? edge) - edge) });
}
