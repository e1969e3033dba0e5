import { requireNumber } from '../../errors/requireNumber.ts';
import { planSchedule, type SearchEffort } from '../../schedule/planSchedule.ts';
import type {
  Link,
  Mode,
  NoSchedule,
  Schedule,
  SchedulingProblem,
} from '../../schedule/schedulingTypes.ts';
import {
  type Begun,
  type BrokenWindow,
  begunTasks,
  type DayTick,
  latestAfter,
} from './begunTasks.ts';
import type { DayPart, PlannedTask } from './dayPart.ts';
import { resourceId } from './dayResources.ts';
import type { DayEntry, OrderOutcome } from './dayTimetable.ts';
import { type DayPlan, planWith } from './planDay.ts';
import type { DayOrder, ShopDay } from './shopDay.ts';

/** What a plan that is followed must still be known for. */
export interface FollowedPlan {
  readonly entries: readonly FollowedEntry[];
  readonly orders: readonly Pick<OrderOutcome, 'order' | 'late'>[];
  readonly unplanned: DayPlan['unplanned'];
}

type FollowedEntry = Pick<DayEntry, 'id' | 'from' | 'to' | 'person' | 'plate' | 'oven'>;

export interface Replanned extends DayPlan {
  /** Orders that are later than they were planned to be, or late anew [s] */
  readonly suffers: readonly {
    readonly order: string;
    readonly late: number;
    readonly wasLate: number;
  }[];
  /** Windows before a pour that what has happened has closed; the pieces behind each need a look before they are packed */
  readonly brokenWindows: readonly BrokenWindow[];
  /** Tasks that nobody ticked but that must have happened */
  readonly assumed: readonly string[];
}

/**
 * The rest of the day after what has happened: what has begun stays where it was, with whom and on what; the rest moves, not
 * before now. A window that reality has closed already is reported, all others hold.
 *
 * @param plan that the day was following
 * @param now seconds from midnight before the first day, whole
 * @throws InputError on a tick of no task, times out of order, and as `planDay`
 */
export function replanDay(
  day: ShopDay,
  orders: readonly DayOrder[],
  effort: SearchEffort,
  {
    plan,
    ticks,
    now,
  }: { readonly plan: FollowedPlan; readonly ticks: readonly DayTick[]; readonly now: number },
): Replanned {
  requireNumber(now, 'now', { whole: true, unit: 's' });
  const like = new Map(plan.entries.map(({ id, from }) => [id, from]));
  const left = new Set(plan.unplanned.map(({ order }) => order));
  const kept = orders.filter(({ run }) => !left.has(run.order));
  let closed: readonly Link[] = [];
  let begun: ReadonlyMap<string, Begun> = new Map();
  let durations: ReadonlyMap<string, number> = new Map();
  const next = planWith(day, kept, (part, problem) => {
    // An order that has lost its place keeps its ticks, but they tell nothing of the others.
    const ids = new Set(part.tasks.map(({ id }) => id));
    const own = ticks.filter(({ id }) => ids.has(id) || !like.has(id));
    begun = begunTasks(part, own, plan, now);
    durations = new Map(part.tasks.map(({ id, duration }) => [id, duration]));
    const pours = new Set(part.tasks.flatMap(({ id, what }) => (what === 'pour' ? [id] : [])));
    const real = withBegun(part, problem, begun, { now, entries: plan.entries });
    const answer = scheduleAround(real, begun, (one) => planSchedule(one, { ...effort, like }));
    const behind = [...answer.lifted, ...part.links.filter(({ after }) => begun.has(after))];
    closed = behind.filter(({ after }) => pours.has(after));
    return answer.schedule;
  });
  const starts = new Map(next.entries.map(({ id, from }) => [id, from]));
  return {
    ...next,
    unplanned: [...plan.unplanned, ...next.unplanned],
    suffers: suffering(plan, next),
    brokenWindows: closed.flatMap((link) => {
      const before = begun.get(link.before);
      if (!before || before.isAssumed) return [];
      const latest = latestAfter(link, before, durations.get(link.before) ?? 0);
      const late = (starts.get(link.after) ?? latest) - latest;
      return late > 0 ? [{ before: link.before, after: link.after, late }] : [];
    }),
    assumed: [...begun].flatMap(([id, { isAssumed }]) => (isAssumed ? [id] : [])),
  };
}

function suffering(plan: FollowedPlan, next: DayPlan): Replanned['suffers'] {
  const before = new Map(plan.orders.map(({ order, late }) => [order, late]));
  return next.orders.flatMap(({ order, late }) => {
    const wasLate = before.get(order) ?? 0;
    return late > wasLate ? [{ order, late, wasLate }] : [];
  });
}

/** The problem with what has begun fixed in it; what led to a begun task no longer binds. */
function withBegun(
  part: DayPart,
  problem: SchedulingProblem,
  begun: ReadonlyMap<string, Begun>,
  { now, entries }: { readonly now: number; readonly entries: readonly FollowedEntry[] },
): SchedulingProblem {
  const planned = new Map(entries.map((entry) => [entry.id, entry]));
  return {
    resources: problem.resources,
    tasks: part.tasks.map((task) => {
      const fact = begun.get(task.id);
      if (!fact) {
        const uses = (task.uses ?? []).map((modes) => plannedFirst(modes, planned.get(task.id)));
        return { ...task, uses, release: Math.max(task.release ?? 0, now) };
      }
      const uses = (task.uses ?? []).map((modes) => [
        keptMode(modes, planned.get(task.id), fact.who),
      ]);
      return { ...task, uses, startedAt: fact.startedAt, duration: lasting(task, fact, now) };
    }),
    links: part.links.filter(({ after }) => !begun.has(after)),
    holds: part.holds.map((hold) => {
      const fact = begun.get(hold.first);
      if (!fact) return { ...hold, modes: plannedFirst(hold.modes, planned.get(hold.first)) };
      return { ...hold, modes: [keptMode(hold.modes, planned.get(hold.first), fact.who)] };
    }),
  };
}

/** What goes on and should be over by now is taken to be just about over. */
function lasting({ duration }: PlannedTask, { startedAt, finishedAt }: Begun, now: number) {
  return finishedAt === undefined ? Math.max(duration, now - startedAt) : finishedAt - startedAt;
}

/** By who ticked it, else as planned, else the first. */
function keptMode(modes: readonly Mode[], planned: FollowedEntry | undefined, who = ''): Mode {
  const modeOf = (name: string) => modes.find(([main]) => main?.resource === name);
  const { person = '', plate = '', oven = '' } = planned ?? {};
  return (
    modeOf(resourceId('person', who)) ??
    modeOf(resourceId('person', person)) ??
    modeOf(resourceId('plate', plate)) ??
    modeOf(resourceId('oven', oven)) ??
    modes[0] ??
    []
  );
}

/** Who and what was planned stays first choice. */
function plannedFirst(modes: readonly Mode[], planned: FollowedEntry | undefined): readonly Mode[] {
  const first = keptMode(modes, planned);
  return [first, ...modes.filter((mode) => mode !== first)];
}

/** Lifts windows that begun tasks have closed, one after the other, until the rest has a schedule or has none for another reason. */
function scheduleAround(
  problem: SchedulingProblem,
  begun: ReadonlyMap<string, Begun>,
  scheduler: (problem: SchedulingProblem) => Schedule | NoSchedule,
): { readonly schedule: Schedule | NoSchedule; readonly lifted: readonly Link[] } {
  const lifted: Link[] = [];
  for (;;) {
    const links = problem.links.map((link) => {
      if (!lifted.includes(link)) return link;
      const { most: _most, ...open } = link;
      return open;
    });
    const schedule = scheduler({ ...problem, links });
    if (schedule.kind === 'schedule' || schedule.why !== 'window') return { schedule, lifted };
    const [before, after] = schedule.tasks;
    const closed = problem.links.find(
      (link) => link.before === before && link.after === after && !lifted.includes(link),
    );
    if (!closed || !begun.has(closed.before)) return { schedule, lifted };
    lifted.push(closed);
  }
}
