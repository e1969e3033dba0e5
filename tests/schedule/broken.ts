import type {
  Mode,
  Schedule,
  ScheduledTask,
  SchedulingProblem,
} from '../../shared/schedule/schedulingTypes.ts';

/** Everything in a schedule that breaks its problem, in words; written apart from the planner, moment by moment. */
export function broken(problem: SchedulingProblem, schedule: Schedule): readonly string[] {
  const { resources, tasks, links, holds = [] } = problem;
  const spans = new Map(schedule.tasks.map((task) => [task.id, task]));
  const found: string[] = [];
  for (const task of tasks) {
    const span = spans.get(task.id);
    if (!span) found.push(`${task.id} is missing`);
    else {
      if (span.to - span.from !== task.duration) found.push(`${task.id} lasts otherwise`);
      if (span.from < (task.release ?? 0)) found.push(`${task.id} starts before its release`);
      if (!isServed(task.uses ?? [], span)) found.push(`${task.id} takes something else`);
    }
  }
  for (const { before, after, from = 'finish', least = 0, most } of links) {
    const [one, other] = [spans.get(before), spans.get(after)];
    if (!one || !other) continue;
    const wait = other.from - (from === 'finish' ? one.to : one.from);
    if (wait < least) found.push(`${after} is too soon after ${before}`);
    if (most !== undefined && wait > most) found.push(`${after} is too late after ${before}`);
  }
  holds.forEach(({ id, first, last, modes }, place) => {
    const span = schedule.holds[place];
    if (span?.from !== spans.get(first)?.from || span?.to !== spans.get(last)?.to)
      found.push(`${id} does not hold from ${first} to ${last}`);
    if (span && !isServed([modes], span)) found.push(`${id} takes something else`);
  });
  const all = [...schedule.tasks, ...schedule.holds];
  const moments = new Set(all.flatMap(({ from, to }) => [from, to - 1]));
  for (const { id, capacity, open } of resources)
    for (const moment of moments) {
      const inUse = all.reduce((sum, span) => sum + amountAt(span, id, moment), 0);
      const isOpen = !open || open.some(({ from, to }) => from <= moment && moment < to);
      if (inUse > (isOpen ? capacity : 0)) found.push(`${id} is over at ${moment}`);
    }
  // A closing inside a span need not be at one of its ends.
  for (const { id, open } of resources)
    for (const span of all)
      if (open && span.to > span.from && span.takes.some(({ resource }) => resource === id))
        if (!open.some(({ from, to }) => from <= span.from && span.to <= to))
          found.push(`${span.id} runs outside the hours of ${id}`);
  return found;
}

function amountAt({ from, to, takes }: ScheduledTask, id: string, moment: number): number {
  if (moment < from || moment >= to) return 0;
  return takes.reduce((sum, { resource, amount }) => sum + (resource === id ? amount : 0), 0);
}

/** Whether one way of each use makes up what is taken. */
function isServed(uses: readonly (readonly Mode[])[], { takes }: ScheduledTask): boolean {
  const wanted = words(takes);
  const combined = uses.reduce<Mode[]>(
    (sofar, modes) => sofar.flatMap((taken) => modes.map((mode) => [...taken, ...mode])),
    [[]],
  );
  return combined.some((taken) => words(taken) === wanted);
}

function words(way: Mode): string {
  return way
    .map(({ resource, amount }) => `${resource} ${amount}`)
    .sort()
    .join();
}
