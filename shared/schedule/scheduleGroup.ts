import type { ActivityNetwork } from './activityNetwork.ts';
import {
  earliestFit,
  earliestForMode,
  type Fit,
  type PartialSchedule,
  releaseMode,
  takeMode,
} from './partialSchedule.ts';
import type { TaskGroups } from './taskGroups.ts';

/** Why a group has no place: a window that cannot be kept, or a task or hold that finds no room. */
export type Infeasibility =
  | { readonly kind: 'window'; readonly before: number; readonly after: number }
  | { readonly kind: 'no room'; readonly task: number }
  | { readonly kind: 'hold'; readonly hold: number };

/** A task that must start later, or that nothing can help. */
interface Delay {
  readonly task: number;
  readonly until: number;
  readonly why: Infeasibility;
}

/** A group that still moves after so many delays is given up. */
const MOST_DELAYS = 2000;

/**
 * Places the tasks of a group, each as early as it can, and goes back to a task to move it on where a window or a hold does not
 * close; what was placed before that task stays. What the group took is given back where it has no place.
 * @source FRANCK2001, serial generation with unscheduling
 */
export function scheduleGroup(
  network: ActivityNetwork,
  groups: TaskGroups,
  placing: PartialSchedule,
  group: number,
): Infeasibility | undefined {
  const members = groups.members[group] ?? [];
  const lower = new Map(members.map((task) => [task, network.releases[task] ?? 0]));
  const marks: number[] = [];
  let delays = 0;
  for (let place = 0; place < members.length; ) {
    const task = members[place] ?? 0;
    marks[place] = placing.taken.length;
    const delay =
      placeTask(network, groups, placing, { task, lower: lower.get(task) ?? 0 }) ??
      firstOf(groups.ending[task] ?? [], (hold) => placeHold(network, placing, hold));
    if (delay === undefined) {
      place += 1;
      continue;
    }
    delays += 1;
    const isFixed = network.startedAt[delay.task] !== undefined;
    const isOver = isFixed || delay.until === Number.POSITIVE_INFINITY || delays === MOST_DELAYS;
    const back = isOver ? 0 : Math.min(place, members.indexOf(delay.task));
    releaseMode(placing, marks[back] ?? 0);
    for (const undone of members.slice(back)) placing.starts[undone] = Number.NaN;
    if (isOver) return delay.why;
    lower.set(delay.task, delay.until);
    place = back;
  }
  return undefined;
}

function firstOf<Item, Found>(
  items: readonly Item[],
  find: (item: Item) => Found | undefined,
): Found | undefined {
  for (const item of items) {
    const found = find(item);
    if (found !== undefined) return found;
  }
  return undefined;
}

function placeTask(
  network: ActivityNetwork,
  groups: TaskGroups,
  placing: PartialSchedule,
  { task, lower }: { readonly task: number; readonly lower: number },
): Delay | undefined {
  const { durations, uses, into, startedAt } = network;
  const { starts, takes } = placing;
  const duration = durations[task] ?? 0;
  const arcs = into[task] ?? [];
  const started = startedAt[task];
  if (started !== undefined) {
    // What has begun takes its first way, whatever it meets there.
    const mode = (uses[task] ?? []).flatMap((modes) => modes[0] ?? []);
    starts[task] = started;
    takes[task] = mode;
    takeMode(placing, mode, started, started + duration);
    return undefined;
  }
  let from = lower;
  for (const { before, least } of arcs) from = Math.max(from, (starts[before] ?? 0) + least);
  const fit = fitWithHolds(network, groups, placing, { task, from });
  if (!fit) return { task, until: Number.POSITIVE_INFINITY, why: { kind: 'no room', task } };
  for (const { before, after, most } of arcs)
    if (fit.start > (starts[before] ?? 0) + most)
      return { task: before, until: fit.start - most, why: { kind: 'window', before, after } };
  starts[task] = fit.start;
  takes[task] = fit.mode;
  takeMode(placing, fit.mode, fit.start, fit.start + duration);
  return undefined;
}

/** The first room for a task that leaves room for the holds it begins, as long as they last at the least. */
function fitWithHolds(
  { durations, uses, holds }: ActivityNetwork,
  { beginning, spans }: TaskGroups,
  { profiles }: PartialSchedule,
  { task, from }: { readonly task: number; readonly from: number },
): Fit | undefined {
  let start = from;
  for (;;) {
    const fit = earliestFit(profiles, uses[task] ?? [], start, durations[task] ?? 0);
    if (!fit) return undefined;
    start = fit.start;
    for (const hold of beginning[task] ?? []) {
      let soonest = Number.POSITIVE_INFINITY;
      for (const mode of holds[hold]?.modes ?? [])
        soonest = Math.min(soonest, earliestForMode(profiles, mode, start, spans[hold] ?? 0));
      start = soonest;
    }
    if (start === fit.start) return fit;
    if (start === Number.POSITIVE_INFINITY) return undefined;
  }
}

function placeHold(
  network: ActivityNetwork,
  placing: PartialSchedule,
  hold: number,
): Delay | undefined {
  const held = network.holds[hold];
  if (!held) return undefined;
  const { first, last, modes } = held;
  const { starts, heldBy, profiles } = placing;
  const from = starts[first] ?? 0;
  const to = (starts[last] ?? 0) + (network.durations[last] ?? 0);
  let until = Number.POSITIVE_INFINITY;
  for (const mode of modes) {
    const free = earliestForMode(profiles, mode, from, to - from);
    const isBegun = network.startedAt[first] !== undefined;
    if (free === from || isBegun) {
      heldBy[hold] = mode;
      takeMode(placing, mode, from, to);
      return undefined;
    }
    until = Math.min(until, free);
  }
  return { task: first, until, why: { kind: 'hold', hold } };
}
