import { bottleneckText, weekFitText } from '../../day/checklist/weekFitText.ts';
import type { WeekCapacity } from '../../day/shop/weekCapacity.ts';
import type { UnitSystem } from '../../units/measures.ts';
import { dayText } from '../../words/momentText.ts';
import {
  addChart,
  addHeading,
  addOverviewTable,
  addWide,
  type OverviewDraft,
} from './addOverviewTable.ts';

const HOUR = 3600;

/** Whether the open orders fit into the week ahead, who is there and how much of that is taken, day by day. */
export function addCapacity(
  draft: OverviewDraft,
  week: WeekCapacity,
  { day: firstDay, system }: { readonly day: string; readonly system: UnitSystem },
): void {
  addHeading(draft, 'The week ahead');
  if (week.kind === 'free') {
    addWide(draft, 'No order is waiting to be poured.', 'text');
    return;
  }
  if (week.kind === 'refused') {
    addWide(draft, `The week cannot be planned: ${week.because}.`, 'text');
    return;
  }
  const { plan, days, leftOut, assumptions } = week;
  addWide(draft, weekFitText(plan, { firstDay, system }), 'text');
  for (const { order, because } of [...plan.unplanned, ...leftOut])
    addWide(draft, `${order}: ${because}.`, 'text');
  if (plan.orders.length > 0) addWide(draft, bottleneckText(plan), 'text');
  for (const text of assumptions) addWide(draft, text, 'note');
  const columns = addOverviewTable(
    draft,
    [
      { heading: 'Day', style: 'text' },
      { heading: 'Hours there', style: 'count' },
      { heading: 'Hours planned', style: 'count' },
      { heading: 'Share planned', style: 'share' },
      { heading: 'Rounds', style: 'count' },
      { heading: 'Packed', style: 'text' },
    ],
    days.map(({ there, work, rounds, packed }, place) => [
      ...[dayText({ firstDay }, place), there / HOUR, work / HOUR],
      ...[there > 0 ? work / there : undefined, rounds, packed.join(', ')],
    ]),
  );
  addChart(draft, 'Hours of the week ahead', columns.slice(0, 3));
}
