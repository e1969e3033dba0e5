import type { Hold, Link, Task } from '../../schedule/schedulingTypes.ts';
import type { DayTask } from './dayTask.ts';

/** A task with what the scheduler must know of it. */
export type PlannedTask = DayTask & Omit<Task, 'id'>;

/** What stays taken, and for which order and round */
export type PlannedHold = Hold & { readonly order: string; readonly round?: number };

/** Some of the day's tasks, and how they hang together. */
export interface DayPart {
  readonly tasks: readonly PlannedTask[];
  readonly links: readonly Link[];
  readonly holds: readonly PlannedHold[];
}

export function joinParts(parts: readonly DayPart[]): DayPart {
  return {
    tasks: parts.flatMap(({ tasks }) => tasks),
    links: parts.flatMap(({ links }) => links),
    holds: parts.flatMap(({ holds }) => holds),
  };
}
