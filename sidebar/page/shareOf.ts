import { sayShare } from '../../shared/words/say.ts';

/** A share in per cent; figure and sign stay on one line. */
export function shareOf(share: number): string {
  return sayShare(share).replace(' ', '\u00a0');
}
