import { requireNumber } from '../errors/requireNumber.ts';

/**
 * Value that a share of the answers lies below; answers may be open-ended (+infinity: any time, never).
 *
 * The i-th of n sorted answers stands for the share (i - 1/2) / n, straight lines between them, the first and last beyond.
 * Infinity where either neighbor is.
 *
 * @param answers - any order, at least one, none NaN
 * @param share - 0 to 1
 * @throws InputError on a share out of range, or no answer
 * @source HYNDMANFAN, definition 5
 */
export function quantile(answers: readonly number[], share: number): number {
  requireNumber(share, 'share', { atLeast: 0, atMost: 1 });
  requireNumber(answers.length, 'number of answers', { atLeast: 1 });
  const sorted = [...answers].sort((one, other) => (one < other ? -1 : one > other ? 1 : 0));
  const place = Math.max(0, Math.min(sorted.length - 1, share * sorted.length - 0.5));
  const below = sorted[Math.floor(place)] ?? Number.NaN;
  const above = sorted[Math.ceil(place)] ?? Number.NaN;
  return below === above ? below : below + (place - Math.floor(place)) * (above - below);
}
