import { AIR_STATES } from '../../heat/solver/airStates.ts';
import type { MoldCourse } from '../../heat/solver/moldCourse.ts';
import type { Filling } from './layerHeat.ts';
import { type LayerTimes, planTimes, type TimedRound } from './planTimes.ts';

/** A change that brings every layer of a round into its window, by the model. */
export type WindowRemedy =
  | { readonly kind: 'fewer cavities'; readonly cavities: number }
  /** Warmer by so much than planned [K], or cooler where below 0 */
  | { readonly kind: 'mold top'; readonly warmer: number }
  | { readonly kind: 'cover' }
  | { readonly kind: 'hotter cup'; readonly pourTemperature: number };

/** How far the shop can go. */
export interface RemedyLimits {
  /** Mold above what it was planned at [K] */
  readonly warmerMold: number;
  /** [degC] */
  readonly hottestCup: number;
}

/** Steps in which another mold top is tried, and how far down [K]; below that a hot mold is given up altogether. */
const TOP_STEP = 5;
const COOLEST = -30;

/** Whether a layer is poured inside its window in every cavity of the round. */
export function isInTime({ window, run }: Pick<LayerTimes, 'window' | 'run'>): boolean {
  if (window === undefined || window.kind === 'from') return true;
  return window.kind === 'between' && (run.wait?.longest ?? 0) <= window.latest;
}

/**
 * What would mend a round in which a layer comes too late or has no window at all; each change alone, tried in the same model.
 * @returns in the order of least trouble; empty where none of them does
 */
export function windowRemedies(
  filling: Filling,
  round: TimedRound,
  { warmerMold, hottestCup }: RemedyLimits,
): readonly WindowRemedy[] {
  const quick: TimedRound = { ...round, effort: 'quick' };
  const mends = (change: Partial<TimedRound>, poured: Filling = filling) =>
    planTimes(poured, { ...quick, ...change }, 'US').every(isInTime);
  const remedies: WindowRemedy[] = [];
  const cavities = mostCavities(quick, (passes) => mends({ passes }));
  if (cavities > 0) remedies.push({ kind: 'fewer cavities', cavities });
  const { localAirTemperature, surfaceCoefficient } = round.figures;
  const { airTemperature, coefficient } = AIR_STATES.sheltered;
  const covered = {
    ...round.figures,
    localAirTemperature: Math.max(localAirTemperature, airTemperature),
    surfaceCoefficient: Math.min(surfaceCoefficient, coefficient),
  };
  if (mends({ figures: covered })) remedies.push({ kind: 'cover' });
  const warmer = tops(warmerMold).find((by) => mends({ course: shifted(round.course, by) }));
  if (warmer !== undefined) remedies.push({ kind: 'mold top', warmer });
  const layers = filling.layers.map((layer) => ({
    ...layer,
    pourTemperature: Math.max(layer.pourTemperature, hottestCup),
  }));
  if (mends({}, { ...filling, layers }))
    remedies.push({ kind: 'hotter cup', pourTemperature: hottestCup });
  return remedies;
}

/** Most cavities at a time that stay in time; 0 where even one is too late. Fewer are never later, so the range is halved. */
function mostCavities(
  { passes }: TimedRound,
  mends: (passes: TimedRound['passes']) => boolean,
): number {
  const fits = (cavities: number) => mends(passes.map((pass) => ({ ...pass, cavities })));
  let high = passes[0]?.cavities ?? 1;
  if (high < 2 || !fits(1)) return 0;
  let low = 1;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (fits(middle)) low = middle;
    else high = middle;
  }
  return low;
}

/** Warmer first, in steps, then cooler. */
function tops(warmest: number): readonly number[] {
  const up = Array.from({ length: Math.max(0, Math.floor(warmest / TOP_STEP)) }, (_, step) => step);
  const down = Array.from({ length: -COOLEST / TOP_STEP }, (_, step) => step);
  return [
    ...up.map((step) => (step + 1) * TOP_STEP),
    ...down.map((step) => -(step + 1) * TOP_STEP),
  ];
}

function shifted(course: MoldCourse, warmer: number): MoldCourse {
  if (typeof course === 'number') return course + warmer;
  if (typeof course === 'function') return (time) => course(time) + warmer;
  return course.map(({ time, temperature }) => ({ time, temperature: temperature + warmer }));
}
