import { sayCount, sayShare } from '../../words/say.ts';
import type { QualityOnShow } from './qualityOnShow.ts';
import type { WeekYield } from './weekYields.ts';
import type { WorstGroup } from './worstGroups.ts';

/** Whole per cent: more digits would claim more than a week's pieces know. */
export function sayPercent(share: number): string {
  return sayShare(Math.round(share * 100) / 100);
}

/** This week's yield as a figure, and what it rests on. */
export function weekWords({ weeks }: Pick<QualityOnShow, 'weeks'>): {
  readonly key: string;
  readonly text: string;
} {
  const week = weeks[weeks.length - 1];
  if (week !== undefined && week.poured > 0)
    return { key: `${sayPercent(week.good / week.poured)} good`, text: `${weekText(week)}.` };
  const last = [...weeks].reverse().find(({ poured }) => poured > 0);
  if (last === undefined)
    return { key: 'Nothing logged', text: 'No round of the last 8 weeks is in Pour log.' };
  return {
    key: 'Nothing logged this week',
    text: `Week of ${last.from}: ${sayPercent(last.good / last.poured)} good, ${weekText(last)}.`,
  };
}

function weekText({ rounds, poured, good, interval }: WeekYield): string {
  const sure =
    interval === undefined
      ? ''
      : `; the yield lies between ${sayPercent(interval.low)} and ${sayPercent(interval.high)}`;
  return `${good} of ${sayCount(poured, 'piece')} in ${sayCount(rounds, 'round')}${sure}`;
}

/** What the weeks show together. */
export function trendWords({ trend, weeks }: Pick<QualityOnShow, 'trend' | 'weeks'>): string {
  const poured = weeks.filter((week) => week.poured > 0).length;
  switch (trend) {
    case 'better':
      return `Over ${sayCount(poured, 'week')} the yield rises by more than luck explains.`;
    case 'worse':
      return `Over ${sayCount(poured, 'week')} the yield falls by more than luck explains.`;
    case 'no clear change':
      return `Over ${sayCount(poured, 'week')} the yield neither rises nor falls by more than luck explains.`;
    default:
      return 'A trend needs three weeks with rounds, with good and bad pieces among them.';
  }
}

/** One of the worst, with its evidence. */
export function worstWords({ kind, name, rounds, poured, good, others, low, high }: WorstGroup): {
  readonly name: string;
  readonly evidence: string;
} {
  const what = { mold: 'Mold', pattern: 'Pattern', layers: 'Patterns of' }[kind];
  return {
    name: `${what} ${name}`,
    evidence: `${good} of ${sayCount(poured, 'piece')} good in ${sayCount(rounds, 'round')}, ${sayPercent(good / poured)} (${sayPercent(low)} to ${sayPercent(high)}); all others ${sayPercent(others)}`,
  };
}

export const NO_WORST =
  'No mold, pattern or layer count of the last 8 weeks comes out worse than the others for sure.';

/** What was asked for, for headings. */
export function askedWords({ asked, rounds }: Pick<QualityOnShow, 'asked' | 'rounds'>): string {
  const names = [asked.mold, asked.pattern].filter((one) => one !== undefined && one !== '');
  return `${names.length === 0 ? 'All molds and patterns' : names.join(', ')}: ${sayCount(rounds, 'round')} logged`;
}
