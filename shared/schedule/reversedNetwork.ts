import { type ActivityNetwork, joined } from './activityNetwork.ts';
import { mirrorProfile } from './resourceProfile.ts';
import type { TaskGroups } from './taskGroups.ts';

/**
 * The same network seen from an end: what comes last comes first, a moment t becomes end - t. Releases and what has begun are
 * left out: a schedule of it only tells in which order to place the groups forward again.
 */
export function reversedNetwork(network: ActivityNetwork, end: number): ActivityNetwork {
  const { count, durations, arcs, holds } = network;
  const shifted = arcs.map(({ before, after, least, most }) => {
    const offset = (durations[after] ?? 0) - (durations[before] ?? 0);
    return { before: after, after: before, least: least + offset, most: most + offset };
  });
  return {
    ...network,
    releases: new Array<number>(count).fill(0),
    dues: new Array<number>(count).fill(Number.POSITIVE_INFINITY),
    startedAt: new Array<undefined>(count).fill(undefined),
    ...joined(count, shifted),
    holds: holds.map(({ first, last, modes }) => ({ first: last, last: first, modes })),
    open: network.open.map((profile) => mirrorProfile(profile, end)),
  };
}

export function reversedGroups(groups: TaskGroups): TaskGroups {
  return {
    members: groups.members.map((part) => part.slice().reverse()),
    groupOf: groups.groupOf,
    before: groups.after,
    after: groups.before,
    beginning: groups.ending,
    ending: groups.beginning,
    spans: groups.spans,
  };
}
