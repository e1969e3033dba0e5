import { requireNumber } from '../../errors/requireNumber.ts';
import type { MeasuredFigure } from './setTemperatureFromPucks.ts';

/**
 * One figure from several measurements of it.
 *
 * x = sum(x_i / s_i^2) / sum(1 / s_i^2); error 1 / sqrt(sum(1 / s_i^2)), or what the measurements scatter over sqrt(n)
 * where that is more: errors that are not in any s_i show only there.
 *
 * @param measurements - at least one; each error > 0
 * @throws InputError on none of them, or a figure out of range
 * @source NISTHANDBOOK, section 4.1.4.3, weighted least squares, here of a constant
 */
export function pooledFigure(measurements: readonly MeasuredFigure[]): MeasuredFigure {
  requireNumber(measurements.length, 'measurements', { atLeast: 1 });
  let [weights, sum] = [0, 0];
  for (const { value, standardError } of measurements) {
    requireNumber(value, 'measured value');
    requireNumber(standardError, 'standard error', { greaterThan: 0 });
    weights += standardError ** -2;
    sum += value * standardError ** -2;
  }
  const value = sum / weights;
  const count = measurements.length;
  const squares = measurements.reduce((total, one) => total + (one.value - value) ** 2, 0);
  const scatter = count > 1 ? Math.sqrt(squares / ((count - 1) * count)) : 0;
  return { value, standardError: Math.max(1 / Math.sqrt(weights), scatter) };
}
