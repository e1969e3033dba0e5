import { requireNumber } from '../errors/requireNumber.ts';

/**
 * Pigment that covers a square meter of a layer: mass share x thickness x density.
 * @param massShare pigment over base, by mass, >= 0
 * @param thickness of the layer [m], > 0
 * @param density of the layer [kg/m3], > 0
 * @returns [kg/m2]; 1 % in 3 mm of density 1 g/mL covers with 30 g/m2
 * @throws InputError on a figure out of range
 */
export function pigmentCover(massShare: number, thickness: number, density: number): number {
  requireNumber(massShare, 'loading', { atLeast: 0 });
  requireNumber(thickness, 'thickness', { unit: 'm', greaterThan: 0 });
  requireNumber(density, 'density', { unit: 'kgPerM3', greaterThan: 0 });
  return massShare * thickness * density;
}
