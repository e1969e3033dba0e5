import type { ActivityNetwork, Taking } from './activityNetwork.ts';
import { disjunctiveHoldsBound } from './disjunctiveHoldsBound.ts';
import type { HeadsAndTails } from './headsAndTails.ts';
import { type MachineVisit, oneMachineBound } from './oneMachineBound.ts';
import { openUntil } from './resourceProfile.ts';
import type { Cost } from './schedulingTypes.ts';
import type { TaskGroups } from './taskGroups.ts';

/** Work that must be done by one of a few resources. */
interface Load extends MachineVisit {
  /** Their numbers, sorted */
  readonly pool: readonly number[];
  readonly amount: number;
}

/**
 * What no schedule beats: lateness and finish of the longest paths; for the finish also, over every resource and every few that
 * can stand in for each other, its first head + the time it needs for all its work + the shortest tail, the preemptive bound
 * where one task at a time is done, and holds that take turns in the hours.
 * @source KELLEYWALKER1959; CARLIER1982
 */
export function lowerBound(
  network: ActivityNetwork,
  groups: TaskGroups,
  reach: HeadsAndTails,
): Cost {
  const { durations, dues, weights, open, startedAt } = network;
  const { heads, tails } = reach;
  let lateness = 0;
  let finish = 0;
  heads.forEach((head, task) => {
    const end = head + (durations[task] ?? 0);
    lateness += (weights[task] ?? 1) * Math.max(0, end - (dues[task] ?? end));
    finish = Math.max(finish, end + (tails[task] ?? 0));
  });
  // What has begun may overlap: it is no bound.
  if (startedAt.some((started) => started !== undefined)) return { lateness, finish };
  const loads = loadsOf(network, groups, reach);
  const pools = new Map(loads.map(({ pool }) => [pool.join(), pool]));
  for (const pool of pools.values()) {
    const own = loads.filter((load) => load.pool.every((resource) => pool.includes(resource)));
    const profiles = pool.flatMap((resource) => open[resource] ?? []);
    const work = own.reduce((sum, { amount, duration }) => sum + amount * duration, 0);
    const first = own.reduce((least, { head }) => Math.min(least, head), Number.POSITIVE_INFINITY);
    const last = own.reduce((least, { tail }) => Math.min(least, tail), Number.POSITIVE_INFINITY);
    finish = Math.max(finish, openUntil(profiles, first, work) + last);
    const isOnePlace = profiles.length === 1 && Math.max(...(profiles[0]?.free ?? [])) === 1;
    if (isOnePlace) finish = Math.max(finish, oneMachineBound(own));
  }
  finish = Math.max(finish, disjunctiveHoldsBound(network, groups, reach));
  return { lateness, finish };
}

function loadsOf(
  network: ActivityNetwork,
  { spans }: TaskGroups,
  { heads, tails }: HeadsAndTails,
): readonly Load[] {
  const { uses, durations, holds } = network;
  const ofTasks = uses.flatMap((all, task) =>
    all.flatMap((modes) => {
      const visit = {
        head: heads[task] ?? 0,
        duration: durations[task] ?? 0,
        tail: tails[task] ?? 0,
      };
      return visit.duration > 0 ? [loadOf(modes, visit)] : [];
    }),
  );
  const ofHolds = holds.map((hold, place) =>
    loadOf(hold.modes, {
      head: heads[hold.first] ?? 0,
      duration: spans[place] ?? 0,
      tail: tails[hold.last] ?? 0,
    }),
  );
  return [...ofTasks, ...ofHolds];
}

function loadOf(modes: readonly Taking[], visit: MachineVisit): Load {
  const main = modes.flatMap((mode) => mode[0] ?? []);
  const pool = [...new Set(main.map(({ resource }) => resource))].sort((a, b) => a - b);
  return { ...visit, pool, amount: Math.min(...main.map(({ amount }) => amount)) };
}
