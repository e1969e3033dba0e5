import { integrateOde, type OdePoint } from './integrateOde.ts';
import { type Heater, type PlateRun, plateRates } from './plateRun.ts';

/** How closely a course is followed. */
export interface Precision {
  /** Error of one step [K], > 0 */
  readonly tolerance: number;
  /** Longest step [s], > 0 */
  readonly longestStep: number;
}

/** A hundred such steps stay far below what a probe can tell. */
const FINE: Precision = { tolerance: 1e-4, longestStep: 30 };

/** Before the end is looked for again [s]. */
const STRETCH = 900;

/** A moment of the course, and what the heater does from then on. */
export interface PlatePoint extends OdePoint {
  readonly heater: Heater;
}

export interface FollowUntil {
  /** Never ends before [s] */
  readonly duration: number;
  /** Never goes on beyond [s] */
  readonly longest: number;
  /** Asked about each stretch; once true it ends after `duration` */
  readonly done: (points: readonly PlatePoint[]) => boolean;
  /** {@link FINE} when left out */
  readonly precision?: Precision;
  /** What the heater does at the start; the thermostat's own choice when left out */
  readonly heater?: Heater;
}

/**
 * Follows plate and molds in time, switching the heater at the edges of its dead band.
 *
 * Averaged, it heats to the upper edge once, cools to the setting and holds it there: the mean of what it would swing.
 *
 * @returns the points of the course; the state as in {@link PlateRun}
 */
export function followPlate(run: PlateRun, until: FollowUntil): readonly PlatePoint[] {
  const { duration, longest, done, precision = FINE } = until;
  let heater = until.heater ?? firstHeater(run);
  let state = run.start;
  let time = 0;
  let finished = false;
  const points: PlatePoint[] = [];
  while (time < duration || (!finished && time < longest)) {
    const to = Math.min(time < duration ? duration : longest, time + STRETCH);
    const now = heater;
    const stretch = follow(run, { heater, state, from: time, to }, precision).map(
      (point): PlatePoint => ({ ...point, heater: now }),
    );
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

function firstHeater(run: PlateRun): Heater {
  const { plate, start } = run;
  if (plate.kind === 'held') return 'holding';
  const at = start[0] ?? 0;
  if (plate.deadBand > 0 && plate.swing !== 'averaged') return at < upperEdge(plate) ? 'on' : 'off';
  if (at > plate.setting) return 'off';
  const { drawn } = plateRates(run, start, 'holding');
  return at === plate.setting && drawn <= plate.watts ? 'holding' : 'on';
}

function switched({ plate }: PlateRun, heater: Heater): Heater {
  if (plate.kind === 'held' || plate.deadBand === 0) return 'holding';
  if (heater === 'on') return 'off';
  return plate.swing === 'averaged' ? 'holding' : 'on';
}

type Heated = Extract<PlateRun['plate'], { readonly kind: 'heated' }>;

function upperEdge({ setting, deadBand }: Heated): number {
  return setting + deadBand / 2;
}

function lowerEdge({ setting, deadBand, swing }: Heated): number {
  return swing === 'averaged' ? setting : setting - deadBand / 2;
}

interface Stretch {
  readonly heater: Heater;
  readonly state: readonly number[];
  readonly from: number;
  readonly to: number;
}

function follow(run: PlateRun, stretch: Stretch, precision: Precision): readonly OdePoint[] {
  const { heater, state, from, to } = stretch;
  const { plate } = run;
  const rates = (now: readonly number[]) => plateRates(run, now, heater).rates;
  const problem = { rates, start: state, from, to, ...precision };
  if (plate.kind === 'held' || heater === 'holding') return integrateOde(problem);
  const edge = heater === 'on' ? upperEdge(plate) : lowerEdge(plate);
  const sign = heater === 'on' ? 1 : -1;
  return integrateOde({ ...problem, stopWhen: (now) => sign * ((now[0] ?? edge) - edge) });
}
