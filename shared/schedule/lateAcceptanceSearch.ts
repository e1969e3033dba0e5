import { activityListByKey, shiftedGroup } from './activityListByKey.ts';
import type { ActivityNetwork } from './activityNetwork.ts';
import type { PartialSchedule } from './partialSchedule.ts';
import { randomSource } from './randomSource.ts';
import { reversedGroups, reversedNetwork } from './reversedNetwork.ts';
import type { Infeasibility } from './scheduleGroup.ts';
import type { Cost } from './schedulingTypes.ts';
import { compareCosts, type GeneratedSchedule, serialGeneration } from './serialGeneration.ts';
import type { TaskGroups } from './taskGroups.ts';

/** A list is taken when it is no worse than the one this many steps ago. */
const MEMORY = 24;
/** Most groups moved in one step */
const MOST_MOVED = 4;

export interface SearchInput {
  readonly network: ActivityNetwork;
  readonly groups: TaskGroups;
  /** Where to begin; all of them are tried */
  readonly lists: readonly (readonly number[])[];
  /** Groups at the head of every list that have begun and stay there */
  readonly fixed: number;
  /** Asked for once there is a schedule */
  readonly bound: () => Cost;
  readonly seed: number;
  /** Schedules that may be built */
  readonly iterations: number;
}

interface Found {
  readonly list: readonly number[];
  readonly placing: PartialSchedule;
  readonly cost: Cost;
}

export type SearchResult =
  | (Found & { readonly kind: 'found'; readonly iterations: number })
  | { readonly kind: 'none'; readonly infeasibility: Infeasibility | undefined };

/**
 * The best list found: rules of thumb, then lists with a few groups moved, taken when no worse than some steps ago, and every
 * new best swept backward and forward. What comes first does not hang on how many iterations follow, so more are never worse.
 * @source BURKEBYKOV2017, late acceptance; LIWILLIS1992, backward and forward
 */
export function lateAcceptanceSearch(work: SearchInput): SearchResult {
  const { network, groups, lists, bound, iterations } = work;
  let left = iterations;
  let best: Found | undefined;
  let infeasibility: Infeasibility | undefined;
  const build = (list: readonly number[]): Found | undefined => {
    left -= 1;
    const decoded = serialGeneration(network, groups, list);
    if (decoded.kind === 'infeasible') infeasibility ??= decoded.infeasibility;
    return foundOf(list, decoded);
  };
  const keep = (found: Found | undefined): boolean => {
    if (!found || (best && compareCosts(found.cost, best.cost) >= 0)) return false;
    best = found;
    return true;
  };
  const isOpen = () => left > 0 && (!best || compareCosts(best.cost, bound()) > 0);
  const sweep = (): void => {
    while (best && left > 1 && isOpen()) {
      left -= 1;
      const list = sweptList(work, best);
      if (!list || !keep(build(list))) return;
    }
  };
  for (const list of lists) if (isOpen()) keep(build(list));
  sweep();
  if (!best) return { kind: 'none', infeasibility };
  const random = randomSource(work.seed);
  const memory = new Array<Cost>(MEMORY).fill(best.cost);
  let current: Found = best;
  for (let step = 0; isOpen(); step += 1) {
    const place = step % MEMORY;
    const tried = build(movedList(work, current, random));
    if (tried && isTaken(tried.cost, current.cost, memory[place])) current = tried;
    memory[place] = current.cost;
    if (keep(tried)) {
      sweep();
      current = best;
    }
  }
  return { kind: 'found', ...best, iterations: iterations - left };
}

function foundOf(list: readonly number[], decoded: GeneratedSchedule): Found | undefined {
  if (decoded.kind === 'infeasible') return undefined;
  const { placing, cost } = decoded;
  return { list, placing, cost };
}

function isTaken(cost: Cost, current: Cost, earlier: Cost | undefined): boolean {
  return compareCosts(cost, current) <= 0 || (!!earlier && compareCosts(cost, earlier) <= 0);
}

/** A few groups moved elsewhere; one in three times a late one is brought forward. */
function movedList({ network, groups, fixed }: SearchInput, from: Found, random: () => number) {
  const list = from.list.slice();
  const movable = list.length - fixed;
  if (movable < 2) return list;
  const pick = () => fixed + Math.floor(random() * movable);
  const moves = 1 + Math.floor(random() * MOST_MOVED);
  for (let move = 0; move < moves; move += 1) {
    const late = random() < 1 / 3 ? latePlace(network, groups, { ...from, list }, random()) : -1;
    if (late >= fixed) shiftedGroup(groups, list, { from: late, to: pick() % (late + 1), fixed });
    else shiftedGroup(groups, list, { from: pick(), to: pick(), fixed });
  }
  return list;
}

/** Place of one of the groups that hold a late task; -1 where all are in time. */
function latePlace(
  { dues, durations }: ActivityNetwork,
  { members }: TaskGroups,
  { list, placing }: Found,
  share: number,
): number {
  const isLate = (task: number) =>
    (placing.starts[task] ?? 0) + (durations[task] ?? 0) > (dues[task] ?? 0);
  const late = list.flatMap((group, place) => (members[group]?.some(isLate) ? [place] : []));
  return late[Math.floor(share * late.length)] ?? -1;
}

/** The order in which groups start when all are first pushed as late as they go. */
function sweptList({ network, groups, lists, fixed }: SearchInput, found: Found) {
  const { starts } = found.placing;
  const end = found.cost.finish;
  const mirrored = reversedNetwork(network, end);
  const turned = reversedGroups(groups);
  const finishes = groups.members.map((part) =>
    Math.max(...part.map((task) => (starts[task] ?? 0) + (network.durations[task] ?? 0))),
  );
  const backward = serialGeneration(
    mirrored,
    turned,
    activityListByKey(
      turned,
      finishes.map((finish) => -finish),
    ),
  );
  if (backward.kind === 'infeasible') return undefined;
  const late = backward.placing.starts;
  const keys = groups.members.map((part) =>
    Math.min(...part.map((task) => end - (late[task] ?? 0) - (network.durations[task] ?? 0))),
  );
  const begun = (lists[0] ?? []).slice(0, fixed);
  const rest = activityListByKey(groups, keys).filter((group) => !begun.includes(group));
  return [...begun, ...rest];
}
