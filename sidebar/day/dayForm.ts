import type { DayChoice } from '../../shared/commands/checklistCommands.ts';
import { choiceField } from '../page/choiceField.ts';
import { el } from '../page/el.ts';
import { labeled } from '../page/labeled.ts';
import type { Store } from '../panel/store.ts';
import type { DayView } from '../panel/view.ts';
import { isBusy, workButton } from '../panel/workButton.ts';
import { chooseForDay, planTheDay } from './openDay.ts';

/** Which orders, from which day on, over how many days. */
export function dayForm(day: DayView, store: Store): HTMLElement {
  const { form, orders } = day;
  const names = form.orders.map(({ order }) => order);
  const isAll = orders.length === names.length;
  return el(
    'section',
    { 'aria-label': 'What to plan' },
    el(
      'fieldset',
      {},
      el('legend', {}, 'Orders'),
      ...form.orders.map((choice) => orderBox(choice, day, store)),
    ),
    workButton({ id: 'allOrders', label: isAll ? 'Choose none' : 'Choose all' }, store, () =>
      chooseForDay(store, { orders: isAll ? [] : names }),
    ),
    dateField(day, store),
    daysField(day, store),
    workButton(
      { id: 'planDay', label: 'Plan the days', look: 'main', isOff: orders.length === 0 },
      store,
      planTheDay,
    ),
  );
}

function orderBox({ order, due, pattern, quantity }: DayChoice, day: DayView, store: Store) {
  const id = `day-order-${order}`.replace(/\s/g, '-');
  const box = el('input', { id, type: 'checkbox' });
  box.checked = day.orders.includes(order);
  box.disabled = isBusy(store);
  box.addEventListener('change', () => {
    const others = day.orders.filter((one) => one !== order);
    chooseForDay(store, { orders: box.checked ? [...others, order] : others });
  });
  const count = quantity === undefined ? '' : `${quantity} × `;
  const when = due === undefined ? 'no due date' : `due ${due}`;
  const label = el('label', { for: id }, el('strong', {}, order), ` ${count}${pattern}, ${when}`);
  return el('div', { class: 'choice' }, box, label);
}

function dateField({ firstDay, problems }: DayView, store: Store): HTMLElement {
  const input = el('input', { id: 'firstDay', type: 'date', value: firstDay });
  input.disabled = isBusy(store);
  if (problems.some(({ field }) => field === 'first day'))
    input.setAttribute('aria-invalid', 'true');
  input.addEventListener('change', () => chooseForDay(store, { firstDay: input.value }));
  return labeled('First day', input);
}

function daysField({ days }: DayView, store: Store): HTMLElement {
  return choiceField(
    { id: 'days', label: 'Days, closed ones counted', value: days, isOff: isBusy(store) },
    Array.from({ length: 14 }, (_, index) => [String(index + 1), String(index + 1)]),
    (chosen) => chooseForDay(store, { days: chosen }),
  );
}
