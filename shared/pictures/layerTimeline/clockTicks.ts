import { range } from 'd3-array';

/** Steps that people count time in [s]. */
const STEPS = [1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200, 21_600, 86_400];

/**
 * Times from zero at a step that people count in.
 * @param end - [s], > 0
 * @param most - how many there may be, >= 2
 */
export function clockTicks(end: number, most: number): readonly number[] {
  const step = STEPS.find((one) => end / one <= most - 1) ?? Math.ceil(end / (most - 1));
  return range(0, end + step * 1e-9, step);
}
