import { requireNumber } from '../errors/requireNumber.ts';

/** Coefficients of Kell's equation, ascending powers of the temperature. */
const NUMERATOR = [
  999.83952, 16.945176, -7.9870401e-3, -46.170461e-6, 105.56302e-9, -280.54253e-12,
];
const DENOMINATOR_SLOPE = 16.87985e-3;

/**
 * Density of fresh, air-free water at one atmosphere. Salt water is about 2.5 % denser.
 * @param temperature [°C], 0 to 100
 * @returns [kg/m3]
 * @throws InputError for a temperature out of range
 * @source KELL1975, equation 16
 */
export function waterDensity(temperature: number): number {
  requireNumber(temperature, 'water temperature', { unit: 'degC', atLeast: 0, atMost: 100 });
  const top = NUMERATOR.reduceRight((sum, coefficient) => sum * temperature + coefficient, 0);
  return top / (1 + DENOMINATOR_SLOPE * temperature);
}
