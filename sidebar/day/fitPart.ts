import { type DayAnswer, isReplan, type ReplanAnswer } from '../../shared/commands/dayCommands.ts';
import { replanTexts } from '../../shared/day/checklist/replanTexts.ts';
import { savingText } from '../../shared/day/checklist/savingText.ts';
import { taskText } from '../../shared/day/checklist/taskText.ts';
import {
  bottleneckText,
  boundTexts,
  oneMoreText,
  orderOutcomeText,
  plateSequences,
  weekFitText,
} from '../../shared/day/checklist/weekFitText.ts';
import type { DayEntry } from '../../shared/day/planning/dayTimetable.ts';
import { type DayFrame, dayClockText, dayOf, dayText } from '../../shared/words/momentText.ts';
import { countText } from '../../shared/words/quantityText.ts';
import { sentence } from '../../shared/words/sentence.ts';
import { el } from '../page/el.ts';
import { list } from '../page/list.ts';

type Day = DayAnswer | ReplanAnswer;

export function frameOf({ firstDay, system }: Day): DayFrame {
  return { firstDay, system };
}

/** Whether it fits, what is left out and why, and what saves an order that is late. */
export function fitPart(day: Day): readonly HTMLElement[] {
  const { plan, leftOut, changes } = day;
  const out = [...plan.unplanned, ...leftOut].map(
    ({ order, because }) => `Order ${order} is left out: ${sentence(because)}`,
  );
  const ticked = isReplan(day) ? [...replanTexts(day.plan), ...tickWords(day)] : [];
  return [
    el('p', { class: 'key' }, weekFitText(plan, frameOf(day))),
    ...(ticked.length === 0 ? [] : [list(ticked)]),
    ...(out.length === 0 ? [] : [list(out)]),
    ...(changes.length === 0 ? [] : [list(changes.map(savingText))]),
  ];
}

function tickWords({ untimed, ahead }: ReplanAnswer): readonly string[] {
  return [
    ...(untimed.length === 0
      ? []
      : [`${countText(untimed.length, 'tick')} without a time, taken as done when planned.`]),
    ...(ahead.length === 0
      ? []
      : [`${countText(ahead.length, 'tick')} with a time still to come, taken as done now.`]),
  ];
}

/** The orders as they are packed. */
export function sequencePart(day: Day): HTMLElement {
  const orders = day.plan.orders.slice().sort((one, other) => one.finish - other.finish);
  return el(
    'ol',
    { class: 'sequence' },
    ...orders.map((order) =>
      el(
        'li',
        {},
        el('strong', {}, `Order ${order.order}: `),
        `${orderOutcomeText(order, frameOf(day))}.`,
      ),
    ),
  );
}

/** What stands on which plate, one after the other. */
export function platesPart({ plan }: Day): HTMLElement {
  const rows = plateSequences(plan).flatMap(([plate, orders]) => [
    el('dt', {}, plate),
    el('dd', {}, orders),
  ]);
  return el('dl', { class: 'facts' }, ...rows);
}

/** How good the plan is, what is short, and what more of it would be worth. */
export function limitsPart(day: Day): HTMLElement {
  const { plan, assumptions } = day;
  const saves = isReplan(day) ? [] : day.saves.map(oneMoreText);
  return list([...boundTexts(plan, frameOf(day)), bottleneckText(plan), ...saves, ...assumptions]);
}

/** Everybody who has something to do, in the order of their names. */
export function peopleIn({ plan }: Day): readonly string[] {
  return [...new Set(plan.entries.flatMap(({ person }) => person ?? []))].sort();
}

/** One person's tasks, day by day. */
export function personPart(day: Day, person: string): readonly HTMLElement[] {
  const { plan, runs, system } = day;
  const facts = new Map(runs.map((run) => [run.order, run]));
  const own = plan.entries.filter((entry) => entry.person === person);
  const days = [...new Set(own.map(({ from }) => dayOf(from)))];
  const line = (entry: DayEntry) =>
    el(
      'tr',
      {},
      el('th', { scope: 'row' }, dayClockText(entry.from, system)),
      el('td', {}, taskText(entry, facts.get(entry.order))),
    );
  return days.map((one) =>
    el(
      'table',
      { class: 'tasks' },
      el('caption', {}, `${person}, ${dayText(frameOf(day), one)}`),
      el('tbody', {}, ...own.filter(({ from }) => dayOf(from) === one).map(line)),
    ),
  );
}
