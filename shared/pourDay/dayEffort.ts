import type { DayOrder } from '../day/dayPlan/shopDay.ts';

/** The same book and question give the same plan. */
export const SEED = 1;

/** Schedules to build for a day's plan, and for each trial of one change to it. */
export interface DayEffort {
  readonly plan: number;
  readonly trial: number;
}

/** More rounds make each schedule slower to build: many for a few orders, fewer for a week full. */
export function dayEffort(orders: readonly DayOrder[]): DayEffort {
  const rounds = orders.reduce((sum, { run }) => sum + run.pieces.rounds, 0);
  const share = (work: number, most: number) =>
    Math.max(6, Math.min(most, Math.round(work / Math.max(1, rounds))));
  return { plan: share(1500, 100), trial: share(400, 20) };
}
