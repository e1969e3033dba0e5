import type { Groups } from './groups.ts';
import type { Network } from './network.ts';
import { earliestFit, earliestForWay, giveBack, type Placing, takeWay } from './placing.ts';

/** Why a group has no place: a window that cannot be kept, or a task or hold that finds no room. */
export type Misfit =
  | { readonly kind: 'window'; readonly before: number; readonly after: number }
  | { readonly kind: 'no room'; readonly task: number }
  | { readonly kind: 'hold'; readonly hold: number };

/** A task that must start later, or that nothing can help. */
interface Delay {
  readonly task: number;
  readonly until: number;
  readonly why: Misfit;
}

/** A group that still moves after so many delays is given up. */
const MOST_DELAYS = 2000;

/**
 * Places the tasks of a group, each as early as it can, and starts again with a task moved on where a window or a hold
 * does not close. What the group took is given back where it has no place.
 * @source FRANCK2001, serial generation with unscheduling
 */
export function placeGroup(
  network: Network,
  groups: Groups,
  placing: Placing,
  group: number,
): Misfit | undefined {
  const members = groups.members[group] ?? [];
  const lower = new Map(members.map((task) => [task, network.releases[task] ?? 0]));
  const mark = placing.taken.length;
  let why: Misfit | undefined;
  for (let delays = 0; delays < MOST_DELAYS; delays += 1) {
    const delay = placeOnce(network, groups, placing, members, lower);
    if (delay === undefined) return undefined;
    giveBack(placing, mark);
    for (const task of members) placing.starts[task] = Number.NaN;
    why = delay.why;
    const isFixed = network.startedAt[delay.task] !== undefined;
    if (isFixed || delay.until === Number.POSITIVE_INFINITY) return why;
    lower.set(delay.task, delay.until);
  }
  return why;
}

function placeOnce(
  network: Network,
  { ending }: Groups,
  placing: Placing,
  members: readonly number[],
  lower: ReadonlyMap<number, number>,
): Delay | undefined {
  for (const task of members) {
    const delay =
      placeTask(network, placing, task, lower.get(task) ?? 0) ??
      firstOf(ending[task] ?? [], (hold) => placeHold(network, placing, hold));
    if (delay) return delay;
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
  { durations, uses, into, startedAt }: Network,
  placing: Placing,
  task: number,
  lower: number,
): Delay | undefined {
  const { profiles, starts, takes } = placing;
  const duration = durations[task] ?? 0;
  const arcs = into[task] ?? [];
  const started = startedAt[task];
  if (started !== undefined) {
    // What has begun takes its first way, whatever it meets there.
    const way = (uses[task] ?? []).flatMap((ways) => ways[0] ?? []);
    starts[task] = started;
    takes[task] = way;
    takeWay(placing, way, started, started + duration);
    return undefined;
  }
  let from = lower;
  for (const { before, least } of arcs) from = Math.max(from, (starts[before] ?? 0) + least);
  const fit = earliestFit(profiles, uses[task] ?? [], from, duration);
  if (!fit) return { task, until: Number.POSITIVE_INFINITY, why: { kind: 'no room', task } };
  for (const { before, after, most } of arcs)
    if (fit.start > (starts[before] ?? 0) + most)
      return { task: before, until: fit.start - most, why: { kind: 'window', before, after } };
  starts[task] = fit.start;
  takes[task] = fit.way;
  takeWay(placing, fit.way, fit.start, fit.start + duration);
  return undefined;
}

function placeHold(network: Network, placing: Placing, hold: number): Delay | undefined {
  const held = network.holds[hold];
  if (!held) return undefined;
  const { first, last, ways } = held;
  const { starts, heldBy, profiles } = placing;
  const from = starts[first] ?? 0;
  const to = (starts[last] ?? 0) + (network.durations[last] ?? 0);
  let until = Number.POSITIVE_INFINITY;
  for (const way of ways) {
    const free = earliestForWay(profiles, way, from, to - from);
    const isBegun = network.startedAt[first] !== undefined;
    if (free === from || isBegun) {
      heldBy[hold] = way;
      takeWay(placing, way, from, to);
      return undefined;
    }
    until = Math.min(until, free);
  }
  return { task: first, until, why: { kind: 'hold', hold } };
}
