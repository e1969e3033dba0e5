/// <reference path="../jstat-esm.d.ts" />
import { erfcinv } from 'jstat-esm';
import { requireNumber } from '../../errors/requireNumber.ts';
import type { LogisticCurve } from './logisticFit.ts';

/** The figure at which half pass; an end is absent where the data set no limit there. */
export interface Threshold {
  readonly value: number;
  readonly standardError: number;
  readonly low?: number;
  readonly high?: number;
}

/**
 * The figure at which half pass, T = -b0/b1, with its standard error and Fieller's interval.
 *
 * Standard error by the delta method: sqrt(v00 + 2 T v01 + T^2 v11) / |b1|. Fieller's limits are the figures T at which
 * (b0 + b1 T)^2 = z^2 (v00 + 2 T v01 + T^2 v11); without limits where the slope does not differ from 0 at that confidence.
 *
 * @param curve - its slope is not 0
 * @param confidence - of the two-sided interval, between 0 and 1, both excluded
 * @source FIELLER1954
 */
export function logisticThreshold(
  { intercept, slope, covariance }: LogisticCurve,
  confidence: number,
): Threshold {
  requireNumber(confidence, 'confidence', { greaterThan: 0, lessThan: 1 });
  const z2 = squaredNormal(confidence);
  const value = -intercept / slope;
  const spread = covariance.intercept + 2 * value * covariance.both + value ** 2 * covariance.slope;
  const standardError = Math.sqrt(Math.max(0, spread)) / Math.abs(slope);
  // Around the threshold itself, u = T - value: (b1 u)^2 = z^2 (spread + 2 u cross + u^2 v11).
  const lead = slope ** 2 - z2 * covariance.slope;
  if (lead <= 0) return { value, standardError };
  const cross = z2 * (covariance.both + value * covariance.slope);
  const root = Math.sqrt(cross ** 2 + lead * z2 * spread);
  return {
    value,
    standardError,
    low: value + (cross - root) / lead,
    high: value + (cross + root) / lead,
  };
}

/** Square of the normal deviate, which is the chi-squared quantile with one degree of freedom. */
export function squaredNormal(confidence: number): number {
  return 2 * erfcinv(1 - confidence) ** 2;
}
