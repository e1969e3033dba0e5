import { requireNumber } from '../../errors/requireNumber.ts';
import { checkProblem } from './checkProblem.ts';
import { contradiction, taskInCircle } from './contradiction.ts';
import { type Groups, groupsOf } from './groups.ts';
import { reachOf } from './heads.ts';
import { lowerBound } from './lowerBound.ts';
import { type Network, networkOf, type Taking } from './network.ts';
import { ruleLists } from './priorities.ts';
import type { Cost, NoSchedule, Problem, Schedule } from './problem.ts';
import { noSchedule } from './sayMisfit.ts';
import { type Searched, search } from './search.ts';

export interface Effort {
  /** Schedules to build, whole, >= 1 */
  readonly iterations: number;
  /** Whole; the same seed gives the same schedule */
  readonly seed: number;
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
  problem: Problem,
  { iterations, seed }: Effort,
): Schedule | NoSchedule {
  requireNumber(iterations, 'iterations', { whole: true, atLeast: 1 });
  requireNumber(seed, 'seed', { whole: true });
  checkProblem(problem);
  const network = networkOf(problem);
  const circle = taskInCircle(network);
  if (circle !== undefined) return noSchedule(problem, { kind: 'circle', task: circle });
  const broken = contradiction(network);
  if (broken) return noSchedule(problem, { kind: 'contradiction', ...broken });
  const groups = groupsOf(network);
  const reach = reachOf(network, groups);
  const bound = lowerBound(network, groups, reach);
  const begun = begunGroups(network, groups);
  const lists = ruleLists(network, groups, reach).map((list) => [
    ...begun,
    ...list.filter((group) => !begun.includes(group)),
  ]);
  const work = { network, groups, lists, fixed: begun.length, bound, iterations, seed };
  const found = search(work);
  if (found.kind === 'none') return noSchedule(problem, found.misfit);
  return scheduleOf(problem, network, { found, bound });
}

/** Groups with a task that has started come first, and what they wait for before them. */
function begunGroups({ startedAt }: Network, { members, before }: Groups): readonly number[] {
  const isBegun = members.map((part) => part.some((task) => startedAt[task] !== undefined));
  for (let group = members.length - 1; group >= 0; group -= 1)
    if (isBegun[group]) for (const earlier of before[group] ?? []) isBegun[earlier] = true;
  return members.flatMap((_, group) => (isBegun[group] ? [group] : []));
}

function scheduleOf(
  { tasks, holds = [], resources }: Problem,
  { durations }: Network,
  {
    found,
    bound,
  }: {
    readonly found: Extract<Searched, { readonly kind: 'found' }>;
    readonly bound: Cost;
  },
): Schedule {
  const { starts, takes, heldBy } = found.placing;
  const places = new Map(tasks.map(({ id }, place) => [id, place]));
  const startOf = (id: string) => starts[places.get(id) ?? 0] ?? 0;
  const named = (way: Taking | undefined) =>
    (way ?? []).map(({ resource, amount }) => ({
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
