import { shareText } from './quantityText.ts';

/** Whole per cent: more digits would claim more than a week's pieces know. */
export function percentText(share: number): string {
  return shareText(Math.round(share * 100) / 100);
}
