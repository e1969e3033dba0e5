import { taskText } from '../../day/checklist/taskText.ts';
import type { DayEntry } from '../../day/planning/dayTimetable.ts';
import { element, headCell } from '../../elements/element.ts';
import type { PlainElement } from '../../elements/plainElement.ts';
import { dayClockText, dayOf, dayText } from '../../words/momentText.ts';
import type { DayShown } from './dayTypes.ts';

/** Everybody who has something to do, in the order of their names. */
export function peopleIn({ plan }: DayShown): readonly string[] {
  return [...new Set(plan.entries.flatMap(({ person }) => person ?? []))].sort();
}

/** One person's tasks, a table for each day. */
export function taskTables(day: DayShown, person: string): readonly PlainElement[] {
  const { plan, runs, system } = day;
  const facts = new Map(runs.map((run) => [run.order, run]));
  const own = plan.entries.filter((entry) => entry.person === person);
  const days = [...new Set(own.map(({ from }) => dayOf(from)))];
  const line = (entry: DayEntry) =>
    element('tr', '', [
      headCell('row', dayClockText(entry.from, system)),
      element('td', '', [taskText(entry, facts.get(entry.order))]),
    ]);
  return days.map((one) =>
    element('table', 'tasks', [
      element('caption', '', [`${person}, ${dayText(day, one)}`]),
      element('tbody', '', own.filter(({ from }) => dayOf(from) === one).map(line)),
    ]),
  );
}
