import { shareText } from './quantityText.ts';

/** Whole per cent: more digits would claim more than a week's pieces know. */
export function percentText(share: number): string {
  return shareText(Math.round(share * 100) / 100);
}

/** A share as per cent whose figure and sign stay on one line. */
export function unbrokenShareText(share: number): string {
  return shareText(share).replace(' ', '\u00a0');
}
