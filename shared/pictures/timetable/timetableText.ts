import { dayClockText, dayOf } from '../../words/momentText.ts';
import { listText } from '../../words/quantityText.ts';
import type { Timetable, TimetableDay, TimetableOrder, TimetableRow } from './timetable.ts';

/** The timetable in words: who and what is taken from when to when for which orders, and what becomes of the due dates. */
export function timetableText(timetable: Timetable): string {
  const { days, groups, orders } = timetable;
  if (orders.length === 0) return 'No order is planned.';
  const rows = groups.flatMap(({ rows: inside }) => inside);
  return [
    ...days.map((day) => busyText(day, rows, timetable)),
    ...orders.map((order) => orderText(order, timetable)),
  ].join(' ');
}

function busyText(day: TimetableDay, rows: readonly TimetableRow[], timetable: Timetable): string {
  const busy = rows.flatMap(({ name, bars }) => {
    const today = bars.filter(({ from, to }) => to > day.from && from < day.to);
    if (today.length === 0) return [];
    const from = Math.max(day.from, Math.min(...today.map((bar) => bar.from)));
    const to = Math.min(day.to, Math.max(...today.map((bar) => bar.to)));
    const names = [...new Set(today.map(({ order }) => timetable.orders[order]?.name ?? ''))];
    return [
      `${name} ${dayClockText(from, timetable.system)} to ${dayClockText(to, timetable.system)}, ${listText(names)}`,
    ];
  });
  return `${day.name}: ${busy.length === 0 ? 'nothing' : busy.join('; ')}.`;
}

function orderText(
  { name, due, finish, late }: TimetableOrder,
  timetable: Pick<Timetable, 'days' | 'system'>,
): string {
  const packed = `Order ${name} packed ${moment(finish, timetable)}`;
  if (due === undefined) return `${packed}.`;
  return late > 0
    ? `${packed}, late for ${moment(due, timetable)}.`
    : `${packed}, due ${moment(due, timetable)}.`;
}

function moment(seconds: number, timetable: Pick<Timetable, 'days' | 'system'>): string {
  const day = timetable.days.find(({ from }) => dayOf(from) === dayOf(seconds));
  return day === undefined
    ? `on another day at ${dayClockText(seconds, timetable.system)}`
    : `${day.name} ${dayClockText(seconds, timetable.system)}`;
}
