import { earliestForMode } from '../../schedule/partialSchedule.ts';
import { emptyResourceProfile, mirrorProfile } from '../../schedule/resourceProfile.ts';
import type { Demand, Link, Schedule } from '../../schedule/schedulingTypes.ts';
import type { DayPart } from './dayPart.ts';
import type { DayResource } from './dayResources.ts';

/** What can wait less than this without making the worst order later is critical [s]. */
const CRITICAL_SLACK = 3600;

/** Taken together, from the start of the first to the finish of the last task. */
interface Taken {
  readonly first: number;
  readonly last: number;
  readonly amount: number;
}

/**
 * Tasks that cannot wait an hour without finishing the given task later, if all keep their resources and their turn.
 * Latest finish = least over what follows, by a link or by a resource that does not bear both, of its latest start - wait;
 * moved back into the hours of what does it.
 * @param end the task whose finish counts
 */
export function criticalTasks(
  part: DayPart,
  resources: readonly DayResource[],
  schedule: Schedule,
  end: string,
): ReadonlySet<string> {
  const spans = schedule.tasks;
  const placeOf = new Map(spans.map(({ id }, place) => [id, place]));
  const at = (id: string) => placeOf.get(id) ?? 0;
  const finish = spans[at(end)]?.to ?? 0;
  const followers = followersOf(part, resources, schedule, at);
  const turned = new Map(
    resources.map(({ id, open }) => [id, mirrorProfile(emptyResourceProfile(1, open), finish)]),
  );
  const latest = new Map([[at(end), finish]]);
  const order = spans.map((_, place) => place).sort((one, other) => startAt(other) - startAt(one));
  const critical = new Set<string>();
  for (const place of order) {
    const span = spans[place];
    if (!span) continue;
    const length = span.to - span.from;
    let until = latest.get(place) ?? Number.POSITIVE_INFINITY;
    for (const { task, wait } of followers[place] ?? [])
      until = Math.min(
        until,
        (latest.get(task) ?? Number.POSITIVE_INFINITY) - lengthAt(task) - wait,
      );
    if (until === Number.POSITIVE_INFINITY) continue;
    const open = inHours(span.takes, until, length);
    latest.set(place, open);
    if (open - span.to < CRITICAL_SLACK) critical.add(span.id);
  }
  return critical;

  function startAt(place: number): number {
    return spans[place]?.from ?? 0;
  }
  function lengthAt(place: number): number {
    const span = spans[place];
    return span ? span.to - span.from : 0;
  }
  function inHours(takes: readonly Demand[], until: number, length: number): number {
    const profiles = takes.flatMap(({ resource }) => turned.get(resource) ?? []);
    const mode = profiles.map((_, resource) => ({ resource, amount: 1 }));
    return finish - earliestForMode(profiles, mode, finish - until, length);
  }
}

interface Follower {
  readonly task: number;
  /** From the finish of the one before to its start, at the least */
  readonly wait: number;
}

function followersOf(
  { links, holds }: DayPart,
  resources: readonly DayResource[],
  schedule: Schedule,
  at: (id: string) => number,
): readonly (readonly Follower[])[] {
  const followers: Follower[][] = schedule.tasks.map(() => []);
  for (const link of links)
    followers[at(link.before)]?.push({ task: at(link.after), wait: waitOf(link, schedule, at) });
  const takenBy = new Map<string, Taken[]>(resources.map(({ id }) => [id, []]));
  const note = (takes: readonly Demand[], first: number, last: number) => {
    for (const { resource, amount } of takes) takenBy.get(resource)?.push({ first, last, amount });
  };
  schedule.tasks.forEach(({ takes }, place) => {
    note(takes, place, place);
  });
  schedule.holds.forEach(({ takes }, place) => {
    const hold = holds[place];
    if (hold) note(takes, at(hold.first), at(hold.last));
  });
  const startOf = (place: number) => schedule.tasks[place]?.from ?? 0;
  const endOf = (place: number) => schedule.tasks[place]?.to ?? 0;
  for (const { id, capacity } of resources)
    for (const one of takenBy.get(id) ?? [])
      for (const other of takenBy.get(id) ?? [])
        if (one.amount + other.amount > capacity && endOf(one.last) <= startOf(other.first))
          followers[one.last]?.push({ task: other.first, wait: 0 });
  return followers;
}

function waitOf(
  { before, from = 'finish', least = 0 }: Link,
  { tasks }: Schedule,
  at: (id: string) => number,
): number {
  const span = tasks[at(before)];
  return from === 'finish' || !span ? least : least - (span.to - span.from);
}
