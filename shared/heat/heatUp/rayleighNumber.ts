import type { AirFilm } from './airFilm.ts';

const GRAVITY = 9.80665; // m/s2

/**
 * Buoyancy over what resists it: Ra = g beta dT L^3 Pr / nu^2.
 * @param film - properties at the mean of surface and room
 * @param difference - surface less room [K], >= 0
 * @param length - height of a vertical face, area over perimeter of a horizontal one [m], > 0
 * @returns pure number
 * @source INCROPERA, equation 9.25
 */
export function rayleighNumber(
  film: Pick<AirFilm, 'kinematicViscosity' | 'prandtl' | 'expansion'>,
  difference: number,
  length: number,
): number {
  const { kinematicViscosity: viscosity, prandtl, expansion } = film;
  return (GRAVITY * expansion * difference * length ** 3 * prandtl) / viscosity ** 2;
}
