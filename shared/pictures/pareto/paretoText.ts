import type { DefectPareto } from '../../outcomes/quality/defectPareto.ts';
import { countText, listText, shareText } from '../../words/quantityText.ts';

/** The Pareto picture in words, from the same numbers. */
export function paretoText({ title, bars }: DefectPareto): string {
  const all = bars.reduce((sum, { count }) => sum + count, 0);
  const each = bars.map(({ name, count, share }) => `${name} ${count} (${sayPercent(share)})`);
  const [first, second] = bars;
  const sum =
    first === undefined || second === undefined
      ? ''
      : ` ${first.name} and ${second.name} together: ${sayPercent(second.cumulated)}.`;
  return `${title}: ${countText(all, 'defect')} counted. ${listText(each)}.${sum}`;
}

function sayPercent(share: number): string {
  return shareText(Math.round(share * 100) / 100);
}
