import type { ResourceKind } from '../../day/planning/dayResources.ts';
import type { DayBar, DayTimetable } from '../../day/planning/dayTimetable.ts';
import { type DayFrame, dayOf, dayText } from '../../words/momentText.ts';
import type { Timetable, TimetableDay, TimetableRow } from './timetable.ts';

const HOUR = 3600;

/** What is drawn, in this order; cups and circuits limit the day, but nobody looks a cup up in a timetable. */
const GROUPS: readonly (readonly [kind: ResourceKind, name: string])[] = [
  ['person', 'People'],
  ['plate', 'Plates'],
  ['mold', 'Molds'],
  ['oven', 'Ovens'],
  ['color bench', 'Coloring'],
];

interface TimetableWanted extends DayFrame {
  /** Only this day, 0 for the first; all when absent */
  readonly day?: number;
  /** [s] */
  readonly now?: number;
}

/** The bars of a plan, day by day; orders that have nothing in the hours shown are left out. */
export function timetableOf(
  plan: Pick<DayTimetable, 'bars' | 'orders'>,
  wanted: TimetableWanted,
): Timetable {
  const { day, now, system } = wanted;
  const days = daysOf(plan.bars, wanted).filter(
    ({ from }) => day === undefined || dayOf(from) === day,
  );
  const isShown = ({ from, to }: DayBar) => days.some((one) => to > one.from && from < one.to);
  const bars = plan.bars.filter(isShown);
  const names = new Set(bars.map(({ order }) => order));
  const orders = plan.orders.filter(
    ({ order, due }) =>
      names.has(order) || (due !== undefined && days.some((one) => isDueOn(due, one))),
  );
  const places = new Map(orders.map(({ order }, place) => [order, place]));
  return {
    kind: 'timetable',
    title: titleOf(days),
    system,
    days,
    groups: GROUPS.flatMap(([kind, name]) => {
      const rows = rowsOf(
        bars.filter((bar) => bar.kind === kind),
        places,
      );
      return rows.length === 0 ? [] : [{ name, rows }];
    }),
    orders: orders.map(({ order, due, finish, late }) => ({
      name: order,
      ...(due !== undefined && { due }),
      finish,
      late,
    })),
    ...(now !== undefined && { now }),
  };
}

function isDueOn(due: number, { from }: TimetableDay): boolean {
  return dayOf(due) === dayOf(from);
}

function titleOf(days: readonly TimetableDay[]): string {
  const [first, last] = [days[0]?.name, days[days.length - 1]?.name];
  if (first === undefined) return 'Pour day';
  return first === last ? `Pour day ${first}` : `Pour days ${first} to ${last}`;
}

/** From the first to the last full hour in which somebody or a heater is at work; molds that cool overnight do not count. */
function daysOf(bars: readonly DayBar[], frame: DayFrame): readonly TimetableDay[] {
  const spans = new Map<number, { from: number; to: number }>();
  for (const { kind, from, to } of bars) {
    if (kind === 'mold') continue;
    const known = spans.get(dayOf(from));
    spans.set(dayOf(from), {
      from: Math.min(known?.from ?? from, from),
      to: Math.max(known?.to ?? to, to),
    });
  }
  return [...spans]
    .sort(([one], [other]) => one - other)
    .map(([day, { from, to }]) => ({
      name: dayText(frame, day),
      from: Math.floor(from / HOUR) * HOUR,
      // Past midnight would run into the next day's column.
      to: Math.min(Math.ceil(to / HOUR) * HOUR, (day + 1) * 24 * HOUR),
    }));
}

function rowsOf(
  bars: readonly DayBar[],
  places: ReadonlyMap<string, number>,
): readonly TimetableRow[] {
  const rows = new Map<string, TimetableRow['bars'][number][]>();
  for (const { kind, name, from, to, order, what } of bars) {
    const row = rows.get(name) ?? [];
    rows.set(name, row);
    // A pourer is held through a whole round, whose tasks have bars of no one.
    const text = what ?? (kind === 'person' ? 'pour' : '');
    row.push({ from, to, order: places.get(order) ?? 0, text });
  }
  return [...rows].map(([name, inside]) => ({ name: name === '' ? 'Bench' : name, bars: inside }));
}
