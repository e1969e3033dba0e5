/** Good enough for an open time within a tenth [K]. */
const ENOUGH = 2;

/**
 * What to make of a set temperature from pucks.
 * @param count - of pucks
 * @param standardError - of their figure [K]
 */
export function puckText(count: number, standardError: number): string {
  if (count === 1) return 'one puck: pour two more to see how they scatter';
  if (standardError <= ENOUGH) return 'good';
  return 'weak: pour more pucks, and tilt more often';
}
