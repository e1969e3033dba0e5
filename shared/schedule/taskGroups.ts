import type { ActivityNetwork, HeldSpan } from './activityNetwork.ts';

/** Tasks that a window or a hold ties to each other, or that are asked to be, are placed together. */
export interface TaskGroups {
  /** Tasks of each group, each after those it waits for; groups likewise */
  readonly members: readonly (readonly number[])[];
  readonly groupOf: readonly number[];
  /** Groups that each group waits for, and those that wait for it */
  readonly before: readonly (readonly number[])[];
  readonly after: readonly (readonly number[])[];
  /** Holds that begin, and that end, with a task */
  readonly beginning: readonly (readonly number[])[];
  readonly ending: readonly (readonly number[])[];
  /** From the start of the first task of each hold to the finish of its last, at the least */
  readonly spans: readonly number[];
}

/**
 * The strongly connected parts of the network, where a window or a hold also leads back.
 * @param asked whether tasks that are asked to be placed together are
 * @source TARJAN1972
 */
export function taskGroups(network: ActivityNetwork, asked: 'together' | 'apart'): TaskGroups {
  const { count, arcs, holds } = network;
  const leads: number[][] = Array.from({ length: count }, () => []);
  for (const { before, after, most, isTogether } of arcs) {
    leads[before]?.push(after);
    const isBoth = most < Number.POSITIVE_INFINITY || (isTogether && asked === 'together');
    if (isBoth) leads[after]?.push(before);
  }
  for (const { first, last } of holds) leads[last]?.push(first);
  const parts = connectedParts(leads).reverse();
  const rank = ranks(network);
  const members = parts.map((part) =>
    part.sort((one, other) => (rank[one] ?? 0) - (rank[other] ?? 0)),
  );
  const groupOf = new Array<number>(count).fill(0);
  members.forEach((part, group) => {
    for (const task of part) groupOf[task] = group;
  });
  const before: Set<number>[] = members.map(() => new Set());
  const after: Set<number>[] = members.map(() => new Set());
  for (const arc of arcs) {
    const [one = 0, other = 0] = [groupOf[arc.before], groupOf[arc.after]];
    if (one === other) continue;
    before[other]?.add(one);
    after[one]?.add(other);
  }
  const beginning: number[][] = Array.from({ length: count }, () => []);
  const ending: number[][] = Array.from({ length: count }, () => []);
  holds.forEach(({ first, last }, hold) => {
    beginning[first]?.push(hold);
    ending[last]?.push(hold);
  });
  const spans = holds.map((hold) => leastSpan(network, members[groupOf[hold.first] ?? 0], hold));
  const lists = (sets: readonly Set<number>[]) => sets.map((set) => [...set]);
  const links = { before: lists(before), after: lists(after) };
  return { members, groupOf, ...links, beginning, ending, spans };
}

function leastSpan(
  { into, durations }: ActivityNetwork,
  members: readonly number[] = [],
  { first, last }: HeldSpan,
): number {
  const offsets = new Map([[first, 0]]);
  for (const task of members)
    for (const { before, least } of into[task] ?? []) {
      const earlier = offsets.get(before);
      if (earlier === undefined) continue;
      offsets.set(task, Math.max(offsets.get(task) ?? 0, earlier + least));
    }
  return (offsets.get(last) ?? 0) + (durations[last] ?? 0);
}

/** Place of each task in an order that follows the arcs; what is placed together with what follows it comes as late as it can. */
function ranks({ count, arcs, into, out }: ActivityNetwork): readonly number[] {
  const rank = new Array<number>(count).fill(0);
  const putOff = new Set(arcs.flatMap(({ before, isTogether }) => (isTogether ? [before] : [])));
  const waits = into.map(({ length }) => length);
  const ready: number[] = [];
  const later: number[] = [];
  const note = (task: number) => (putOff.has(task) ? later : ready).push(task);
  waits.forEach((left, task) => {
    if (left === 0) note(task);
  });
  for (let place = 0; place < count; place += 1) {
    const task = ready.shift() ?? later.shift() ?? 0;
    rank[task] = place;
    for (const { after } of out[task] ?? []) {
      const left = (waits[after] ?? 0) - 1;
      waits[after] = left;
      if (left === 0) note(after);
    }
  }
  return rank;
}

/** Tarjan's parts, each after the parts it leads to; without recursion, chains may be long. */
function connectedParts(leads: readonly (readonly number[])[]): number[][] {
  const count = leads.length;
  const seen = new Array<number>(count).fill(-1);
  const low = new Array<number>(count).fill(0);
  const isOpen = new Array<boolean>(count).fill(false);
  const walked = new Array<number>(count).fill(0);
  const open: number[] = [];
  const parts: number[][] = [];
  let clock = 0;
  for (let root = 0; root < count; root += 1) {
    if (seen[root] !== -1) continue;
    const path = [root];
    while (path.length > 0) {
      const node = path[path.length - 1] ?? 0;
      if (seen[node] === -1) {
        seen[node] = low[node] = clock;
        clock += 1;
        open.push(node);
        isOpen[node] = true;
      }
      const next = leads[node]?.[walked[node] ?? 0];
      if (next !== undefined) {
        walked[node] = (walked[node] ?? 0) + 1;
        if (seen[next] === -1) path.push(next);
        else if (isOpen[next]) low[node] = Math.min(low[node] ?? 0, seen[next] ?? 0);
        continue;
      }
      path.pop();
      const parent = path[path.length - 1];
      if (parent !== undefined) low[parent] = Math.min(low[parent] ?? 0, low[node] ?? 0);
      if (low[node] !== seen[node]) continue;
      const part = open.splice(open.indexOf(node));
      for (const member of part) isOpen[member] = false;
      parts.push(part);
    }
  }
  return parts;
}
