import type { DayBook } from '../../book/book.ts';
import { dayAfter } from '../../book/reading/daysBetween.ts';
import { describe } from '../../errors/describe.ts';
import { InputError } from '../../errors/InputError.ts';
import { type DayPlan, planDay } from '../planning/planDay.ts';
import type { ShopDay } from '../planning/shopDay.ts';
import { dayEffort, SEED } from './dayEffort.ts';
import { dayOrders, type LeftOut, openOrders } from './dayOrders.ts';
import { dayShop } from './dayShop.ts';

const DAY = 86_400;
/** Days looked ahead, today included */
const DAYS = 7;
/** A person's whole attention, as bars of the plan count it */
const WHOLE = 100;

/** One day of the week ahead. */
interface CapacityDay {
  /** `yyyy-mm-dd` */
  readonly day: string;
  /** Of all people together, breaks left out [s] */
  readonly there: number;
  /** Of these, planned [s] */
  readonly work: number;
  /** Rounds that go onto a plate */
  readonly rounds: number;
  /** Orders packed */
  readonly packed: readonly string[];
}

/** Whether the open orders fit into the week ahead. */
export type WeekCapacity =
  | { readonly kind: 'free' }
  | { readonly kind: 'refused'; readonly because: string }
  | {
      readonly kind: 'planned';
      readonly plan: DayPlan;
      readonly days: readonly CapacityDay[];
      readonly leftOut: readonly LeftOut[];
      readonly assumptions: readonly string[];
    };

/** The open orders planned over the week that begins with a day. */
export function weekCapacity(book: DayBook, firstDay: string): WeekCapacity {
  const names = openOrders(book);
  if (names.length === 0) return { kind: 'free' };
  const asked = { firstDay, days: DAYS };
  try {
    const { orders, leftOut } = dayOrders(book, names, asked);
    const { day, assumptions } = dayShop(book, asked);
    const plan = planDay(day, orders, { iterations: dayEffort(orders).plan, seed: SEED });
    const days = Array.from({ length: DAYS }, (_, place) =>
      capacityDay(day, plan, firstDay, place),
    );
    return { kind: 'planned', plan, days, leftOut, assumptions };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { kind: 'refused', because: describe(error) };
  }
}

function capacityDay(
  { people }: ShopDay,
  { bars, entries, orders }: DayPlan,
  firstDay: string,
  place: number,
): CapacityDay {
  const inDay = ({ from, to }: { readonly from: number; readonly to: number }) =>
    Math.max(0, Math.min(to, (place + 1) * DAY) - Math.max(from, place * DAY));
  const isToday = (moment: number) => Math.floor(moment / DAY) === place;
  const hours = people.flatMap((person) => person.hours);
  const attended = bars.filter(({ kind }) => kind === 'person');
  return {
    day: dayAfter(firstDay, place),
    there: hours.reduce((sum, span) => sum + inDay(span), 0),
    work: attended.reduce((sum, bar) => sum + (inDay(bar) * bar.amount) / WHOLE, 0),
    rounds: entries.filter(({ what, from }) => what === 'set on the plate' && isToday(from)).length,
    packed: orders.flatMap(({ order, finish }) => (isToday(finish) ? [order] : [])),
  };
}
