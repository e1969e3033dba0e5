import { requireNumber } from '../errors/requireNumber.ts';

/**
 * Volume of a cavity from the weight of a finished piece without hook or weight.
 * @param pieceMass [kg], > 0
 * @param density of the cured piece [kg/m3], > 0
 * @returns cold volume [m3]; the mold itself is 4 to 5 % larger, since the piece shrinks
 * @throws InputError on a figure out of range
 */
export function cavityVolume(pieceMass: number, density: number): number {
  requireNumber(pieceMass, 'piece weight', { unit: 'kg', greaterThan: 0 });
  requireNumber(density, 'density', { unit: 'kgPerM3', greaterThan: 0 });
  return pieceMass / density;
}
