import { InputError } from '../../errors/InputError.ts';
import type { Link } from '../../schedule/schedulingTypes.ts';
import type { DayPart, PlannedTask } from './dayPart.ts';

/** A tick of the checklist; times are seconds from midnight before the first day, whole. */
export interface DayTick {
  /** Of the task */
  readonly id: string;
  readonly startedAt: number;
  /** Left out while it goes on */
  readonly finishedAt?: number;
  /** Who did it, where it is not who was planned */
  readonly who?: string;
}

/** What is known of a task that has begun. */
export interface Begun {
  readonly startedAt: number;
  readonly finishedAt?: number;
  readonly who?: string;
  /** Nobody ticked it, but it must have happened; its times are a guess */
  readonly isAssumed?: true;
}

/** They go on by themselves once what is before them is done. */
const PASSIVE: readonly PlannedTask['what'][] = ['heat', 'cool'];

/**
 * What has begun, by ticks and by what follows from them: whatever a begun task had to wait for is done, and a mold that is on
 * the plate or off it heats or cools without anybody's tick.
 * @throws InputError when a tick names no task, or its times are out of order or later than now
 */
export function begunTasks(
  { tasks, links }: DayPart,
  ticks: readonly DayTick[],
  plan: { readonly entries: readonly { readonly id: string; readonly from: number }[] },
  now: number,
): ReadonlyMap<string, Begun> {
  const durations = new Map(tasks.map(({ id, duration }) => [id, duration]));
  const planned = new Map(plan.entries.map(({ id, from }) => [id, from]));
  const begun = new Map<string, Begun>();
  for (const tick of ticks) {
    checkTick(tick, durations, now);
    begun.set(tick.id, tick);
  }
  byThemselves({ tasks, links }, begun);
  const waiting = links.filter(({ after }) => begun.has(after));
  for (let link = waiting.pop(); link; link = waiting.pop()) {
    const { before, after, from = 'finish' } = link;
    if (begun.has(before)) continue;
    const duration = durations.get(before) ?? 0;
    const followed = begun.get(after)?.startedAt ?? now;
    const latest = from === 'finish' ? followed - duration : followed;
    const startedAt = Math.min(planned.get(before) ?? latest, latest);
    begun.set(before, { startedAt, finishedAt: startedAt + duration, isAssumed: true });
    waiting.push(...links.filter((other) => other.after === before));
  }
  byThemselves({ tasks, links }, begun);
  return begun;
}

/** What goes on by itself since what is before it was done. */
function byThemselves(
  { tasks, links }: Pick<DayPart, 'tasks' | 'links'>,
  begun: Map<string, Begun>,
): void {
  for (const { id, what, duration } of tasks) {
    if (!PASSIVE.includes(what) || begun.has(id)) continue;
    const link = links.find(({ after, most }) => after === id && most === 0);
    const startedAt = begun.get(link?.before ?? '')?.finishedAt;
    if (startedAt !== undefined) begun.set(id, { startedAt, finishedAt: startedAt + duration });
  }
}

function checkTick(tick: DayTick, durations: ReadonlyMap<string, number>, now: number): void {
  const { id, startedAt, finishedAt } = tick;
  if (!durations.has(id))
    throw new InputError({
      field: 'ticked task',
      rule: { kind: 'known', where: 'the tasks of the day' },
      value: id,
    });
  const field = `${finishedAt === undefined ? 'start' : 'finish'} of ${id}`;
  const last = finishedAt ?? startedAt;
  if (last > now) throw late(field, { kind: 'at most', limit: now, what: 'now' }, last);
  if (finishedAt !== undefined && finishedAt < startedAt)
    throw late(field, { kind: 'at least', limit: startedAt, what: 'its start' }, finishedAt);
}

function late(field: string, rule: InputError['rule'], value: number): InputError {
  return new InputError({ field, rule, value, unit: 's' });
}

/** A window that reality has broken or will break. */
export interface BrokenWindow {
  readonly before: string;
  readonly after: string;
  /** Past its latest moment, at the soonest [s] */
  readonly late: number;
}

/** The latest start of a link's second task, by when its first has begun or ended. */
export function latestAfter(
  { from = 'finish', most }: Link,
  { startedAt, finishedAt }: Begun,
  duration: number,
) {
  if (most === undefined) return Number.POSITIVE_INFINITY;
  return (from === 'finish' ? (finishedAt ?? startedAt + duration) : startedAt) + most;
}
