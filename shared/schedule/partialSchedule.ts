import type { ActivityNetwork, Taking } from './activityNetwork.ts';
import {
  copyProfile,
  earliestFree,
  nextChange,
  type ResourceProfile,
  take,
} from './resourceProfile.ts';

/** A schedule in the making. */
export interface PartialSchedule {
  readonly profiles: readonly ResourceProfile[];
  /** NaN until placed */
  readonly starts: number[];
  readonly takes: Taking[];
  readonly heldBy: Taking[];
  /** What was taken, so that a group can be given back */
  readonly taken: { resource: number; amount: number; from: number; to: number }[];
}

export function emptyPartialSchedule({ count, holds, open }: ActivityNetwork): PartialSchedule {
  return {
    profiles: open.map(copyProfile),
    starts: new Array<number>(count).fill(Number.NaN),
    takes: new Array<Taking>(count).fill([]),
    heldBy: new Array<Taking>(holds.length).fill([]),
    taken: [],
  };
}

/** Takes everything of a way over a span. */
export function takeMode(
  { profiles, taken }: PartialSchedule,
  mode: Taking,
  from: number,
  to: number,
): void {
  for (const { resource, amount } of mode) {
    const profile = profiles[resource];
    if (profile) take(profile, { from, to }, amount);
    taken.push({ resource, amount, from, to });
  }
}

/** Gives back all that was taken since `mark`. */
export function releaseMode({ profiles, taken }: PartialSchedule, mark: number): void {
  for (const { resource, amount, from, to } of taken.splice(mark)) {
    const profile = profiles[resource];
    if (profile) take(profile, { from, to }, -amount);
  }
}

/** The first moment at which everything of a way is free for a duration; Infinity where never. */
export function earliestForMode(
  profiles: readonly ResourceProfile[],
  mode: Taking,
  from: number,
  duration: number,
): number {
  let start = from;
  for (let agreed = 0; agreed < mode.length; ) {
    agreed = 0;
    for (const { resource, amount } of mode) {
      const profile = profiles[resource];
      const next = profile ? earliestFree(profile, start, { duration, amount }) : start;
      if (next === Number.POSITIVE_INFINITY) return next;
      if (next > start) {
        start = next;
        break;
      }
      agreed += 1;
    }
  }
  return start;
}

export interface Fit {
  readonly start: number;
  readonly mode: Taking;
}

/** The first moment at which all uses of a task can be served, each in one of its ways; undefined where never. */
export function earliestFit(
  profiles: readonly ResourceProfile[],
  uses: readonly (readonly Taking[])[],
  from: number,
  duration: number,
): Fit | undefined {
  let start = from;
  while (start < Number.POSITIVE_INFINITY) {
    let latest = start;
    for (const modes of uses) {
      let soonest = Number.POSITIVE_INFINITY;
      for (const mode of modes) {
        const free = earliestForMode(profiles, mode, latest, duration);
        if (free < soonest) soonest = free;
        if (free === latest) break;
      }
      latest = soonest;
    }
    if (latest === start) {
      const mode = chosenWay(profiles, uses, start, duration);
      if (mode) return { start, mode };
      latest = changeAfter(profiles, uses, start);
    }
    start = latest;
  }
  return undefined;
}

/** One way for each use at a moment, no resource twice. */
function chosenWay(
  profiles: readonly ResourceProfile[],
  uses: readonly (readonly Taking[])[],
  start: number,
  duration: number,
  chosen: Taking = [],
): Taking | undefined {
  const [modes, ...rest] = uses;
  if (modes === undefined) return chosen;
  for (const mode of modes) {
    const isTwice = mode.some(({ resource }) => chosen.some((one) => one.resource === resource));
    if (isTwice || earliestForMode(profiles, mode, start, duration) !== start) continue;
    const found = chosenWay(profiles, rest, start, duration, [...chosen, ...mode]);
    if (found) return found;
  }
  return undefined;
}

function changeAfter(
  profiles: readonly ResourceProfile[],
  uses: readonly (readonly Taking[])[],
  moment: number,
): number {
  let soonest = Number.POSITIVE_INFINITY;
  for (const modes of uses)
    for (const mode of modes)
      for (const { resource } of mode) {
        const profile = profiles[resource];
        if (profile) soonest = Math.min(soonest, nextChange(profile, moment));
      }
  return soonest;
}
