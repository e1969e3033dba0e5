import { requireNumber } from '../errors/requireNumber.ts';

const REFERENCE_PRESSURE = 1e6; // Pa, the formulation's p*

/**
 * Temperature at which water boils at a given pressure. The inverse of `saturationPressure`, solved in closed form.
 *
 * T = [n10 + D - sqrt((n10 + D)^2 - 4 (n9 + n10 D))] / 2, D = 2 G / (-F - sqrt(F^2 - 4 E G)),
 * E, F, G quadratics in beta = (p / p*)^(1/4), T in kelvin.
 *
 * @param pressure - [Pa], 611.212 to 22.064e6
 * @returns [°C]
 * @throws InputError outside the range
 * @source IAPWS97, region 4, equation 31
 */
export function saturationTemperature(pressure: number): number {
  requireNumber(pressure, 'pressure', { unit: 'Pa', ...SATURATION_RANGE.pressure });
  const [n1, n2, n3, n4, n5, n6, n7, n8, n9, n10] = SATURATION_COEFFICIENTS;
  const beta = (pressure / REFERENCE_PRESSURE) ** 0.25;
  const e = beta ** 2 + n3 * beta + n6;
  const f = n1 * beta ** 2 + n4 * beta + n7;
  const g = n2 * beta ** 2 + n5 * beta + n8;
  const d = (2 * g) / (-f - Math.sqrt(f ** 2 - 4 * e * g));
  return (n10 + d - Math.sqrt((n10 + d) ** 2 - 4 * (n9 + n10 * d))) / 2 - 273.15;
}

/** Where the formulation's saturation line begins and ends: triple-point side and critical point. */
export const SATURATION_RANGE = {
  temperature: { atLeast: 0, atMost: 373.946 }, // °C
  pressure: { atLeast: 611.212, atMost: 22.064e6 }, // Pa, as the equation itself gives them
} as const;

/**
 * The ten coefficients n1 to n10 of the saturation line's quadratic.
 * @source IAPWS97, region 4, Table 34
 */
export const SATURATION_COEFFICIENTS = [
  0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.1202082470247e5,
  -0.32325550322333e7, 0.1491510861353e2, -0.48232657361591e4, 0.40511340542057e6,
  -0.23855557567849, 0.65017534844798e3,
] as const;
