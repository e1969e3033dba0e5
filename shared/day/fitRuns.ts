import { requireNumber } from '../errors/requireNumber.ts';
import { planSchedule } from '../schedule/planSchedule.ts';

const DAY = 86_400;
/** Schedules to build: a list in a cell has to answer at once. */
const ITERATIONS = 200;
const SEED = 1;

/** Runs that are each done in one go, some at a time. */
export interface RunsToFit {
  /** How long each takes [s] */
  readonly times: readonly number[];
  /** Day by whose end each must be done, 1 for the first, whole; one for each run */
  readonly dueDays: readonly number[];
  /** Worked each day without a break [s], <= 24 h */
  readonly hours: number;
  /** Days on which work is done, whole, >= 1 */
  readonly days: number;
  /** Runs that can go on at the same time, whole, >= 1 */
  readonly atOnce: number;
}

/** Where a run goes. */
export type RunFit =
  | {
      readonly kind: 'placed';
      /** 1 for the first */
      readonly day: number;
      /** From the start of that day's hours [s] */
      readonly start: number;
      /** Days past the due day, 0 in time */
      readonly daysLate: number;
    }
  | { readonly kind: 'no room' };

/**
 * Whether runs fit into the hours of some days: as little late in all as found, then done as soon as found. A run that has no room
 * gives way: the last due, of those the longest, is left out first.
 * @throws InputError when a figure is out of range
 */
export function fitRuns(runs: RunsToFit): readonly RunFit[] {
  const { times, dueDays, hours, days, atOnce } = runs;
  requireNumber(hours, 'hours a day', { greaterThan: 0, atMost: DAY, unit: 's' });
  requireNumber(days, 'days', { whole: true, atLeast: 1 });
  requireNumber(atOnce, 'runs at once', { whole: true, atLeast: 1 });
  const length = Math.floor(hours);
  const open = Array.from({ length: days }, (_, day) => ({
    // Days of 24 hours would touch each other: a second between them keeps each run on its own day.
    from: day * (DAY + 1),
    to: day * (DAY + 1) + length,
  }));
  const tasks = times.map((time, place) => ({
    id: String(place),
    duration: Math.ceil(time),
    uses: [[[{ resource: 'places', amount: 1 }]]],
    due: ((dueDays[place] ?? days) - 1) * (DAY + 1) + length,
  }));
  const byDue = tasks
    .slice()
    .sort((one, other) => one.due - other.due || one.duration - other.duration);
  const planned = byDue.filter(({ duration }) => duration <= length);
  for (;;) {
    const found = planSchedule(
      { resources: [{ id: 'places', capacity: atOnce, open }], tasks: planned, links: [] },
      { iterations: ITERATIONS, seed: SEED },
    );
    if (found.kind === 'no schedule') {
      planned.pop();
      continue;
    }
    const starts = new Map(found.tasks.map(({ id, from }) => [id, from]));
    return tasks.map(({ id }, place) => {
      const start = starts.get(id);
      if (start === undefined) return { kind: 'no room' };
      const day = Math.floor(start / (DAY + 1));
      const daysLate = Math.max(0, day + 1 - (dueDays[place] ?? days));
      return { kind: 'placed', day: day + 1, start: start - day * (DAY + 1), daysLate };
    });
  }
}
