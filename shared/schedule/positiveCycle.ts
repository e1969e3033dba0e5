import type { ActivityNetwork, Arc } from './activityNetwork.ts';

/**
 * Links that no times can satisfy, whatever the shop has: tasks that wait for each other, or a window shorter than what must
 * happen inside it. Longest paths; one that still grows after as many rounds as there are tasks runs in a circle.
 * @source BARTUSCH1988
 * @returns the arc at which it shows; undefined where there are times
 */
export function positiveCycle({ count, arcs, releases }: ActivityNetwork): Arc | undefined {
  const starts = releases.slice();
  let grown: Arc | undefined;
  for (let round = 0; round <= count; round += 1) {
    grown = undefined;
    for (const arc of arcs) {
      const { before, after, least, most } = arc;
      const soonest = (starts[before] ?? 0) + least;
      if (soonest > (starts[after] ?? 0)) {
        starts[after] = soonest;
        grown = most < Number.POSITIVE_INFINITY ? arc : (grown ?? arc);
      }
      const latest = (starts[after] ?? 0) - most;
      if (latest > (starts[before] ?? 0)) {
        starts[before] = latest;
        grown = arc;
      }
    }
    if (grown === undefined) return undefined;
  }
  return grown;
}

/** Whether tasks wait for each other in a circle: one that no order of the arcs reaches. */
export function taskInCycle({ count, into, out }: ActivityNetwork): number | undefined {
  const waits = into.map(({ length }) => length);
  const ready = waits.flatMap((left, task) => (left === 0 ? [task] : []));
  for (let place = 0; place < ready.length; place += 1)
    for (const { after } of out[ready[place] ?? 0] ?? []) {
      const left = (waits[after] ?? 0) - 1;
      waits[after] = left;
      if (left === 0) ready.push(after);
    }
  if (ready.length === count) return undefined;
  return waits.findIndex((left) => left > 0);
}
