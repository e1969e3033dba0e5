import { requireGreater } from '../errors/requireGreater.ts';
import { requireNumber } from '../errors/requireNumber.ts';
import { DEFAULTS } from '../material/defaults.ts';
import { lumpedTime, type TimeToReach } from './lumpedTime.ts';

/** Hot plastisol in its cup, stirred before each reading and pour. */
export interface Cup {
  /** Of the plastisol [kg], > 0 */
  readonly mass: number;
  readonly roomTemperature: number;
  /** Of the plastisol, hot [m3], > 0; left out, mass over hot density */
  readonly hotVolume?: number;
  /** Of the empty cup [J/K], >= 0; left out, a share of the contents' */
  readonly cupHeatCapacity?: number;
  /** Cup and free surface to the room [W/(m2 K)], > 0 */
  readonly coefficient?: number;
  /** Of the plastisol [J/(kg K)], > 0 */
  readonly specificHeat?: number;
}

/**
 * Surface that loses heat in a cup as deep as it is wide: side and free surface, the bottom on a board.
 *
 * A = 5/4 pi D^2 with V = pi/4 D^3. A wide, shallow cup has more.
 *
 * @param volume - of the contents [m3], > 0
 * @returns [m2]
 * @throws InputError when the volume is not greater than 0
 */
export function cupSurface(volume: number): number {
  requireNumber(volume, 'cup volume', { unit: 'm3', greaterThan: 0 });
  const diameter = Math.cbrt((4 * volume) / Math.PI);
  return 1.25 * Math.PI * diameter ** 2;
}

/**
 * Time constant of a stirred cup cooling on the bench: tau = (m cp + C_cup) / (h A).
 *
 * Unstirred the wall gels while the core is still hot (Biot 3 to 5) and no single figure holds.
 *
 * @returns [s]
 * @throws InputError on a figure out of range
 */
export function cupTimeConstant(cup: Cup): number {
  requireNumber(cup.mass, 'plastisol in the cup', { unit: 'kg', greaterThan: 0 });
  const {
    specificHeat = DEFAULTS.specificHeat.value,
    coefficient = DEFAULTS.cupCoefficient.value,
    hotVolume = cup.mass / DEFAULTS.hotDensity.value,
  } = cup;
  requireNumber(specificHeat, 'specific heat', { unit: 'JPerKgK', greaterThan: 0 });
  requireNumber(coefficient, 'cup heat loss', { unit: 'WPerM2K', greaterThan: 0 });
  const contents = cup.mass * specificHeat;
  const empty = cup.cupHeatCapacity ?? contents * CUP_SHARE;
  requireNumber(empty, 'cup heat capacity', { atLeast: 0 });
  return (contents + empty) / (coefficient * cupSurface(hotVolume));
}

/** Heat capacity of an empty cup over its contents', from heating energies with and without the cup; derived. */
export const CUP_SHARE = 0.1;

/**
 * Time that a cup stays above the low end of its pour band.
 *
 * t = tau ln[(T0 - T_room) / (T - T_room)], stirred; a cup below the band already has 0 s.
 *
 * @param start - as the cup leaves the heat [°C], above the room
 * @param lowest - low end of the pour band [°C]
 * @returns seconds, or `unreachable` when the room itself is as hot as the low end: it never leaves the band
 * @throws InputError on a figure out of range, or a start not above the room
 */
export function cupTimeInBand(cup: Cup, start: number, lowest: number): TimeToReach {
  const { roomTemperature } = cup;
  requireNumber(start, 'cup temperature', { unit: 'degC' });
  requireNumber(lowest, 'lowest pour temperature', { unit: 'degC' });
  requireNumber(roomTemperature, 'room temperature', { unit: 'degC' });
  const room = { field: 'room temperature', value: roomTemperature };
  requireGreater({ field: 'cup temperature', value: start }, room, 'degC');
  const timeConstant = cupTimeConstant(cup);
  return lumpedTime({ start, surroundings: roomTemperature, timeConstant }, lowest);
}

/**
 * Cavities that one heating of a cup pours: whole pours inside the time in the band.
 * @param timeInBand - [s], >= 0
 * @param secondsPerCavity - of pouring, moving on and stirring [s], > 0
 * @returns whole number, 0 when the band closes during the first pour
 * @throws InputError on a figure out of range
 */
export function cavitiesPerHeating(timeInBand: number, secondsPerCavity: number): number {
  requireNumber(timeInBand, 'time in the pour band', { unit: 's', atLeast: 0 });
  requireNumber(secondsPerCavity, 'pour time per cavity', { unit: 's', greaterThan: 0 });
  return Math.floor(timeInBand / secondsPerCavity);
}
