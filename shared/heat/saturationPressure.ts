import { requireNumber } from '../errors/requireNumber.ts';
import { SATURATION_COEFFICIENTS, SATURATION_RANGE } from './saturationTemperature.ts';

const REFERENCE_PRESSURE = 1e6; // Pa, the formulation's p*

/**
 * Pressure at which water boils at a given temperature.
 *
 * p = p* [2 C / (-B + sqrt(B^2 - 4 A C))]^4, A, B, C quadratics in theta = T + n9 / (T - n10), T in kelvin.
 *
 * @param temperature - [°C], 0 to 373.946
 * @returns [Pa]
 * @throws InputError outside the range
 * @source IAPWS97, region 4, equation 30
 */
export function saturationPressure(temperature: number): number {
  requireNumber(temperature, 'temperature', { unit: 'degC', ...SATURATION_RANGE.temperature });
  const [n1, n2, n3, n4, n5, n6, n7, n8, n9, n10] = SATURATION_COEFFICIENTS;
  const kelvin = temperature + 273.15;
  const theta = kelvin + n9 / (kelvin - n10);
  const a = theta ** 2 + n1 * theta + n2;
  const b = n3 * theta ** 2 + n4 * theta + n5;
  const c = n6 * theta ** 2 + n7 * theta + n8;
  return REFERENCE_PRESSURE * ((2 * c) / (-b + Math.sqrt(b ** 2 - 4 * a * c))) ** 4;
}
