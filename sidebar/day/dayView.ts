import { isReplan } from '../../shared/commands/dayCommands.ts';
import { limitsList, packedList, platesList } from '../../shared/paper/day/packedList.ts';
import { peopleIn, taskTables } from '../../shared/paper/day/taskTables.ts';
import { timetableOf } from '../../shared/pictures/timetable/timetableOf.ts';
import { timetablePicture } from '../../shared/pictures/timetable/timetablePicture.ts';
import { timetableText } from '../../shared/pictures/timetable/timetableText.ts';
import { dayOf } from '../../shared/words/momentText.ts';
import { card } from '../page/card.ts';
import { choiceField } from '../page/choiceField.ts';
import { drawElements } from '../page/drawElements.ts';
import { el } from '../page/el.ts';
import { inWords } from '../page/folded.ts';
import type { Store } from '../panel/store.ts';
import type { DayView } from '../panel/view.ts';
import { isBusy, workButton } from '../panel/workButton.ts';
import { showPlan } from '../plan/readSelected.ts';
import { openTimers } from '../timers/openTimers.ts';
import { dayForm } from './dayForm.ts';
import { fitPart } from './fitPart.ts';
import { lookAtDay, openDay, printTheDay, replanTheDay, writeTheChecklist } from './openDay.ts';

/** Drawn at the least width that its words are made for; the panel scales it. */
const WIDTH = 300;

/** Several orders on one timetable: what to choose, whether it fits, who does what, and the checklist that comes of it. */
export function dayView(view: DayView, store: Store): HTMLElement {
  const { form, answer } = view;
  return el(
    'div',
    {},
    el('h1', { tabindex: '-1' }, 'Pour day'),
    el(
      'p',
      { class: 'warning' },
      'No heat without somebody beside it: if a person leaves, plates and oven go off, whatever the timetable says.',
    ),
    form.orders.length === 0 ? emptyText() : dayForm(view, store),
    ...(form.isFollowed
      ? [workButton({ id: 'replan', label: 'Replan from the ticks' }, store, replanTheDay)]
      : []),
    ...(isBusy(store) ? [el('progress', { 'aria-label': 'Working' })] : []),
    ...(answer === undefined ? [] : resultOf(view, answer, store)),
    workButton({ id: 'readDay', label: 'Read the orders again' }, store, openDay),
    workButton({ id: 'openTimers', label: 'Timers' }, store, () => openTimers(store)),
    workButton({ id: 'plan', label: 'Back to the plan' }, store, showPlan),
  );
}

function emptyText(): HTMLElement {
  return el(
    'p',
    { class: 'empty' },
    'No order is open. Orders with the status accepted or planned show here.',
  );
}

type Answer = NonNullable<DayView['answer']>;

function resultOf(view: DayView, answer: Answer, store: Store): readonly HTMLElement[] {
  const isAnew = isReplan(answer);
  const fit = card(isAnew ? 'After the ticks' : 'Does it fit', ...fitPart(answer));
  if (answer.plan.orders.length === 0) return [fit];
  const label = isAnew ? 'Give the checklist these times' : 'Write the checklist';
  return [
    fit,
    timetableCard(view, answer, store),
    card('Packed in this sequence', drawElements(packedList(answer))),
    card('On the plates', drawElements(platesList(answer))),
    card('What limits it', drawElements(limitsList(answer))),
    personCard(view, answer, store),
    workButton({ id: 'writeChecklist', label, look: 'main' }, store, writeTheChecklist),
    workButton({ id: 'printDay', label: 'Open to print' }, store, printTheDay),
  ];
}

function timetableCard({ drawnDay }: DayView, answer: Answer, store: Store): HTMLElement {
  const { firstDay, system } = answer;
  const frame = { firstDay, system };
  const now = isReplan(answer) ? { now: answer.now } : {};
  const { days } = timetableOf(answer.plan, frame);
  // A whole week is for the page to print: here one day is as much as can be read.
  const shown = drawnDay ?? dayOf(days[0]?.from ?? 0);
  const picture = timetableOf(answer.plan, { ...frame, ...now, day: shown });
  return card(
    'Timetable',
    choiceField(
      { id: 'drawnDay', label: 'Day', value: String(shown) },
      days.map(({ name, from }) => [String(dayOf(from)), name]),
      (value) => lookAtDay(store, { drawnDay: Number(value) }),
    ),
    el('figure', {}, drawElements(timetablePicture(picture, WIDTH))),
    inWords('the timetable', timetableText(picture)),
  );
}

function personCard({ person }: DayView, answer: Answer, store: Store): HTMLElement {
  const people = peopleIn(answer);
  const shown = people.includes(person) ? person : (people[0] ?? '');
  return card(
    'Who does what',
    choiceField(
      { id: 'person', label: 'Person', value: shown },
      people.map((name) => [name, name]),
      (value) => lookAtDay(store, { person: value }),
    ),
    ...taskTables(answer, shown).map((table) => drawElements(table)),
  );
}
