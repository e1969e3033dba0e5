/// <reference path="./jstat-esm.d.ts" />
import { erfcinv } from 'jstat-esm';
import { requireNumber } from '../errors/requireNumber.ts';

export interface YieldRate {
  readonly rate: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Share of good pieces with its Wilson score interval (no continuity correction).
 * center = (p + z²/2n) / (1 + z²/n), half width = z / (1 + z²/n) √(p (1 - p)/n + z²/4n²).
 * @param good whole, 0 to poured
 * @param poured whole, >= 1
 * @param confidence of the two-sided interval, between 0 and 1, both excluded
 * @throws InputError on a figure out of range
 * @source NEWCOMBE1998, method 3
 */
export function yieldRate(good: number, poured: number, confidence: number): YieldRate {
  requireNumber(poured, 'poured', { atLeast: 1, whole: true });
  requireNumber(good, 'good', { atLeast: 0, atMost: poured, whole: true });
  requireNumber(confidence, 'confidence', { greaterThan: 0, lessThan: 1 });
  const z = Math.SQRT2 * erfcinv(1 - confidence);
  const rate = good / poured;
  const weight = z ** 2 / poured;
  const center = (rate + weight / 2) / (1 + weight);
  const half = (z / (1 + weight)) * Math.sqrt((rate * (1 - rate)) / poured + weight / (4 * poured));
  return { rate, low: good === 0 ? 0 : center - half, high: good === poured ? 1 : center + half };
}
