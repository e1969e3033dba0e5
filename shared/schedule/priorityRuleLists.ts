import { activityListByKey } from './activityListByKey.ts';
import type { ActivityNetwork } from './activityNetwork.ts';
import type { HeadsAndTails } from './headsAndTails.ts';
import type { TaskGroups } from './taskGroups.ts';

/**
 * Lists by rules of thumb, each with another idea of what comes first: earliest due, least slack, longest way to go,
 * earliest possible start, shortest, most followers; where lateness does not cost the same, what costs most.
 * @source KOLISCH1996, the rules
 */
export function priorityRuleLists(
  network: ActivityNetwork,
  groups: TaskGroups,
  { heads, tails }: HeadsAndTails,
): readonly number[][] {
  const { durations } = network;
  const dues = latestEnds(network, groups);
  const costs = latenessCosts(network, groups);
  const all = (task: number) => durations[task] ?? 0;
  const rules: readonly ((task: number) => number)[] = [
    (task) => dues[task] ?? 0,
    (task) => (dues[task] ?? 0) - (heads[task] ?? 0) - all(task),
    (task) => -(tails[task] ?? 0) - all(task),
    (task) => heads[task] ?? 0,
    (task) => all(task),
    (task) => -(network.out[task]?.length ?? 0),
    ...(new Set(network.weights).size > 1 ? [(task: number) => -(costs[task] ?? 0)] : []),
  ];
  return rules.map((rule) => {
    const keys = groups.members.map((part) => Math.min(...part.map(rule)));
    return activityListByKey(groups, keys);
  });
}

/** The latest finish of each task for which no due date behind it is missed; where there is none, by the length of what follows. */
function latestEnds(
  { dues, durations, out }: ActivityNetwork,
  groups: TaskGroups,
): readonly number[] {
  // Beyond every due date that is given, so that tasks without one come last.
  const far = dues.reduce((most, due) => (due < Number.POSITIVE_INFINITY ? most + due : most), 1e9);
  const latest = dues.map((due) => Math.min(due, far));
  for (const task of groups.members.flat().reverse())
    for (const { after, least } of out[task] ?? []) {
      const start = (latest[after] ?? 0) - (durations[after] ?? 0) - least;
      latest[task] = Math.min(latest[task] ?? 0, start + (durations[task] ?? 0));
    }
  return latest;
}

/** Of each task the highest weight of a due date behind it. */
function latenessCosts(
  { dues, weights, out }: ActivityNetwork,
  groups: TaskGroups,
): readonly number[] {
  const costs = weights.map((weight, task) =>
    (dues[task] ?? 0) < Number.POSITIVE_INFINITY ? weight : 0,
  );
  for (const task of groups.members.flat().reverse())
    for (const { after } of out[task] ?? [])
      costs[task] = Math.max(costs[task] ?? 0, costs[after] ?? 0);
  return costs;
}
