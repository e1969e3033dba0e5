import { requireNumber } from '../errors/requireNumber.ts';
import { activityListByKey } from './activityListByKey.ts';
import { type ActivityNetwork, activityNetwork, type Taking } from './activityNetwork.ts';
import { checkProblem } from './checkProblem.ts';
import { headsAndTails } from './headsAndTails.ts';
import { lateAcceptanceSearch, type SearchResult } from './lateAcceptanceSearch.ts';
import { lowerBound } from './lowerBound.ts';
import { noSchedule } from './noSchedule.ts';
import { positiveCycle, taskInCycle } from './positiveCycle.ts';
import { priorityRuleLists } from './priorityRuleLists.ts';
import type { Cost, NoSchedule, Schedule, SchedulingProblem } from './schedulingTypes.ts';
import { compareCosts } from './serialGeneration.ts';
import { type TaskGroups, taskGroups } from './taskGroups.ts';

export interface SearchEffort {
  /** Schedules to build, whole, >= 1; as many again where tasks are asked to be placed together, which is tried both ways */
  readonly iterations: number;
  /** Whole; the same seed gives the same schedule */
  readonly seed: number;
  /** Starts of an earlier schedule by task: its order is tried first */
  readonly like?: ReadonlyMap<string, number>;
}

/**
 * When each task is done and by what: no resource over its capacity or outside its hours, every wait long enough and no
 * window broken; lateness as small as found, then the finish as early as found.
 *
 * Serial generation over lists of tasks, lists improved by search; more iterations with the same seed are never worse.
 * The bound says how far from the best it can be. Where windows, holds and closed hours leave no room in any list tried, it
 * says so without proof that there is none.
 *
 * @throws InputError on a figure out of range, an unknown or repeated name
 * @source KOLISCH1996; FRANCK2001
 */
export function planSchedule(
  problem: SchedulingProblem,
  effort: SearchEffort,
): Schedule | NoSchedule {
  const { iterations, seed } = effort;
  requireNumber(iterations, 'iterations', { whole: true, atLeast: 1 });
  requireNumber(seed, 'seed', { whole: true });
  checkProblem(problem);
  const network = activityNetwork(problem);
  const circle = taskInCycle(network);
  if (circle !== undefined) return noSchedule(problem, { kind: 'circle', task: circle });
  const broken = positiveCycle(network);
  if (broken) return noSchedule(problem, { kind: 'contradiction', ...broken });
  const apart = taskGroups(network, 'apart');
  // Both ways of grouping have the same bound; where nothing finds room nobody asks for it.
  const bound = onceMade(() => lowerBound(network, apart, headsAndTails(network, apart)));
  const one = searchGrouped(problem, network, { ...effort, groups: apart, bound });
  if (!network.arcs.some(({ isTogether }) => isTogether) || isBest(one, bound))
    return answered(problem, network, one, bound);
  const groups = taskGroups(network, 'together');
  const other = searchGrouped(problem, network, { ...effort, groups, bound });
  return answered(problem, network, betterOf(one, other), bound);
}

function onceMade<Value>(make: () => Value): () => Value {
  let made: { readonly value: Value } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

function searchGrouped(
  problem: SchedulingProblem,
  network: ActivityNetwork,
  {
    iterations,
    seed,
    like,
    groups,
    bound,
  }: SearchEffort & { readonly groups: TaskGroups; readonly bound: () => Cost },
): SearchResult {
  const begun = begunGroups(network, groups);
  const earlier = like ? [listLike(problem, groups, like)] : [];
  const rules = priorityRuleLists(network, groups, headsAndTails(network, groups));
  const lists = [...earlier, ...rules].map((list) => [
    ...begun,
    ...list.filter((group) => !begun.includes(group)),
  ]);
  return lateAcceptanceSearch({
    network,
    groups,
    lists,
    fixed: begun.length,
    bound,
    iterations,
    seed,
  });
}

function isBest(found: SearchResult, bound: () => Cost): boolean {
  return found.kind === 'found' && compareCosts(found.cost, bound()) <= 0;
}

function betterOf(one: SearchResult, other: SearchResult): SearchResult {
  if (other.kind === 'none') return one;
  if (one.kind === 'none') return other;
  const better = compareCosts(other.cost, one.cost) < 0 ? other : one;
  return { ...better, iterations: one.iterations + other.iterations };
}

function answered(
  problem: SchedulingProblem,
  network: ActivityNetwork,
  found: SearchResult,
  bound: () => Cost,
) {
  if (found.kind === 'none') return noSchedule(problem, found.infeasibility);
  return scheduleOf(problem, network, { found, bound: bound() });
}

/** Groups in the order in which an earlier schedule began them; what it did not know comes last. */
function listLike(
  { tasks }: SchedulingProblem,
  groups: TaskGroups,
  like: ReadonlyMap<string, number>,
): number[] {
  const keys = groups.members.map((part) =>
    Math.min(...part.map((task) => like.get(tasks[task]?.id ?? '') ?? Number.POSITIVE_INFINITY)),
  );
  return activityListByKey(groups, keys);
}

/** Groups with a task that has started come first, and what they wait for before them. */
function begunGroups(
  { startedAt }: ActivityNetwork,
  { members, before }: TaskGroups,
): readonly number[] {
  const isBegun = members.map((part) => part.some((task) => startedAt[task] !== undefined));
  for (let group = members.length - 1; group >= 0; group -= 1)
    if (isBegun[group]) for (const earlier of before[group] ?? []) isBegun[earlier] = true;
  return members.flatMap((_, group) => (isBegun[group] ? [group] : []));
}

function scheduleOf(
  { tasks, holds = [], resources }: SchedulingProblem,
  { durations }: ActivityNetwork,
  {
    found,
    bound,
  }: {
    readonly found: Extract<SearchResult, { readonly kind: 'found' }>;
    readonly bound: Cost;
  },
): Schedule {
  const { starts, takes, heldBy } = found.placing;
  const places = new Map(tasks.map(({ id }, place) => [id, place]));
  const startOf = (id: string) => starts[places.get(id) ?? 0] ?? 0;
  const named = (mode: Taking | undefined) =>
    (mode ?? []).map(({ resource, amount }) => ({
      resource: resources[resource]?.id ?? '',
      amount,
    }));
  return {
    kind: 'schedule',
    tasks: tasks.map(({ id, duration }, place) => {
      const from = starts[place] ?? 0;
      return { id, from, to: from + duration, takes: named(takes[place]) };
    }),
    holds: holds.map(({ id, first, last }, place) => ({
      id,
      from: startOf(first),
      to: startOf(last) + (durations[places.get(last) ?? 0] ?? 0),
      takes: named(heldBy[place]),
    })),
    cost: found.cost,
    bound,
    iterations: found.iterations,
  };
}
