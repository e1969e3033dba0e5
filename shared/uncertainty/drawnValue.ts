import { requireNumber } from '../errors/requireNumber.ts';
import { type Fitted, normal } from './normal.ts';
import { type Triangle, triangular } from './triangular.ts';

/** What is thought of a figure: a range with its likeliest value, the same by factors instead of steps, or a fit with its error. */
export type Spread =
  | ({ readonly kind: 'range' } & Triangle)
  | ({ readonly kind: 'factors' } & Triangle)
  | ({ readonly kind: 'fitted' } & Fitted);

/**
 * Value of a figure that a share of what is thought possible lies below.
 *
 * A range is triangular; a range known by factors only (a conductance of 300 to 2000) is triangular in the logarithm.
 *
 * @param share - 0 to 1
 * @throws InputError on a figure out of range, or factors not above 0
 */
export function drawnValue(share: number, spread: Spread): number {
  if (spread.kind === 'fitted') return normal(share, spread);
  if (spread.kind === 'range') return triangular(share, spread);
  const { low, mode, high } = spread;
  requireNumber(low, 'low', { greaterThan: 0 });
  const logarithms = { low: Math.log(low), mode: Math.log(mode), high: Math.log(high) };
  return Math.exp(triangular(share, logarithms));
}
