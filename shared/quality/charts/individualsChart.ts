/// <reference path="../jstat-esm.d.ts" />
import { erfc } from 'jstat-esm';
import { requireNumber } from '../../errors/requireNumber.ts';
import type { NoChart } from './pChart.ts';
import { type RulePoint, runSignals, type Signal } from './runSignals.ts';

/** Mean range of two normal values over their standard deviation. @source NISTHANDBOOK, section 6.3.2.2 */
export const D2 = 1.128;
/** Upper limit of a range of two over the mean range, rounded. @source MONTGOMERY, factors for control charts, n = 2 */
export const D4 = 3.267;

export interface IndividualsChart {
  readonly kind: 'chart';
  readonly values: readonly number[];
  readonly center: number;
  readonly lower: number;
  readonly upper: number;
  /** Differences of neighbors, one fewer than values. */
  readonly ranges: readonly number[];
  readonly meanRange: number;
  readonly rangeLimit: number;
  readonly signals: readonly Signal[];
  /** Ranges above their limit, by the later of their two values, counted from 0. */
  readonly jumps: readonly number[];
}

/**
 * Individuals and moving-range chart: one value at a time, how far neighbors differ says how much is luck.
 *
 * sigma = mean |x(i) - x(i-1)| / 1.128; limits mean -+ 3 sigma; ranges up to 3.267 times their mean.
 * Takes values as about normal and each as independent of the one before.
 * @param values - in the order they were made, any one unit
 * @throws InputError on a value that is no number
 * @source NISTHANDBOOK, section 6.3.2.2
 */
export function individualsChart(values: readonly number[]): IndividualsChart | NoChart {
  for (const value of values) requireNumber(value, 'value');
  if (values.length < 2) return { kind: 'no chart', because: 'fewer than two points' };
  const ranges = values.slice(1).map((value, index) => Math.abs(value - (values[index] ?? value)));
  const center = mean(values);
  const meanRange = mean(ranges);
  const sigma = meanRange / D2;
  const rangeLimit = D4 * meanRange;
  return {
    kind: 'chart',
    values,
    center,
    lower: center - 3 * sigma,
    upper: center + 3 * sigma,
    ranges,
    meanRange,
    rangeLimit,
    signals: runSignals(
      values.map((value) => rulePoint(sigma === 0 ? 0 : (value - center) / sigma)),
    ),
    jumps: ranges.flatMap((range, index) => (range > rangeLimit ? [index + 1] : [])),
  };
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function rulePoint(z: number): RulePoint {
  return {
    z,
    chanceBeyond: (sigmas) => normalTail(sigmas),
    get chanceAsFar() {
      return normalTail(Math.abs(z));
    },
  };
}

/** Chance that a normal value lies so many standard deviations or more above its mean. */
function normalTail(z: number): number {
  return Math.max(0, erfc(z / Math.SQRT2) / 2);
}
