import { requireNumber } from '../errors/requireNumber.ts';

/** What decides how strongly a body holds its temperature at a contact. */
export interface Conductor {
  /** [W/(m K)], > 0 */
  readonly conductivity: number;
  /** [kg/m3], > 0 */
  readonly density: number;
  /** [J/(kg K)], > 0 */
  readonly specificHeat: number;
}

/**
 * Thermal effusivity: e = sqrt(k rho c).
 * @returns [W s^0.5/(m2 K)]
 * @throws InputError when a figure is not greater than 0
 * @source CENGEL, section 4-3
 */
export function effusivity({ conductivity, density, specificHeat }: Conductor): number {
  requireNumber(conductivity, 'conductivity', { unit: 'WPerMK', greaterThan: 0 });
  requireNumber(density, 'density', { unit: 'kgPerM3', greaterThan: 0 });
  requireNumber(specificHeat, 'specific heat', { unit: 'JPerKgK', greaterThan: 0 });
  return Math.sqrt(conductivity * density * specificHeat);
}

export interface ContactSide {
  /** At its surface, before they touch [°C] */
  readonly temperature: number;
  /** [W s^0.5/(m2 K)], > 0 */
  readonly effusivity: number;
}

/**
 * Temperature at which two bodies meet when they touch, held until the far side of the thinner one is felt.
 *
 * T = (e1 T1 + e2 T2) / (e1 + e2). Plastic on plastic it is the plain average of the two surfaces, see
 * `layerContactTemperature`. For a layer of thickness L it holds for about 0.1 L^2 / alpha: 10 s for 3 mm.
 *
 * @returns [°C]
 * @throws InputError when an effusivity is not greater than 0
 * @source CENGEL, section 4-3, contact of two semi-infinite solids
 */
export function contactTemperature(one: ContactSide, other: ContactSide): number {
  for (const side of [one, other]) {
    requireNumber(side.temperature, 'surface temperature', { unit: 'degC' });
    requireNumber(side.effusivity, 'effusivity', { greaterThan: 0 });
  }
  const whole = one.effusivity + other.effusivity;
  return (one.effusivity * one.temperature + other.effusivity * other.temperature) / whole;
}

/**
 * Contact temperature of a new layer on a layer of the same plastic: the average of the two surfaces.
 * @param surface - of the layer below, as the pour lands [°C]
 * @param pour - of the new layer as it lands: the cup's, less the loss while pouring [°C]
 * @returns [°C], compared with the bond temperature
 * @throws InputError when either is not a number
 */
export function layerContactTemperature(surface: number, pour: number): number {
  return contactTemperature(
    { temperature: surface, effusivity: 1 },
    { temperature: pour, effusivity: 1 },
  );
}
