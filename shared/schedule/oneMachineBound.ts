/** A task on one machine: not before its head, and its tail to go when it is done. */
export interface MachineVisit {
  readonly head: number;
  readonly duration: number;
  readonly tail: number;
}

/**
 * The soonest that everything can be over when one machine does one task at a time, even if tasks could be interrupted.
 * Always the task with the longest tail of those that are there.
 * @source CARLIER1982, after Jackson
 */
export function oneMachineBound(visits: readonly MachineVisit[]): number {
  const waiting = visits
    .filter(({ duration }) => duration > 0)
    .sort((one, other) => one.head - other.head)
    .map((visit) => ({ ...visit, left: visit.duration }));
  const here: typeof waiting = [];
  let at = 0;
  let over = 0;
  for (let next = 0; next < waiting.length || here.length > 0; ) {
    if (here.length === 0) at = Math.max(at, waiting[next]?.head ?? at);
    while (next < waiting.length && (waiting[next]?.head ?? 0) <= at) {
      const visit = waiting[next];
      if (visit) here.push(visit);
      next += 1;
    }
    here.sort((one, other) => other.tail - one.tail);
    const [longest] = here;
    if (!longest) continue;
    const until = Math.min(at + longest.left, waiting[next]?.head ?? Number.POSITIVE_INFINITY);
    longest.left -= until - at;
    at = until;
    if (longest.left > 0) continue;
    here.shift();
    over = Math.max(over, at + longest.tail);
  }
  return over;
}
