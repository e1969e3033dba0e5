import { requireNumber } from '../../errors/requireNumber.ts';

const GAS_CONSTANT = 287.053; // J/(kg K), dry air: 8314.32 over 28.9644
const SPECIFIC_HEAT = 1004.68; // J/(kg K), 1.4 / 0.4 gas constants

/** The standard's fits are made for the atmosphere, and read on into hot films. */
export const AIR_FILM_RANGE = { atLeast: -50, atMost: 400 } as const;

/** Sea level of the standard atmosphere [Pa]. */
export const SEA_LEVEL_AIR = 101_325;

/** Air as free convection needs it. */
export interface AirFilm {
  /** [W/(m K)] */
  readonly conductivity: number;
  /** [m2/s] */
  readonly kinematicViscosity: number;
  readonly prandtl: number;
  /** Of volume, 1 / T [1/K] */
  readonly expansion: number;
}

/**
 * Properties of dry air at a film temperature.
 *
 * mu = 1.458e-6 T^1.5 / (T + 110.4); k = 2.64638e-3 T^1.5 / (T + 245.4 * 10^(-12/T)); rho = p / (R T), T in kelvin.
 * Conductivity agrees with INCROPERA's table within 0.5 %; CENGEL's table lies 2.5 % lower.
 *
 * @param temperature - mean of surface and room [°C], -50 to 400
 * @param pressure - [Pa], > 0
 * @throws InputError out of range
 * @source USSA76, part 1, equations 51 and 53
 */
export function airFilm(temperature: number, pressure: number): AirFilm {
  requireNumber(temperature, 'film temperature', { unit: 'degC', ...AIR_FILM_RANGE });
  requireNumber(pressure, 'air pressure', { unit: 'Pa', greaterThan: 0 });
  const kelvin = temperature + 273.15;
  const power = kelvin ** 1.5;
  const viscosity = (1.458e-6 * power) / (kelvin + 110.4);
  const conductivity = (2.64638e-3 * power) / (kelvin + 245.4 * 10 ** (-12 / kelvin));
  return {
    conductivity,
    kinematicViscosity: (viscosity * GAS_CONSTANT * kelvin) / pressure,
    prandtl: (viscosity * SPECIFIC_HEAT) / conductivity,
    expansion: 1 / kelvin,
  };
}
