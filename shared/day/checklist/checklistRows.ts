import { dayAfter } from '../../book/reading/daysBetween.ts';
import { type PausePoint, pausePoints } from '../../plan/pausePoints.ts';
import { type DayFrame, dayOf } from '../../words/momentText.ts';
import type { DayEntry, DayTimetable } from '../planning/dayTimetable.ts';
import type { ChecklistRow } from './checklistRow.ts';
import { latestMoment } from './latestMoment.ts';
import { type RunFacts, taskText } from './taskText.ts';

/** In front of the pauses, so that they are told from tasks at arm's length. */
const STOP = 'STOP';

/**
 * The lines of a plan's checklist in the order in which they are due, each pause right before the task that waits for it: before heat
 * once a day, before the first pour and between layers once a round, before packing once an order.
 * @param facts by order; a task of an order without any says only what is done
 * @param frame the days that the plan counts from
 */
export function checklistRows(
  { entries, orders }: Pick<DayTimetable, 'entries' | 'orders'>,
  facts: ReadonlyMap<string, RunFacts>,
  { firstDay }: Pick<DayFrame, 'firstDay'>,
): readonly ChecklistRow[] {
  const outcomes = new Map(orders.map((outcome) => [outcome.order, outcome]));
  const heated = new Set<number>();
  return entries.flatMap((entry) => {
    const known = facts.get(entry.order);
    const pause = known && pauseBefore(entry, known, heated);
    const latest = latestMoment(entry, entries, known, outcomes.get(entry.order));
    const task: ChecklistRow = {
      id: entry.id,
      order: entry.order,
      from: entry.from,
      to: entry.to,
      ...(latest !== undefined && { latest }),
      person: entry.person ?? '',
      text: taskText(entry, known),
    };
    return pause ? [pauseRow(entry, known, { name: pause, firstDay }), task] : [task];
  });
}

function pauseBefore(
  { what, layer, from }: DayEntry,
  { layers }: RunFacts,
  heated: Set<number>,
): PausePoint['name'] | undefined {
  if (what === 'pack') return 'Before packing';
  if (what === 'set on the plate' && !heated.has(dayOf(from))) {
    heated.add(dayOf(from));
    return 'Before heat';
  }
  if (what !== 'pour') return undefined;
  const place = layers.findIndex((one) => one.layer === layer);
  if (place === 0) return 'Before the first pour';
  return place === 1 ? 'Between layers' : undefined;
}

function pauseRow(
  { order, round, from }: DayEntry,
  facts: RunFacts,
  { name, firstDay }: { readonly name: PausePoint['name']; readonly firstDay: string },
): ChecklistRow {
  const items = pausePoints(facts).find((pause) => pause.name === name)?.items ?? [];
  // Before heat is everybody's, whoever's order comes first.
  const isShops = name === 'Before heat';
  const head = isShops ? '' : round === undefined ? `${order} ` : `${order} round ${round} `;
  return {
    id: isShops ? `${dayAfter(firstDay, dayOf(from))} ${name}` : `${head}${name}`,
    order: isShops ? '' : order,
    from,
    person: '',
    text: [`${STOP} ${head}${name.toLowerCase()}:`, ...items.map((item) => `• ${item}`)].join('\n'),
  };
}
