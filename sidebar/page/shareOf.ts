import { shareText } from '../../shared/words/quantityText.ts';

/** A share in per cent; figure and sign stay on one line. */
export function shareOf(share: number): string {
  return shareText(share).replace(' ', '\u00a0');
}
