import { percentText } from '../../words/percentText.ts';
import { countText } from '../../words/quantityText.ts';
import type { QualitySummary } from './qualitySummary.ts';
import type { WeekYield } from './weekYields.ts';
import type { WorstGroup } from './worstGroups.ts';

/** This week's yield as a figure, and what it rests on. */
export function weekTexts({ weeks }: Pick<QualitySummary, 'weeks'>): {
  readonly key: string;
  readonly text: string;
} {
  const week = weeks[weeks.length - 1];
  if (week !== undefined && week.poured > 0)
    return { key: `${percentText(week.good / week.poured)} good`, text: `${weekText(week)}.` };
  const last = [...weeks].reverse().find(({ poured }) => poured > 0);
  if (last === undefined)
    return { key: 'Nothing logged', text: 'No round of the last 8 weeks is in Pour log.' };
  return {
    key: 'Nothing logged this week',
    text: `Week of ${last.from}: ${percentText(last.good / last.poured)} good, ${weekText(last)}.`,
  };
}

function weekText({ rounds, poured, good, interval }: WeekYield): string {
  const sure =
    interval === undefined
      ? ''
      : `; the yield lies between ${percentText(interval.low)} and ${percentText(interval.high)}`;
  return `${good} of ${countText(poured, 'piece')} in ${countText(rounds, 'round')}${sure}`;
}

/** What the weeks show together. */
export function trendText({ trend, weeks }: Pick<QualitySummary, 'trend' | 'weeks'>): string {
  const poured = weeks.filter((week) => week.poured > 0).length;
  switch (trend) {
    case 'better':
      return `Over ${countText(poured, 'week')} the yield rises by more than luck explains.`;
    case 'worse':
      return `Over ${countText(poured, 'week')} the yield falls by more than luck explains.`;
    case 'no clear change':
      return `Over ${countText(poured, 'week')} the yield neither rises nor falls by more than luck explains.`;
    default:
      return 'A trend needs three weeks with rounds, with good and bad pieces among them.';
  }
}

/** One of the worst, with its evidence. */
export function worstTexts({ kind, name, rounds, poured, good, others, low, high }: WorstGroup): {
  readonly name: string;
  readonly evidence: string;
} {
  const what = { mold: 'Mold', pattern: 'Pattern', layers: 'Patterns of' }[kind];
  return {
    name: `${what} ${name}`,
    evidence: `${good} of ${countText(poured, 'piece')} good in ${countText(rounds, 'round')}, ${percentText(good / poured)} (${percentText(low)} to ${percentText(high)}); all others ${percentText(others)}`,
  };
}

export const NO_WORST =
  'No mold, pattern or layer count of the last 8 weeks comes out worse than the others for sure.';

/** What was asked for, for headings. */
export function askedText({ asked, rounds }: Pick<QualitySummary, 'asked' | 'rounds'>): string {
  const names = [asked.mold, asked.pattern].filter((one) => one !== undefined && one !== '');
  return `${names.length === 0 ? 'All molds and patterns' : names.join(', ')}: ${countText(rounds, 'round')} logged`;
}
