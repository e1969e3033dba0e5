import type { Span } from './schedulingTypes.ts';

/** What is free of one resource over time: from each moment to the next; after the last, for good. */
export interface ResourceProfile {
  readonly moments: number[];
  readonly free: number[];
}

/** All of the capacity inside the open spans, nothing outside; no spans mean always. */
export function emptyResourceProfile(
  capacity: number,
  open: readonly Span[] | undefined,
): ResourceProfile {
  const start = Number.NEGATIVE_INFINITY;
  if (open === undefined) return { moments: [start], free: [capacity] };
  const moments = [start];
  const free = [0];
  for (const { from, to } of open) {
    moments.push(from, to);
    free.push(capacity, 0);
  }
  return { moments, free };
}

export function copyProfile({ moments, free }: ResourceProfile): ResourceProfile {
  return { moments: moments.slice(), free: free.slice() };
}

/** The same seen from the far end: a moment t becomes end - t. */
export function mirrorProfile({ moments, free }: ResourceProfile, end: number): ResourceProfile {
  const turned = moments
    .slice(1)
    .reverse()
    .map((moment) => end - moment);
  return { moments: [Number.NEGATIVE_INFINITY, ...turned], free: free.slice().reverse() };
}

/** Index of the stretch that holds a moment. */
function stretchAt({ moments }: ResourceProfile, moment: number): number {
  let low = 0;
  let high = moments.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((moments[middle] ?? 0) <= moment) low = middle;
    else high = middle - 1;
  }
  return low;
}

/**
 * The first moment from which an amount is free for a duration.
 * @returns Infinity where there is none
 */
export function earliestFree(
  profile: ResourceProfile,
  from: number,
  { duration, amount }: { readonly duration: number; readonly amount: number },
): number {
  if (duration === 0) return from;
  const { moments, free } = profile;
  const stretches = free.length;
  let start = from;
  for (let stretch = stretchAt(profile, from); stretch < stretches; stretch += 1) {
    const next = moments[stretch + 1] ?? Number.POSITIVE_INFINITY;
    if ((free[stretch] ?? 0) < amount) start = next;
    else if (next >= start + duration) return start;
  }
  return Number.POSITIVE_INFINITY;
}

/** The next moment at which what is free changes; Infinity where nothing changes any more. */
export function nextChange(profile: ResourceProfile, after: number): number {
  return profile.moments[stretchAt(profile, after) + 1] ?? Number.POSITIVE_INFINITY;
}

/** Takes an amount over a span; a negative amount gives it back. */
export function take(profile: ResourceProfile, { from, to }: Span, amount: number): void {
  if (to <= from) return;
  const first = split(profile, from);
  const end = split(profile, to);
  for (let stretch = first; stretch < end; stretch += 1)
    profile.free[stretch] = (profile.free[stretch] ?? 0) - amount;
  join(profile, end);
  join(profile, first);
}

function split(profile: ResourceProfile, moment: number): number {
  const stretch = stretchAt(profile, moment);
  if (profile.moments[stretch] === moment) return stretch;
  profile.moments.splice(stretch + 1, 0, moment);
  profile.free.splice(stretch + 1, 0, profile.free[stretch] ?? 0);
  return stretch + 1;
}

/** Two stretches alike become one, so that giving back leaves no trace. */
function join(profile: ResourceProfile, stretch: number): void {
  if (stretch === 0 || profile.free[stretch] !== profile.free[stretch - 1]) return;
  profile.moments.splice(stretch, 1);
  profile.free.splice(stretch, 1);
}

/** The moment by which an amount of capacity times time has been open since a start; Infinity where never. */
export function openUntil(
  profiles: readonly ResourceProfile[],
  from: number,
  work: number,
): number {
  let at = from;
  let left = work;
  while (left > 0) {
    const moment = at;
    const rate = profiles.reduce(
      (sum, profile) => sum + (profile.free[stretchAt(profile, moment)] ?? 0),
      0,
    );
    const next = Math.min(...profiles.map((profile) => nextChange(profile, moment)));
    const able = rate * (next - at);
    if (rate > 0 && able >= left) return at + left / rate;
    if (next === Number.POSITIVE_INFINITY) return next;
    left -= able;
    at = next;
  }
  return at;
}
