import { requireNumber } from '../errors/requireNumber.ts';

/** Ranks from 1 up, each tie at the mean of the places it takes; infinities tie with each other. */
export function ranks(values: readonly number[]): readonly number[] {
  const order = values
    .map((_, index) => index)
    .sort((one, other) => {
      const [first = 0, second = 0] = [values[one], values[other]];
      return first < second ? -1 : first > second ? 1 : 0;
    });
  const given: number[] = new Array(values.length);
  for (let start = 0; start < order.length; ) {
    let end = start + 1;
    while (end < order.length && values[order[end] ?? 0] === values[order[start] ?? 0]) end += 1;
    for (const index of order.slice(start, end)) given[index] = (start + 1 + end) / 2;
    start = end;
  }
  return given;
}

/**
 * Spearman's rank correlation from ranks: Pearson's on the ranks, ties at their mean; 0 where all values of one are alike.
 *
 * 1 for one that always rises with the other, -1 for one that always falls. Blind to an effect that turns back.
 *
 * @param one - ranks, as many as of the other
 * @returns -1 to 1
 * @throws InputError when one has more ranks than the other
 * @source SPEARMAN
 */
export function rankCorrelation(one: readonly number[], other: readonly number[]): number {
  requireNumber(other.length, 'number of ranks', { atLeast: one.length, atMost: one.length });
  const middle = (one.length + 1) / 2;
  let [both, ofOne, ofOther] = [0, 0, 0];
  one.forEach((rank, index) => {
    const [first, second] = [rank - middle, (other[index] ?? middle) - middle];
    both += first * second;
    ofOne += first * first;
    ofOther += second * second;
  });
  return ofOne === 0 || ofOther === 0 ? 0 : both / Math.sqrt(ofOne * ofOther);
}
