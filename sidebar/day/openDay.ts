import { type DayPayload, isReplan } from '../../shared/commands/dayCommands.ts';
import { countText } from '../../shared/words/quantityText.ts';
import { lastView } from '../panel/pageState.ts';
import { type Store, shown } from '../panel/store.ts';
import type { DayView } from '../panel/view.ts';
import { done, work } from '../panel/work.ts';

const DAYS = '5';

/** Shows the orders that can be put into a pour day; what was chosen before stays chosen. */
export async function openDay(store: Store): Promise<void> {
  const form = await work(store, 'Reading the orders…', 'startDay', {});
  if (form === undefined) return;
  const day = lastView(store.get(), 'day');
  const open = form.orders.map(({ order }) => order);
  const kept = day?.orders.filter((order) => open.includes(order));
  store.set({
    view: {
      kind: 'day',
      form,
      orders: kept ?? open,
      firstDay: day?.firstDay ?? form.today,
      days: day?.days ?? DAYS,
      answer: day?.answer,
      drawnDay: day?.drawnDay,
      person: day?.person ?? '',
      problems: [],
    },
    notice: undefined,
  });
}

/** Changes what is chosen; a plan of another choice goes. */
export function chooseForDay(
  store: Store,
  change: Partial<Pick<DayView, 'orders' | 'firstDay' | 'days'>>,
): void {
  const day = shown(store, 'day');
  if (day !== undefined) store.set({ view: { ...day, ...change, answer: undefined } });
}

/** Draws another day, or another person's list. */
export function lookAtDay(
  store: Store,
  change: Partial<Pick<DayView, 'drawnDay' | 'person'>>,
): void {
  const day = shown(store, 'day');
  if (day !== undefined) store.set({ view: { ...day, ...change } });
}

function askedOf({ orders, firstDay, days }: DayView): DayPayload {
  return { orders: orders.join(', '), firstDay, days };
}

export async function planTheDay(store: Store): Promise<void> {
  const day = shown(store, 'day');
  if (day === undefined) return;
  const busy = `Planning ${countText(day.orders.length, 'order')}… A full week takes some seconds.`;
  const answer = await work(store, busy, 'planDayFor', askedOf(day));
  if (answer === undefined) return;
  show(
    store,
    { answer, drawnDay: undefined },
    `${countText(answer.plan.orders.length, 'order')} planned.`,
  );
}

/** Plans the rest of the followed days from the ticks of the checklist. */
export async function replanTheDay(store: Store): Promise<void> {
  const answer = await work(store, 'Reading the ticks and planning the rest…', 'replanDayFor', {});
  if (answer === undefined) return;
  show(
    store,
    { answer, drawnDay: Math.floor(answer.now / 86_400) },
    'The rest is planned anew from the ticks.',
  );
}

/** Writes what is on show to the shared checklist: the plan, or the new times of a replan. */
export async function writeTheChecklist(store: Store): Promise<void> {
  const day = shown(store, 'day');
  if (day?.answer === undefined) return;
  const written = isReplan(day.answer)
    ? await work(store, 'Giving the checklist its new times…', 'updateChecklist', {})
    : await work(store, 'Writing the checklist…', 'writeChecklist', askedOf(day));
  if (written === undefined) return;
  const text = `${countText(written.lines, 'line')} on the sheet ${written.sheet}; ticks that were there stay.`;
  show(store, { form: { ...day.form, isFollowed: true } }, text);
}

/** Opens what is on show as a page to print. */
export async function printTheDay(store: Store): Promise<void> {
  const day = shown(store, 'day');
  if (day?.answer === undefined) return;
  const payload = isReplan(day.answer) ? { from: 'ticks' } : askedOf(day);
  const opened = await work(store, 'Opening the page…', 'showDay', payload);
  if (opened !== undefined) show(store, {}, 'The page of the pour day is open.');
}

function show(store: Store, change: Partial<DayView>, text: string): void {
  const day = shown(store, 'day');
  if (day === undefined) return;
  store.set({ view: { ...day, ...change }, notice: done(text) });
}
