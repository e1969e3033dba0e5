import type { ActivityNetwork } from './activityNetwork.ts';
import { emptyPartialSchedule, type PartialSchedule } from './partialSchedule.ts';
import { type Infeasibility, scheduleGroup } from './scheduleGroup.ts';
import type { Cost } from './schedulingTypes.ts';
import type { TaskGroups } from './taskGroups.ts';

export type GeneratedSchedule =
  | { readonly kind: 'placed'; readonly placing: PartialSchedule; readonly cost: Cost }
  | { readonly kind: 'infeasible'; readonly infeasibility: Infeasibility };

/**
 * Serial generation: group after group of a list, each as early as what stands already leaves room, gaps included.
 * @param list groups, each after those it waits for; those that have begun come first
 * @source KOLISCH1996
 */
export function serialGeneration(
  network: ActivityNetwork,
  groups: TaskGroups,
  list: readonly number[],
): GeneratedSchedule {
  const placing = emptyPartialSchedule(network);
  for (const group of list) {
    const infeasibility = scheduleGroup(network, groups, placing, group);
    if (infeasibility) return { kind: 'infeasible', infeasibility };
  }
  return { kind: 'placed', placing, cost: costOf(network, placing.starts) };
}

function costOf(network: ActivityNetwork, starts: readonly number[]): Cost {
  const { durations, dues, weights } = network;
  let lateness = 0;
  let finish = 0;
  starts.forEach((start, task) => {
    const end = start + (durations[task] ?? 0);
    lateness += (weights[task] ?? 1) * Math.max(0, end - (dues[task] ?? end));
    finish = Math.max(finish, end);
  });
  return { lateness, finish };
}

/** Lateness first, then the finish; negative where the first is better. */
export function compareCosts(one: Cost, other: Cost): number {
  return one.lateness - other.lateness || one.finish - other.finish;
}
