import { emptyResourceProfile, type ResourceProfile } from './resourceProfile.ts';
import type { Hold, SchedulingProblem, Task } from './schedulingTypes.ts';

/** One way, by the numbers of its resources. */
export type Taking = readonly { readonly resource: number; readonly amount: number }[];

/** From start to start: after >= before + least, after <= before + most. */
export interface Arc {
  readonly before: number;
  readonly after: number;
  readonly least: number;
  readonly most: number;
  readonly isTogether?: true;
}

export interface HeldSpan {
  readonly first: number;
  readonly last: number;
  readonly modes: readonly Taking[];
}

/** A problem by numbers instead of names, as the search walks it. */
export interface ActivityNetwork {
  readonly count: number;
  readonly durations: readonly number[];
  readonly releases: readonly number[];
  /** Infinity where there is none */
  readonly dues: readonly number[];
  readonly weights: readonly number[];
  /** Where a task has started already */
  readonly startedAt: readonly (number | undefined)[];
  /** Per task, its uses, those with the fewest ways first */
  readonly uses: readonly (readonly (readonly Taking[])[])[];
  readonly arcs: readonly Arc[];
  readonly into: readonly (readonly Arc[])[];
  readonly out: readonly (readonly Arc[])[];
  readonly holds: readonly HeldSpan[];
  /** What is open of each resource before anything is placed */
  readonly open: readonly ResourceProfile[];
}

/** Numbers for names; the problem has been checked. */
export function activityNetwork({
  resources,
  tasks,
  links,
  holds = [],
}: SchedulingProblem): ActivityNetwork {
  const taskAt = numbered(tasks);
  const resourceAt = numbered(resources);
  const takings = (modes: Hold['modes']): readonly Taking[] =>
    modes.map((mode) =>
      mode.map(({ resource, amount }) => ({ resource: resourceAt(resource), amount })),
    );
  const durations = tasks.map(({ duration }) => duration);
  const spans = holds.map(({ first, last, modes }) => ({
    first: taskAt(first),
    last: taskAt(last),
    modes: takings(modes),
  }));
  const arcs = [
    ...links.map(({ before, after, from = 'finish', least = 0, most, isTogether }) => {
      const offset = from === 'finish' ? (durations[taskAt(before)] ?? 0) : 0;
      return {
        before: taskAt(before),
        after: taskAt(after),
        least: offset + least,
        most: most === undefined ? Number.POSITIVE_INFINITY : offset + most,
        ...(isTogether && { isTogether }),
      };
    }),
    ...spans
      .filter(({ first, last }) => first !== last)
      .map(({ first, last }) => ({
        before: first,
        after: last,
        least: 0,
        most: Number.POSITIVE_INFINITY,
      })),
  ];
  return {
    ...factsOf(tasks),
    durations,
    uses: tasks.map(({ uses = [] }) =>
      uses.map(takings).sort((one, other) => one.length - other.length),
    ),
    ...joined(tasks.length, arcs),
    holds: spans,
    open: resources.map(({ capacity, open }) => emptyResourceProfile(capacity, open)),
  };
}

function factsOf(tasks: readonly Task[]) {
  return {
    count: tasks.length,
    releases: tasks.map(({ release = 0 }) => release),
    dues: tasks.map(({ due = Number.POSITIVE_INFINITY }) => due),
    weights: tasks.map(({ weight = 1 }) => weight),
    startedAt: tasks.map(({ startedAt }) => startedAt),
  };
}

/** The arcs, and those into and out of every task. */
export function joined(
  count: number,
  arcs: readonly Arc[],
): Pick<ActivityNetwork, 'arcs' | 'into' | 'out'> {
  const into: Arc[][] = Array.from({ length: count }, () => []);
  const out: Arc[][] = Array.from({ length: count }, () => []);
  for (const arc of arcs) {
    into[arc.after]?.push(arc);
    out[arc.before]?.push(arc);
  }
  return { arcs, into, out };
}

function numbered(all: readonly { readonly id: string }[]): (id: string) => number {
  const places = new Map(all.map(({ id }, place) => [id, place]));
  return (id) => places.get(id) ?? -1;
}
