import type { DayChoice } from '../../shared/commands/checklistCommands.ts';
import { button, el } from '../page/el.ts';
import type { Store } from '../panel/store.ts';
import type { DayOnShow } from './dayOnShow.ts';
import { chooseForDay, planTheDay } from './openDay.ts';

/** Which orders, from which day on, over how many days. */
export function dayForm(day: DayOnShow, store: Store): HTMLElement {
  const { form, orders } = day;
  const isOff = store.get().busy !== '';
  const names = form.orders.map(({ order }) => order);
  return el(
    'section',
    { 'aria-label': 'What to plan' },
    el(
      'fieldset',
      {},
      el('legend', {}, 'Orders'),
      ...form.orders.map((choice) => orderBox(choice, day, store)),
    ),
    button(
      {
        id: 'allOrders',
        label: orders.length === names.length ? 'Choose none' : 'Choose all',
        isOff,
      },
      () => chooseForDay(store, { orders: orders.length === names.length ? [] : names }),
    ),
    dateField(day, store),
    daysField(day, store),
    button(
      { id: 'planDay', label: 'Plan the days', look: 'main', isOff: isOff || orders.length === 0 },
      () => void planTheDay(store),
    ),
  );
}

function orderBox({ order, due, pattern, quantity }: DayChoice, day: DayOnShow, store: Store) {
  const id = `day-order-${order}`.replace(/\s/g, '-');
  const box = el('input', { id, type: 'checkbox' });
  box.checked = day.orders.includes(order);
  box.disabled = store.get().busy !== '';
  box.addEventListener('change', () => {
    const others = day.orders.filter((one) => one !== order);
    chooseForDay(store, { orders: box.checked ? [...others, order] : others });
  });
  const count = quantity === undefined ? '' : `${quantity} × `;
  const when = due === undefined ? 'no due date' : `due ${due}`;
  const label = el('label', { for: id }, el('strong', {}, order), ` ${count}${pattern}, ${when}`);
  return el('div', { class: 'choice' }, box, label);
}

function dateField({ firstDay }: DayOnShow, store: Store): HTMLElement {
  const { busy, problems } = store.get();
  const input = el('input', { id: 'firstDay', type: 'date', value: firstDay });
  input.disabled = busy !== '';
  if (problems.some(({ field }) => field === 'first day'))
    input.setAttribute('aria-invalid', 'true');
  input.addEventListener('change', () => chooseForDay(store, { firstDay: input.value }));
  return el('div', { class: 'field' }, el('label', { for: 'firstDay' }, 'First day'), input);
}

function daysField({ days }: DayOnShow, store: Store): HTMLElement {
  const select = el(
    'select',
    { id: 'days' },
    ...Array.from({ length: 14 }, (_, index) => {
      const value = String(index + 1);
      return el('option', { value }, value);
    }),
  );
  select.value = days;
  select.disabled = store.get().busy !== '';
  select.addEventListener('change', () => chooseForDay(store, { days: select.value }));
  return el(
    'div',
    { class: 'field' },
    el('label', { for: 'days' }, 'Days, closed ones counted'),
    select,
  );
}
