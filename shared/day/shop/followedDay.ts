import type { FollowedPlan } from '../planning/replanDay.ts';
import type { DayQuestion } from './pourDay.ts';

/** The plan of some days that the shop follows: what was asked, and what ticks are told from. */
export interface FollowedDay {
  readonly asked: DayQuestion;
  readonly plan: FollowedPlan;
}

/** What is kept of a plan, and nothing more: the workbook has little room for it. */
export function followedDay(asked: DayQuestion, plan: FollowedPlan): FollowedDay {
  const entries = plan.entries.map(({ id, from, to, person, plate, oven }) => ({
    ...{ id, from, to },
    ...(person !== undefined && { person }),
    ...(plate !== undefined && { plate }),
    ...(oven !== undefined && { oven }),
  }));
  const orders = plan.orders.map(({ order, late }) => ({ order, late }));
  return { asked, plan: { entries, orders, unplanned: plan.unplanned } };
}
