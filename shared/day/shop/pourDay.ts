import type { DayBook } from '../../book/book.ts';
import type { OrderPlan } from '../../plan/planTypes.ts';
import type { UnitSystem } from '../../units/measures.ts';
import { type OneMore, oneMore } from '../planning/oneMore.ts';
import { type DayPlan, planDay } from '../planning/planDay.ts';
import { dayEffort, SEED } from './dayEffort.ts';
import { dayOrders, type LeftOut, openOrders } from './dayOrders.ts';
import { dayShop } from './dayShop.ts';
import type { DaysAsked } from './daysAsked.ts';
import { type SavingChange, savingChanges } from './savingChanges.ts';

/** Orders and days as they were asked for; no orders mean all that are open. */
export interface DayQuestion extends DaysAsked {
  readonly orders: readonly string[];
}

/** What both a plan and a replan tell beside the timetable. */
export interface PourDayFacts extends DaysAsked {
  readonly system: UnitSystem;
  /** Plans of the orders in the timetable and of those without room */
  readonly runs: readonly OrderPlan[];
  /** Orders without a plan of their own; those with one but no room are in the timetable's `unplanned` */
  readonly leftOut: readonly LeftOut[];
  /** In sentences */
  readonly assumptions: readonly string[];
  /** For each order that is late, the smallest change found that has it packed in time */
  readonly changes: readonly SavingChange[];
}

/** Several orders over some days: whether they fit, in which sequence, and what would help. */
export interface PourDay extends PourDayFacts {
  readonly plan: DayPlan;
  /** What one more mold, plate or person would save; empty where nothing is planned */
  readonly saves: readonly OneMore[];
}

/**
 * The timetable of orders over some days from the book.
 * @throws InputError on a figure of the book that the planner refuses
 */
export function pourDay(book: DayBook, asked: DayQuestion): PourDay {
  const { firstDay, days } = asked;
  const names = asked.orders.length === 0 ? openOrders(book) : asked.orders;
  const { orders, runs, leftOut } = dayOrders(book, names, asked);
  const { day, assumptions } = dayShop(book, asked);
  const effort = dayEffort(orders);
  const plan = planDay(day, orders, { iterations: effort.plan, seed: SEED });
  const trial = { iterations: effort.trial, seed: SEED };
  return {
    firstDay,
    days,
    system: book.shop.units,
    plan,
    runs,
    leftOut,
    assumptions,
    saves: oneMore(day, orders, trial, plan),
    changes: savingChanges(
      { day, orders, plan, firstDay, packedBefore: book.shop.packedBefore },
      (changed, others) =>
        planDay(changed, others, {
          ...trial,
          like: new Map(plan.entries.map(({ id, from }) => [id, from])),
        }),
    ),
  };
}
