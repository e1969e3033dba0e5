import type { DefectPareto } from '../../outcomes/quality/defectPareto.ts';
import { percentText } from '../../words/percentText.ts';
import { countText, listText } from '../../words/quantityText.ts';

/** The Pareto picture in words, from the same numbers. */
export function paretoText({ title, bars }: DefectPareto): string {
  const all = bars.reduce((sum, { count }) => sum + count, 0);
  const each = bars.map(({ name, count, share }) => `${name} ${count} (${percentText(share)})`);
  const [first, second] = bars;
  const sum =
    first === undefined || second === undefined
      ? ''
      : ` ${first.name} and ${second.name} together: ${percentText(second.cumulated)}.`;
  return `${title}: ${countText(all, 'defect')} counted. ${listText(each)}.${sum}`;
}
