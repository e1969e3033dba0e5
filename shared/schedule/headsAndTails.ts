import type { ActivityNetwork } from './activityNetwork.ts';
import { earliestFit } from './partialSchedule.ts';
import type { TaskGroups } from './taskGroups.ts';

/** Times that no schedule beats, as if every task had the shop to itself. */
export interface HeadsAndTails {
  /** Earliest start of each task, closings of what it uses included */
  readonly heads: readonly number[];
  /** From the finish of each task to the end of all that follows, at the least */
  readonly tails: readonly number[];
}

/**
 * Longest paths to and from every task.
 * head = earliest opening after max over those before of head + least wait; tail = max over those after of wait + duration + tail.
 * @source KELLEYWALKER1959
 */
export function headsAndTails(network: ActivityNetwork, groups: TaskGroups): HeadsAndTails {
  const { count, durations, releases, startedAt, into, out, uses, open } = network;
  const order = groups.members.flat();
  const heads = new Array<number>(count).fill(0);
  const tails = new Array<number>(count).fill(0);
  for (const task of order) {
    let from = releases[task] ?? 0;
    for (const { before, least } of into[task] ?? [])
      from = Math.max(from, (heads[before] ?? 0) + least);
    const fit = earliestFit(open, uses[task] ?? [], from, durations[task] ?? 0);
    heads[task] = startedAt[task] ?? fit?.start ?? from;
  }
  for (const task of order.slice().reverse())
    for (const { after, least } of out[task] ?? []) {
      const wait = least - (durations[task] ?? 0);
      const tail = wait + (durations[after] ?? 0) + (tails[after] ?? 0);
      tails[task] = Math.max(tails[task] ?? 0, tail);
    }
  return { heads, tails };
}
