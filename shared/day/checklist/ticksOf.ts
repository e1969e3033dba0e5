import type { DayTick } from '../planning/begunTasks.ts';
import type { FollowedPlan } from '../planning/replanDay.ts';
import type { TickedRow } from './tickedRow.ts';

/** What the ticks of a checklist say of a plan. */
export interface TicksRead {
  readonly ticks: readonly DayTick[];
  /** Ticked without a time: taken as done when planned, at the latest now */
  readonly untimed: readonly string[];
  /** Ticked later than now, by a clock that goes wrong or a slip of the pen: taken as done now */
  readonly ahead: readonly string[];
}

/**
 * Ticks as what happened. A tick says that a task is done; it began so long before as it was planned to take, since nobody ticks a start.
 * Ticks of pauses and of tasks that the plan does not have tell nothing about its times.
 * @param now [s], from midnight before the first day of the plan
 */
export function ticksOf(
  rows: readonly TickedRow[],
  { entries }: Pick<FollowedPlan, 'entries'>,
  now: number,
): TicksRead {
  const planned = new Map(entries.map((entry) => [entry.id, entry]));
  const untimed: string[] = [];
  const ahead: string[] = [];
  const ticks = rows.flatMap(({ id, isTicked, at, who }): readonly DayTick[] => {
    const entry = planned.get(id);
    if (!isTicked || entry === undefined) return [];
    if (at === undefined) untimed.push(id);
    else if (at > now) ahead.push(id);
    const finishedAt = Math.floor(Math.min(at ?? entry.to, now));
    const startedAt = finishedAt - (entry.to - entry.from);
    return [{ id, startedAt, finishedAt, ...(who !== '' && { who }) }];
  });
  return { ticks, untimed, ahead };
}
