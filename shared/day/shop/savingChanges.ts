import { dayAfter } from '../../book/reading/daysBetween.ts';
import { withOneMore } from '../planning/oneMore.ts';
import type { DayPlan } from '../planning/planDay.ts';
import type { DayOrder, ShopDay } from '../planning/shopDay.ts';

const DAY = 86_400;
/** Everybody longer by so much, the least first [s]. */
const LONGER = [1800, 3600, 7200] as const;
/** An order put first weighs as much as this many others. */
const FIRST = 1000;
/** Orders that are tried first one by one, the latest of them */
const MOST_FIRST = 3;

/** A change that has an order packed in time. */
type Change =
  /** It goes before the others; orders that are later by that, where no other change saves it */
  | { readonly kind: 'first'; readonly later: readonly string[] }
  /** Everybody works longer on every day [s] */
  | { readonly kind: 'longer'; readonly by: number }
  | {
      readonly kind: 'one more';
      readonly of: 'mold' | 'plate' | 'person';
      readonly name: string;
      /** Of a mold as many copies as a round takes */
      readonly count: number;
    }
  /** None of these: another day is asked of the customer, `yyyy-mm-dd` */
  | { readonly kind: 'due'; readonly on: string };

export interface SavingChange {
  readonly order: string;
  readonly change: Change;
}

type Planned = Pick<DayPlan, 'orders' | 'loads'>;

/** The days as they were planned. */
export interface DayBefore {
  readonly day: ShopDay;
  readonly orders: readonly DayOrder[];
  readonly plan: Planned;
  readonly firstDay: string;
  /** Whole days from packed to due */
  readonly packedBefore: number;
}

/**
 * For each late order the smallest change that saves it: to go first where nobody suffers; longer hours; one more of what is
 * shortest; to go first at the cost of others; another due date. Each is planned and not guessed; hours and what is bought must
 * make no other order later.
 */
export function savingChanges(
  before: DayBefore,
  planner: (day: ShopDay, orders: readonly DayOrder[]) => Planned,
): readonly SavingChange[] {
  const { day, plan, firstDay, packedBefore } = before;
  const planned = new Set(plan.orders.map(({ order }) => order));
  const orders = before.orders.filter(({ run }) => planned.has(run.order));
  const late = plan.orders.filter((order) => order.late > 0);
  const saved = new Map<string, Change>();
  const first = new Map<string, Change>();
  const isOpen = () => late.some(({ order }) => !saved.has(order));
  const tryOut = (change: Change, next: Planned) => {
    if (harmed(plan, next).length > 0) return;
    for (const { order } of late)
      if (!saved.has(order) && lateIn(next, order) === 0) saved.set(order, change);
  };
  const byLateness = late.slice().sort((one, other) => other.late - one.late);
  for (const { order } of byLateness.slice(0, MOST_FIRST)) {
    const next = planner(day, putFirst(orders, order));
    if (lateIn(next, order) > 0) continue;
    const later = harmed(plan, next);
    (later.length === 0 ? saved : first).set(order, { kind: 'first', later });
  }
  for (const by of LONGER)
    if (isOpen()) tryOut({ kind: 'longer', by }, planner(longerDay(day, by), orders));
  for (const of of ['mold', 'plate', 'person'] as const) {
    const busiest = plan.loads.find(({ kind, load }) => kind === of && load > 0);
    if (!busiest || !isOpen()) continue;
    const more = withOneMore(day, orders, { kind: of, name: busiest.name });
    const change: Change = { kind: 'one more', of, name: busiest.name, count: more.count };
    tryOut(change, planner(more.day, more.orders));
  }
  return late.map(({ order, finish }) => {
    const packedOn = Math.max(0, Math.ceil(finish / DAY) - 1);
    const on = dayAfter(firstDay, packedOn + packedBefore);
    return { order, change: saved.get(order) ?? first.get(order) ?? { kind: 'due', on } };
  });
}

function lateIn({ orders }: Planned, name: string): number {
  return orders.find(({ order }) => order === name)?.late ?? Number.POSITIVE_INFINITY;
}

/** Orders that are later than before, or out. */
function harmed(before: Planned, after: Planned): readonly string[] {
  return before.orders.flatMap(({ order, late }) => (lateIn(after, order) > late ? [order] : []));
}

/** Its colors are weighed apart from the others', so that it need not wait for a batch. */
function putFirst(orders: readonly DayOrder[], name: string): readonly DayOrder[] {
  return orders.map((order) =>
    order.run.order === name ? { ...order, weight: FIRST, colors: `${name} first` } : order,
  );
}

/** The end of each day's hours moved on, as far as midnight. */
function longerDay(day: ShopDay, by: number): ShopDay {
  return {
    ...day,
    people: day.people.map((person) => ({
      ...person,
      hours: person.hours.map((span, place) => {
        const next = person.hours[place + 1];
        const midnight = Math.ceil(span.to / DAY) * DAY;
        const isLast = next === undefined || next.from >= midnight;
        return isLast ? { from: span.from, to: Math.min(span.to + by, midnight - 1) } : span;
      }),
    })),
  };
}
