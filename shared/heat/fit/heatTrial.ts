import { requireNumber } from '../../errors/requireNumber.ts';
import { followPlate } from '../heatUp/followPlate.ts';
import type { HeatingMold } from '../heatUp/heatingMold.ts';
import type { HeatingPlate } from '../heatUp/heatingPlate.ts';
import { plateRun } from '../heatUp/plateRun.ts';
import { stateAt } from '../heatUp/stateAt.ts';

/** One heating of one mold, with what was read meanwhile. */
export interface HeatTrial {
  /** A swing that is followed is left out: a reading cannot know where in the dead band it fell. */
  readonly plate: HeatingPlate;
  /** Its own contact conductance is only the first guess. */
  readonly mold: HeatingMold;
  /** [°C] */
  readonly roomTemperature: number;
  /** [Pa] */
  readonly pressure?: number;
  readonly readings: readonly HeatReading[];
}

export interface HeatReading {
  /** Since the plate was switched on, or the mold put on a hot one [s], >= 0 */
  readonly seconds: number;
  /** Mold top [°C], -20 to 300 */
  readonly top: number;
}

/** What the readings may tell about a plate and its room. */
export interface ContactAndLoss {
  /** Plate to mold [W/(m2 K)], > 0 */
  readonly contact: number;
  /** Times the loss by the published correlations, > 0 */
  readonly lossShare: number;
}

/** @throws InputError on a time or temperature out of range */
export function requireReadings(readings: readonly HeatReading[]): void {
  for (const { seconds, top } of readings) {
    requireNumber(seconds, 'time of a reading', { unit: 's', atLeast: 0, atMost: 43_200 });
    requireNumber(top, 'mold top', { unit: 'degC', atLeast: -20, atMost: 300 });
  }
}

/**
 * Mold tops at given times of a trial, for a contact and a loss.
 * @param times - since switch-on [s], any order
 * @returns one per time [°C]
 */
export function trialTops(
  trial: Omit<HeatTrial, 'readings'>,
  times: readonly number[],
  { contact, lossShare }: ContactAndLoss,
): readonly number[] {
  const { plate, mold, roomTemperature, pressure } = trial;
  const own = mold.lossShare ?? 1;
  const run = plateRun({
    plate: isFollowed(plate) ? { ...plate, deadBand: 0 } : plate,
    molds: [{ ...mold, contactConductance: contact, lossShare: own * lossShare }],
    roomTemperature,
    ...(pressure === undefined ? {} : { pressure }),
  });
  const duration = Math.max(1, ...times);
  const points = followPlate(run, { duration, longest: duration, done: () => true });
  const top = run.tops[0] ?? 0;
  return times.map((time) => stateAt(points, time)[top] ?? roomTemperature);
}

function isFollowed(plate: HeatingPlate): plate is Extract<HeatingPlate, { kind: 'heated' }> {
  return plate.kind === 'heated' && plate.swing !== 'averaged';
}
