import { requireNumber } from '../errors/requireNumber.ts';

/** A body at one temperature throughout, losing or gaining heat at its surface. */
export interface LumpedBody {
  /** [kg/m3], > 0 */
  readonly density: number;
  /** [J/(kg K)], > 0 */
  readonly specificHeat: number;
  /** Volume over exchanging surface [m], > 0 */
  readonly volumeOverArea: number;
  /** Heat transfer coefficient at that surface [W/(m2 K)], > 0 */
  readonly coefficient: number;
}

/**
 * Seconds in which a lumped body covers 63 % of the way to its surroundings.
 *
 * tau = rho c (V / A) / h. Valid while {@link biotNumber} is below about 0.1.
 *
 * @returns [s]
 * @throws InputError when a figure is not greater than 0
 * @source INCROPERA, section 5.1
 */
export function timeConstant(body: LumpedBody): number {
  requireNumber(body.density, 'density', { unit: 'kgPerM3', greaterThan: 0 });
  requireNumber(body.specificHeat, 'specific heat', { unit: 'JPerKgK', greaterThan: 0 });
  requireNumber(body.volumeOverArea, 'volume over area', { unit: 'm', greaterThan: 0 });
  requireNumber(body.coefficient, 'heat transfer coefficient', { unit: 'WPerM2K', greaterThan: 0 });
  return (body.density * body.specificHeat * body.volumeOverArea) / body.coefficient;
}

/**
 * Resistance inside a body over resistance at its surface: Bi = h (V / A) / k.
 * @param conductivity - of the body [W/(m K)], > 0
 * @returns pure number; lumped formulas hold below about 0.1
 * @throws InputError when conductivity is not greater than 0
 * @source INCROPERA, section 5.2
 */
export function biotNumber(
  { coefficient, volumeOverArea }: Pick<LumpedBody, 'coefficient' | 'volumeOverArea'>,
  conductivity: number,
): number {
  requireNumber(conductivity, 'conductivity', { unit: 'WPerMK', greaterThan: 0 });
  return (coefficient * volumeOverArea) / conductivity;
}
