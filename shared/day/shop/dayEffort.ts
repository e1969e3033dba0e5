import type { DayOrder } from '../planning/shopDay.ts';

/** The same book and question give the same plan. */
export const SEED = 1;

/** Schedules to build for a day's plan, and for each trial of one change to it. */
export interface DayEffort {
  readonly plan: number;
  readonly trial: number;
}

/** So many orders are asked for while somebody waits for the answer. */
const FEW = 6;

/** More rounds make each schedule slower to build: fewer of them for more rounds, but a week may take its seconds. */
export function dayEffort(orders: readonly DayOrder[]): DayEffort {
  const rounds = orders.reduce((sum, { run }) => sum + run.pieces.rounds, 0);
  const share = (work: number, most: number) =>
    Math.max(6, Math.min(most, Math.round(work / Math.max(1, rounds))));
  const work = orders.length > FEW ? 8000 : 1500;
  return { plan: share(work, 150), trial: share(400, 20) };
}
