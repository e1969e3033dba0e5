import type { DefectPareto } from '../../outcomes/quality/defectPareto.ts';
import { sayCount, sayList, sayShare } from '../../words/say.ts';

/** The Pareto picture in words, from the same numbers. */
export function paretoWords({ title, bars }: DefectPareto): string {
  const all = bars.reduce((sum, { count }) => sum + count, 0);
  const each = bars.map(({ name, count, share }) => `${name} ${count} (${sayPercent(share)})`);
  const [first, second] = bars;
  const sum =
    first === undefined || second === undefined
      ? ''
      : ` ${first.name} and ${second.name} together: ${sayPercent(second.cumulated)}.`;
  return `${title}: ${sayCount(all, 'defect')} counted. ${sayList(each)}.${sum}`;
}

function sayPercent(share: number): string {
  return sayShare(Math.round(share * 100) / 100);
}
