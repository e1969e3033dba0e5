import type { UnitSystem } from '../units/measures.ts';
import { say } from './say.ts';

/** A span of temperature in whole degrees: `70 °F`. @param kelvin - [K] */
export function sayDifference(kelvin: number, system: UnitSystem): string {
  return say(kelvin, 'temperatureDifference', system, 0);
}
