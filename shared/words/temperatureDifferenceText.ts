import type { UnitSystem } from '../units/measures.ts';
import { quantityText } from './quantityText.ts';

/** A span of temperature in whole degrees: `70 °F`. @param kelvin - [K] */
export function temperatureDifferenceText(kelvin: number, system: UnitSystem): string {
  return quantityText(kelvin, 'temperatureDifference', system, 0);
}
