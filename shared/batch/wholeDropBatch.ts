import { requireNumber } from '../errors/requireNumber.ts';

export interface WholeDropBatch {
  /** The batch, as a multiple of the cup asked about, >= 1 */
  readonly batch: number;
  /** Whole drops of each colorant, in the order given */
  readonly drops: readonly number[];
  /** Of each rounded count, over what the recipe wants, less 1 */
  readonly errors: readonly number[];
}

/** So that a batch on the very edge of the tolerance stays inside it after rounding. */
const INSIDE = 1 + 1e-12;

/**
 * The smallest batch, not below this cup, in which every colorant of a layer comes out in whole drops within the tolerance.
 *
 * A dose of x drops is within the tolerance when n / (1 + tolerance) <= x <= n / (1 - tolerance) for a whole n >= 1. While
 * one is not, the batch grows to where the worst of them meets its next whole drop; past 0.5 / tolerance drops all do.
 *
 * @param drops that the recipe scales to in this cup, one for each colorant, each > 0
 * @param tolerance largest error of a rounded count, above 0 to 0.5
 * @throws InputError on a figure out of range
 */
export function wholeDropBatch(drops: readonly number[], tolerance: number): WholeDropBatch {
  requireNumber(tolerance, 'dose tolerance', { greaterThan: 0, atMost: 0.5 });
  for (const one of drops) requireNumber(one, 'drops', { greaterThan: 0 });
  let batch = 1;
  for (;;) {
    const next = Math.max(batch, ...drops.map((one) => nextBatch(one, batch, tolerance)));
    if (next === batch) break;
    batch = next;
  }
  const whole = drops.map((one) => Math.round(one * batch));
  return {
    batch,
    drops: whole,
    errors: whole.map((count, index) => count / ((drops[index] ?? count) * batch) - 1),
  };
}

/** The batch itself when this dose is whole in it, else the next in which it is. */
function nextBatch(drops: number, batch: number, tolerance: number): number {
  const scaled = drops * batch;
  const error = Math.abs(Math.round(scaled) / scaled - 1);
  if (error <= tolerance) return batch;
  return (Math.ceil(scaled) / (1 + tolerance) / drops) * INSIDE;
}
