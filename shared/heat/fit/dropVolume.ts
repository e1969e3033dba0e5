import { requireNumber } from '../../errors/requireNumber.ts';
import type { MeasuredFigure } from './setTemperatureFromPucks.ts';

/** Drops counted onto a scale. */
export interface CountedDrops {
  /** Whole, > 0; 50 make a useful trial */
  readonly drops: number;
  /** Of all of them [kg], > 0 */
  readonly mass: number;
  /** Of the liquid [kg/m3], > 0 */
  readonly density: number;
  /** Standard deviations: of the scale [kg], > 0, and of one drop as a share of it, >= 0 */
  readonly scaleError: number;
  readonly dropSpread: number;
}

/**
 * Volume of one drop from drops counted onto a scale.
 *
 * V = m / (n rho); relative error: root of (s_m / m)^2 + spread^2 / n. The density's own error is not in it.
 *
 * @returns [m3]
 * @throws InputError on a figure out of range
 * @source TRADE, counting drops onto a scale; errors by first order
 */
export function dropVolume(trial: CountedDrops): MeasuredFigure {
  const { drops, mass, density, scaleError, dropSpread } = trial;
  requireNumber(drops, 'drops', { greaterThan: 0, whole: true });
  requireNumber(mass, 'mass of the drops', { unit: 'kg', greaterThan: 0 });
  requireNumber(density, 'density', { unit: 'kgPerM3', greaterThan: 0 });
  requireNumber(scaleError, 'error of the scale', { unit: 'kg', greaterThan: 0 });
  requireNumber(dropSpread, 'spread of the drops', { atLeast: 0 });
  const value = mass / (drops * density);
  const share = Math.hypot(scaleError / mass, dropSpread / Math.sqrt(drops));
  return { value, standardError: value * share };
}
