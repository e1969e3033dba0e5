import { requireNumber } from '../errors/requireNumber.ts';
import { type CavityProfile, fillShare } from './fillShare.ts';

/** Halvings after which the mark is exact to the last digits of a double. */
const HALVINGS = 52;

/**
 * The mark up to which a share of the cross-section is filled: the inverse of `fillShare`, by halving the interval.
 * @param share of the area, 0 to 1
 * @returns height over the cavity's depth, 0 to 1
 * @throws InputError for a share out of range
 */
export function fillMark(profile: CavityProfile, share: number): number {
  requireNumber(share, 'share', { atLeast: 0, atMost: 1 });
  let low = 0;
  let high = 1;
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (low + high) / 2;
    if (fillShare(profile, middle) < share) low = middle;
    else high = middle;
  }
  return share === 0 ? 0 : high;
}
