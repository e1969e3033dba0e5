import { isReplan } from '../../shared/commands/dayCommands.ts';
import { drawPicture } from '../../shared/pictures/drawPicture.ts';
import { pictureText } from '../../shared/pictures/pictureText.ts';
import { timetableOf } from '../../shared/pictures/timetable/timetableOf.ts';
import { dayOf } from '../../shared/words/momentText.ts';
import { drawElements } from '../page/drawElements.ts';
import { button, el } from '../page/el.ts';
import type { Store } from '../panel/store.ts';
import { showPlan } from '../plan/readSelected.ts';
import { openTimers } from '../timers/openTimers.ts';
import { dayForm } from './dayForm.ts';
import type { DayOnShow } from './dayOnShow.ts';
import {
  fitPart,
  frameOf,
  limitsPart,
  peopleIn,
  personPart,
  platesPart,
  sequencePart,
} from './fitPart.ts';
import { lookAtDay, openDay, printTheDay, replanTheDay, writeTheChecklist } from './openDay.ts';

/** Drawn at the least width that its words are made for; the panel scales it. */
const WIDTH = 300;

/** Several orders on one timetable: what to choose, whether it fits, who does what, and the checklist that comes of it. */
export function dayView(store: Store): HTMLElement {
  const { day, busy } = store.get();
  const isOff = busy !== '';
  return el(
    'div',
    {},
    el('h1', { tabindex: '-1' }, 'Pour day'),
    ...(day === undefined ? [] : bodyOf(day, store)),
    button({ id: 'readDay', label: 'Read the orders again', isOff }, () => void openDay(store)),
    button({ id: 'openTimers', label: 'Timers', isOff }, () => void openTimers(store)),
    button({ id: 'plan', label: 'Back to the plan', isOff }, () => showPlan(store)),
  );
}

function bodyOf(day: DayOnShow, store: Store): readonly HTMLElement[] {
  const { form, answer } = day;
  const isOff = store.get().busy !== '';
  const progress = el('progress', { 'aria-label': 'Working' });
  return [
    el(
      'p',
      { class: 'warning' },
      'No heat without somebody beside it: if a person leaves, plates and oven go off, whatever the timetable says.',
    ),
    ...(form.orders.length === 0
      ? [
          el(
            'p',
            { class: 'empty' },
            'No order is open. Orders with the status accepted or planned show here.',
          ),
        ]
      : [dayForm(day, store)]),
    ...(form.isFollowed
      ? [
          button({ id: 'replan', label: 'Replan from the ticks', isOff }, () => {
            void replanTheDay(store);
          }),
        ]
      : []),
    ...(isOff ? [progress] : []),
    ...(answer === undefined ? [] : resultOf(day, answer, store)),
  ];
}

function resultOf(
  day: DayOnShow,
  answer: NonNullable<DayOnShow['answer']>,
  store: Store,
): readonly HTMLElement[] {
  const isOff = store.get().busy !== '';
  const isEmpty = answer.plan.orders.length === 0;
  const writes = isReplan(answer) ? 'Give the checklist these times' : 'Write the checklist';
  const fit = card(isReplan(answer) ? 'After the ticks' : 'Does it fit', fitPart(answer));
  if (isEmpty) return [fit];
  return [
    fit,
    timetableCard(day, answer, store),
    card('Packed in this sequence', [sequencePart(answer)]),
    card('On the plates', [platesPart(answer)]),
    card('What limits it', [limitsPart(answer)]),
    personCard(day, answer, store),
    button({ id: 'writeChecklist', label: writes, look: 'main', isOff }, () => {
      void writeTheChecklist(store);
    }),
    button({ id: 'printDay', label: 'Open to print', isOff }, () => void printTheDay(store)),
  ];
}

function card(heading: string, parts: readonly HTMLElement[]): HTMLElement {
  return el('section', { class: 'card' }, el('h2', {}, heading), ...parts);
}

function timetableCard(
  { drawnDay }: DayOnShow,
  answer: NonNullable<DayOnShow['answer']>,
  store: Store,
): HTMLElement {
  const frame = frameOf(answer);
  const now = isReplan(answer) ? { now: answer.now } : {};
  const { days } = timetableOf(answer.plan, frame);
  // A whole week is for the page to print: here one day is as much as can be read.
  const shown = drawnDay ?? dayOf(days[0]?.from ?? 0);
  const picture = timetableOf(answer.plan, { ...frame, ...now, day: shown });
  return card('Timetable', [
    choice(
      { id: 'drawnDay', label: 'Day', value: String(shown) },
      days.map(({ name, from }) => [String(dayOf(from)), name]),
      (value) => lookAtDay(store, { drawnDay: Number(value) }),
    ),
    el('figure', {}, drawElements(drawPicture(picture, WIDTH))),
    el(
      'details',
      { class: 'more' },
      el('summary', {}, 'In words: the timetable'),
      el('p', { class: 'small' }, pictureText(picture)),
    ),
  ]);
}

function personCard(
  { person }: DayOnShow,
  answer: NonNullable<DayOnShow['answer']>,
  store: Store,
): HTMLElement {
  const people = peopleIn(answer);
  const shown = people.includes(person) ? person : (people[0] ?? '');
  return card('Who does what', [
    choice(
      { id: 'person', label: 'Person', value: shown },
      people.map((name) => [name, name]),
      (value) => lookAtDay(store, { person: value }),
    ),
    ...personPart(answer, shown),
  ]);
}

function choice(
  { id, label, value }: { readonly id: string; readonly label: string; readonly value: string },
  options: readonly (readonly [value: string, text: string])[],
  choose: (value: string) => void,
): HTMLElement {
  const select = el(
    'select',
    { id },
    ...options.map(([one, text]) => el('option', { value: one }, text)),
  );
  select.value = value;
  select.addEventListener('change', () => choose(select.value));
  return el('div', { class: 'field' }, el('label', { for: id }, label), select);
}
