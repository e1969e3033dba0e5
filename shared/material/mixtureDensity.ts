import { InputError } from '../errors/InputError.ts';
import { requireNumber } from '../errors/requireNumber.ts';

export interface Part {
  /** [kg], >= 0 */
  readonly mass: number;
  /** [kg/m3], > 0 */
  readonly density: number;
}

/**
 * Density of a mixture whose volumes add: 1 / rho = sum(w_i / rho_i). Air stirred in, and volume changes on mixing
 * (under 1 % for plasticized PVC), are not counted.
 * @returns [kg/m3]
 * @throws InputError on a figure out of range, or no mass at all
 * @source checks F1 to F6
 */
export function mixtureDensity(parts: readonly Part[]): number {
  let mass = 0;
  let volume = 0;
  for (const part of parts) {
    requireNumber(part.mass, 'mass', { unit: 'kg', atLeast: 0 });
    requireNumber(part.density, 'density', { unit: 'kgPerM3', greaterThan: 0 });
    mass += part.mass;
    volume += part.mass / part.density;
  }
  if (mass === 0)
    throw new InputError({
      field: 'mass',
      rule: { kind: 'greater than', limit: 0 },
      value: 0,
      unit: 'kg',
    });
  return mass / volume;
}
