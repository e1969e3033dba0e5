import type { Shop } from '../../book/settings/settings.ts';
import { boilingPoint } from '../../heat/boilingPoint.ts';
import { followPlate, type PlatePoint, type Precision } from '../../heat/heatUp/followPlate.ts';
import { heaterEnergy } from '../../heat/heatUp/heaterEnergy.ts';
import type { Heater, PlateRun } from '../../heat/heatUp/plateRun.ts';
import { runUntilHot } from '../../heat/heatUp/runUntilHot.ts';
import { placeOf, stateAt } from '../../heat/heatUp/stateAt.ts';
import { steadyPlate } from '../../heat/heatUp/steadyPlate.ts';
import type { MoldReading } from '../../heat/solver/moldCourse.ts';
import type { MoldFacts } from '../facts/findMold.ts';
import type { PlateFacts } from '../facts/findPlate.ts';
import { type PlateSet, plateSetup, withoutLid } from './plateSetup.ts';

export interface PlateHeatWanted extends PlateSet {
  /** Quick: coarser steps, for many drawn figures. */
  readonly effort: 'exact' | 'quick';
  /** Moments of the samples since switch-on, in order [s]; a bit beyond the first pour when left out */
  readonly moments?: readonly number[];
}

interface PlateSample {
  /** Since switch-on [s] */
  readonly seconds: number;
  /** Surface of the plate, and mold top [degC] */
  readonly plate: number;
  readonly top: number;
}

/** What a plate, as set, does to the molds on it. */
export interface PlateHeat {
  /** Where the mold top settles, under the lid where there is one [degC] */
  readonly plateau: number;
  /** Where it settles once the lid is off [degC]; absent without a lid, and where the target is never read */
  readonly lidOff?: number;
  /** From switching the cold plate on to the top at its target [s]; absent: never */
  readonly heatUp?: number;
  /** What the heater feeds until then [J], and to hold the molds hot without a lid [W]; absent where the target is never read */
  readonly energy?: { readonly heatUp: number; readonly holding: number };
  /** Mold top from the moment it reads its target, a lid taken off then; the plateau alone where it never does */
  readonly climb: readonly MoldReading[];
  readonly samples: readonly PlateSample[];
}

/** Of the climb: as long as a long round takes, and between readings [s]. */
const CLIMB = 2700;
const CLIMB_STEP = 60;
/** Of the samples: past the first pour, in all where the target is never read [s]; how many steps. */
const BEYOND = 600;
const LONGEST_SHOWN = 7200;
const STEPS = 40;

/** Shortest time on of a thermostat that is followed [s]. */
const LEAST_ON = 30;

/** Errors of 0.01 K in the top, and of 0.1 K. */
const PRECISION: Readonly<Record<PlateHeatWanted['effort'], Precision>> = {
  exact: { tolerance: 1e-3, longestStep: 120 },
  quick: { tolerance: 0.05, longestStep: 600 },
};

/** What the mold top must read at the first pour [degC]. */
export function topTargetOf(shop: Shop): number {
  return boilingPoint(shop.elevation) + shop.topTarget;
}

/**
 * How plate and molds heat up, and how the mold goes on climbing while it is poured: `heatUpCourse` for a plate of the book.
 *
 * The plate's heat capacity follows from its bare warm-up; molds share its watts, and cover part of what it would lose. The
 * heat-up follows the thermostat's swing, the climb holds its mean. Metal poured into is not warmed by the plastic.
 *
 * @throws InputError on a figure out of range
 */
export function plateHeat(
  mold: MoldFacts,
  plate: PlateFacts,
  shop: Shop,
  wanted: PlateHeatWanted,
): PlateHeat {
  const precision = PRECISION[wanted.effort];
  const { moments } = wanted;
  const target = topTargetOf(shop);
  const setup = swungSetup(mold, plate, shop, wanted);
  const { run, points, times, settled } = runUntilHot(setup, { target, duration: 1, precision });
  const plateau = settled.tops[0] ?? shop.roomTemperature;
  const [time] = times;
  if (time?.kind !== 'reached') {
    const shown = moments ?? evenly(LONGEST_SHOWN);
    const climb = [{ time: 0, temperature: plateau }];
    return { plateau, climb, samples: samplesOf(followFor(run, endOf(shown), precision), shown) };
  }
  const heatUp = time.seconds;
  const shown = moments ?? evenly(heatUp + Math.min(CLIMB, shop.readyWait + BEYOND));
  const past = points.slice(0, placeOf(points, heatUp) + 1);
  const molds = run.molds.map((one) => withoutLid(one, plate));
  const open = { ...run, molds, start: stateAt(points, heatUp) };
  const rest = followFor(open, Math.max(1, endOf(shown) - heatUp), precision, heaterOf(past));
  const later = rest.map((point) => ({ ...point, time: heatUp + point.time }));
  const climb = climbOf(open, past, precision);
  const bare = plate.lid === 'none' ? settled : steadyPlate(run.plate, molds, run.room);
  const energy = { heatUp: heaterEnergy(run, points, heatUp), holding: bare.power };
  const heat = { plateau, heatUp, energy, climb, samples: samplesOf([...past, ...later], shown) };
  return plate.lid === 'none' ? heat : { ...heat, lidOff: bare.tops[0] ?? plateau };
}

/** Follows the thermostat from its first switching on, which a cold start fixes, unless it switches too fast for a mold to feel. */
function swungSetup(mold: MoldFacts, plate: PlateFacts, shop: Shop, wanted: PlateHeatWanted) {
  const setup = plateSetup(mold, plate, shop, wanted);
  if (setup.plate.kind === 'held') return setup;
  const { heatCapacity, deadBand, watts } = setup.plate;
  if (heatCapacity * deadBand < LEAST_ON * watts) return setup;
  return { ...setup, plate: { ...setup.plate, swing: 'followed' as const } };
}

/** Tops of a plate that was at its setting once and holds the mean of its swing; one still on its way goes on. */
function climbOf(open: PlateRun, past: readonly PlatePoint[], precision: Precision) {
  const { plate, start } = open;
  const heater = heaterOf(past);
  const isMet = past.some((point) => point.heater !== 'on');
  const isAbove = heater === 'off' && (start[0] ?? 0) > plate.setting;
  const mean =
    plate.kind === 'held' ? open : { ...open, plate: { ...plate, swing: 'averaged' as const } };
  const course =
    isMet && !isAbove
      ? followFor(
          { ...mean, start: [plate.setting, ...start.slice(1)] },
          CLIMB,
          precision,
          'holding',
        )
      : followFor(mean, CLIMB, precision, heater);
  return evenly(CLIMB, CLIMB / CLIMB_STEP).map(
    (at): MoldReading => ({ time: at, temperature: topOf(stateAt(course, at)) }),
  );
}

function heaterOf(past: readonly PlatePoint[]): Heater {
  return past[past.length - 1]?.heater ?? 'on';
}

function followFor(run: PlateRun, seconds: number, precision: Precision, heater?: Heater) {
  const until = { duration: seconds, longest: seconds, done: () => true, precision };
  return followPlate(run, heater ? { ...until, heater } : until);
}

function samplesOf(
  points: readonly PlatePoint[],
  moments: readonly number[],
): readonly PlateSample[] {
  return moments.map((seconds) => {
    const state = stateAt(points, seconds);
    return { seconds, plate: state[0] ?? 0, top: topOf(state) };
  });
}

/** Plate and one block: the block's temperature is its top's. */
function topOf(state: readonly number[]): number {
  return state[1] ?? 0;
}

function evenly(end: number, steps = STEPS): readonly number[] {
  return Array.from({ length: steps + 1 }, (_, index) => (end * index) / steps);
}

function endOf(moments: readonly number[]): number {
  return moments[moments.length - 1] ?? 0;
}
