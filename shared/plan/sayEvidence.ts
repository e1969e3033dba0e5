import { sayCount, sayShare } from '../words/say.ts';
import type { PiecesPlan } from './plan.ts';

/** What the number of pieces rests on: the record of its mold and pattern, and what the shop expects without it. */
export function sayEvidence({ evidence, prior, expectedYield }: PiecesPlan): string {
  const { good, poured } = evidence;
  if (poured === 0)
    return `No round of this mold and pattern is logged yet: ${sayShare(expectedYield)} good is expected ${sayPrior(prior)}.`;
  return `${good} of ${sayCount(poured, 'logged piece')} came out good. ${sayShare(expectedYield)} is expected: these, and ${sayShare(prior.mean)} ${sayPrior(prior)}, which counts as ${sayWeight(prior.weight)}.`;
}

/** Where the yield expected without a record of its own comes from. */
export function sayPrior({ from, groups }: PiecesPlan['prior']): string {
  return from === 'record'
    ? `from the shop’s record of ${sayCount(groups, 'mold and pattern', 'molds and patterns')}`
    : 'from the shop’s assumption';
}

function sayWeight(weight: number): string {
  const whole = Math.round(weight);
  return whole === 0 ? 'less than a piece' : sayCount(whole, 'piece');
}
