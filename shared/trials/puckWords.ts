import type { SetTemperature } from '../heat/fit/setTemperatureFromPucks.ts';

/** Good enough for an open time within a tenth [K]. */
const ENOUGH = 2;

/** What to make of a set temperature from pucks. */
export function puckWords({ each, standardError }: SetTemperature): string {
  if (each.length === 1) return 'one puck: pour two more to see how they scatter';
  if (standardError <= ENOUGH) return 'good';
  return 'weak: pour more pucks, and tilt more often';
}
