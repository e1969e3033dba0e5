import type { DayBook } from '../../book/book.ts';
import type { DayTick } from '../planning/begunTasks.ts';
import { type FollowedPlan, type Replanned, replanDay } from '../planning/replanDay.ts';
import { dayEffort, SEED } from './dayEffort.ts';
import { dayOrders } from './dayOrders.ts';
import { dayShop } from './dayShop.ts';
import type { DayQuestion, PourDayFacts } from './pourDay.ts';
import { savingChanges } from './savingChanges.ts';

/** The rest of the days after what has happened. */
export interface ReplannedDay extends PourDayFacts {
  readonly plan: Replanned;
  /** [s] from midnight before the first day */
  readonly now: number;
}

/** What has happened to a plan that is followed. */
interface Happened {
  readonly followed: FollowedPlan;
  readonly ticks: readonly DayTick[];
  /** Whole seconds from midnight before the first day */
  readonly now: number;
}

/**
 * The rest of the days replanned from ticks, with the smallest change that saves each order that is late.
 * @param asked as it was asked for the plan that is followed, its orders by name
 * @throws InputError on a tick of no task or out of time, and as `pourDay`
 */
export function replannedDay(
  book: DayBook,
  asked: DayQuestion,
  { followed, ticks, now }: Happened,
): ReplannedDay {
  const { firstDay, days } = asked;
  const { orders, runs, leftOut } = dayOrders(book, asked.orders, asked);
  const { day, assumptions } = dayShop(book, asked);
  const effort = dayEffort(orders);
  const replan = (iterations: number, others = { day, orders }) =>
    replanDay(
      others.day,
      others.orders,
      { iterations, seed: SEED },
      { plan: followed, ticks, now },
    );
  const plan = replan(effort.plan);
  return {
    firstDay,
    days,
    system: book.shop.units,
    now,
    plan,
    runs,
    leftOut,
    assumptions,
    changes: savingChanges(
      { day, orders, plan, firstDay, packedBefore: book.shop.packedBefore },
      (changed, others) => replan(effort.trial, { day: changed, orders: [...others] }),
    ),
  };
}
