import { countText, shareText } from '../words/quantityText.ts';
import type { PiecesPlan } from './planTypes.ts';

/** What the number of pieces rests on: the record of its mold and pattern, and what the shop expects without it. */
export function piecesEvidenceText({ evidence, prior, expectedYield }: PiecesPlan): string {
  const { good, poured } = evidence;
  if (poured === 0)
    return `No round of this mold and pattern is logged yet: ${shareText(expectedYield)} good is expected ${priorText(prior)}.`;
  return `${good} of ${countText(poured, 'logged piece')} came out good. ${shareText(expectedYield)} is expected: these, and ${shareText(prior.mean)} ${priorText(prior)}, which counts as ${sayWeight(prior.weight)}.`;
}

/** Where the yield expected without a record of its own comes from. */
export function priorText({ from, groups }: PiecesPlan['prior']): string {
  return from === 'record'
    ? `from the shop’s record of ${countText(groups, 'mold and pattern', 'molds and patterns')}`
    : 'from the shop’s assumption';
}

function sayWeight(weight: number): string {
  const whole = Math.round(weight);
  return whole === 0 ? 'less than a piece' : countText(whole, 'piece');
}
