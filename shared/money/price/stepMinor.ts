import type { CurrencyCode } from '../../book/currencies.ts';
import { toMinor } from '../toMinor.ts';

/** The step of a price in smallest units; a step of 0, or finer than the smallest unit, is that unit. */
export function stepMinor(step: number, currency: CurrencyCode): number {
  return Math.max(1, toMinor(step, currency, 'price step'));
}
