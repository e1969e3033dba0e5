import { requireGreater } from '../../errors/requireGreater.ts';
import { requireNumber } from '../../errors/requireNumber.ts';
import type { Room } from './faceCoefficient.ts';

/** A hot plate: at its setting from the start and never short of power, or heated by its watts. */
export type HeatingPlate =
  | { readonly kind: 'held'; readonly setting: number }
  | {
      readonly kind: 'heated';
      /** Middle of the dead band, at the plate's surface [°C], above the room, at most 400 */
      readonly setting: number;
      /** Of the heater [W], > 0 */
      readonly watts: number;
      /** Of the plate itself [J/K], > 0; see `plateHeatCapacity` */
      readonly heatCapacity: number;
      /** From the plate's own bare surfaces to the room [W/K], >= 0 */
      readonly lossConductance: number;
      /** Between switching off and switching on again [K], >= 0; 0 for a control that holds the setting */
      readonly deadBand: number;
      /** Averaged: the first overshoot, then the setting; the phase of the swing is left out. Followed when left out */
      readonly swing?: 'followed' | 'averaged';
      /** [°C]; the room's when left out */
      readonly startTemperature?: number;
    };

/** @throws InputError on a figure out of range, or a setting not above the room */
export function requirePlate(plate: HeatingPlate, room: Room): void {
  requireNumber(plate.setting, 'plate setting', { unit: 'degC', atMost: 400 });
  const roomTemperature = { field: 'room temperature', value: room.temperature };
  requireGreater({ field: 'plate setting', value: plate.setting }, roomTemperature, 'degC');
  if (plate.kind === 'held') return;
  requireNumber(plate.watts, 'plate watts', { unit: 'W', greaterThan: 0 });
  requireNumber(plate.heatCapacity, 'plate heat capacity', { greaterThan: 0 });
  requireNumber(plate.lossConductance, 'plate heat loss', { atLeast: 0 });
  requireNumber(plate.deadBand, 'dead band', { unit: 'differenceC', atLeast: 0 });
  requireNumber(plate.startTemperature ?? room.temperature, 'plate start temperature', {
    unit: 'degC',
    atLeast: -20,
    atMost: 400,
  });
}

/** What a shop knows of its plate, timed bare. */
export interface BareWarmUp {
  /** [W], > 0 */
  readonly watts: number;
  /** From cold to the setting [s], > 0 */
  readonly seconds: number;
  /** Setting less room [K], > 0 */
  readonly rise: number;
  /** [W/K], >= 0; times the rise less than the watts */
  readonly lossConductance: number;
}

/**
 * Heat capacity of a plate from the time it takes to warm up bare.
 *
 * C = G t / -ln(1 - G dT / P), without loss P t / dT.
 *
 * @returns [J/K]
 * @throws InputError on a figure out of range, or a loss that the heater cannot carry
 * @source INCROPERA, section 5.3, general lumped body with generation
 */
export function plateHeatCapacity(warmUp: BareWarmUp): number {
  const { watts, seconds, rise, lossConductance } = warmUp;
  requireNumber(watts, 'plate watts', { unit: 'W', greaterThan: 0 });
  requireNumber(seconds, 'plate warm-up', { unit: 's', greaterThan: 0 });
  requireNumber(rise, 'rise of the plate', { unit: 'differenceC', greaterThan: 0 });
  requireNumber(lossConductance, 'plate heat loss', { atLeast: 0, lessThan: watts / rise });
  const share = (lossConductance * rise) / watts;
  // Below this the logarithm keeps fewer digits than its series.
  const stretch = share < 1e-8 ? 1 : share / -Math.log1p(-share);
  return (stretch * watts * seconds) / rise;
}
