import { requireNumber } from '../errors/requireNumber.ts';

export interface DropsWanted {
  /** Drops that the recipe scales to in one cup, > 0, seldom whole */
  readonly drops: number;
  /** Largest error of the rounded count, above 0 to 0.5 */
  readonly tolerance: number;
  /** Fewest drops a cut should give, whole, >= 1 */
  readonly leastDrops: number;
}

export type WholeDrops =
  | { readonly kind: 'drops'; readonly drops: number; readonly error: number }
  | {
      readonly kind: 'not whole';
      /** The smallest batch, as a multiple of this cup, that takes whole drops, and how many */
      readonly batch: number;
      readonly batchDrops: number;
      /** Parts of cut colorant for one part of colorant, and the drops of it, with their error, within the tolerance */
      readonly cut: number;
      readonly cutDrops: number;
      readonly cutError: number;
    };

/**
 * A dose in whole drops, or what would make it so: first a larger batch, then a cut of the colorant
 * (one part in `cut` parts in all) that gives at least `leastDrops` drops. Weighing is always open and is the caller's to offer.
 * @throws InputError on a figure out of range
 */
export function wholeDrops({ drops, tolerance, leastDrops }: DropsWanted): WholeDrops {
  requireNumber(drops, 'drops', { greaterThan: 0 });
  requireNumber(tolerance, 'dose tolerance', { greaterThan: 0, atMost: 0.5 });
  requireNumber(leastDrops, 'fewest drops', { atLeast: 1, whole: true });
  const rounded = Math.round(drops);
  // no drop at all is an error of -1, past any tolerance
  const error = rounded / drops - 1;
  if (Math.abs(error) <= tolerance) return { kind: 'drops', drops: rounded, error };
  const batchDrops = Math.ceil(drops);
  const cut = smallestCut(drops, tolerance, leastDrops);
  const cutDrops = Math.round(drops * cut);
  return {
    kind: 'not whole',
    batch: batchDrops / drops,
    batchDrops,
    cut,
    cutDrops,
    cutError: cutDrops / (drops * cut) - 1,
  };
}

/** Fewest parts that give enough drops, whole within the tolerance: at the latest at 0.5 / tolerance drops. */
function smallestCut(drops: number, tolerance: number, leastDrops: number): number {
  let cut = Math.ceil(leastDrops / drops);
  while (Math.abs(Math.round(drops * cut) / (drops * cut) - 1) > tolerance) cut++;
  return cut;
}
