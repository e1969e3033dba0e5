import { planSchedule, type SearchEffort } from '../../schedule/planSchedule.ts';
import type {
  Cost,
  NoSchedule,
  Schedule,
  SchedulingProblem,
} from '../../schedule/schedulingTypes.ts';
import { checkDay } from './checkDay.ts';
import { colorTasks } from './colorTasks.ts';
import { criticalTasks } from './criticalTasks.ts';
import { dayLoads, type ResourceLoad, worstOrder } from './dayLoads.ts';
import { type DayPart, joinParts } from './dayPart.ts';
import { dayResources } from './dayResources.ts';
import { dayTask } from './dayTask.ts';
import { type DayTimetable, dayTimetable } from './dayTimetable.ts';
import { orderTasks } from './orderTasks.ts';
import { refusedOrder } from './refusedOrder.ts';
import type { DayOrder, ShopDay } from './shopDay.ts';

/** An order left out, and why. */
interface Unplanned {
  readonly order: string;
  readonly because: string;
}

export interface DayPlan extends DayTimetable {
  /** What no timetable of these orders beats */
  readonly bound: Cost;
  readonly iterations: number;
  /** Tasks that cannot wait an hour without making the worst order later */
  readonly critical: readonly string[];
  /** In the critical part, highest first; the first is the bottleneck */
  readonly loads: readonly ResourceLoad[];
  readonly unplanned: readonly Unplanned[];
}

/** What stands between the tasks of a day and a schedule of them; a replan brings in what has happened. */
type Scheduler = (part: DayPart, problem: SchedulingProblem) => Schedule | NoSchedule;

/**
 * The timetable of several orders: what, when, by whom, on which plate; lateness against the due dates as small as found, then
 * as short as found. Windows between layers are never broken: an order whose windows the day cannot keep, or for which there
 * is no room in the hours given, is left out and says why.
 *
 * @param orders with plans; the same seed gives the same timetable
 * @throws InputError on a figure of the shop out of range, a name unknown or given twice
 */
export function planDay(day: ShopDay, orders: readonly DayOrder[], effort: SearchEffort): DayPlan {
  return planWith(day, orders, (_, problem) => planSchedule(problem, effort));
}

/** The day with another scheduler; orders in the way of a schedule are left out one by one. */
export function planWith(day: ShopDay, orders: readonly DayOrder[], scheduler: Scheduler): DayPlan {
  checkDay(day, orders);
  const unplanned: Unplanned[] = [];
  let planned: readonly DayOrder[] = orders.filter((order) => {
    const because = refusedOrder(day, order);
    if (because !== undefined) unplanned.push({ order: order.run.order, because });
    return because === undefined;
  });
  for (;;) {
    const resources = dayResources(day);
    const part = joinParts([
      colorTasks(day, planned),
      ...planned.map((one) => orderTasks(day, one)),
    ]);
    const schedule = scheduler(part, { ...part, resources });
    if (schedule.kind === 'schedule')
      return { ...laidOut(part, schedule, planned, day), unplanned };
    const inTheWay = part.tasks.find(({ id }) => id === schedule.tasks[0])?.order;
    if (inTheWay === undefined) throw new Error('an obstacle names its task');
    unplanned.push({ order: inTheWay, because: schedule.because });
    planned = planned.filter(({ run }) => run.order !== inTheWay);
  }
}

function laidOut(
  part: DayPart,
  schedule: Schedule,
  orders: readonly DayOrder[],
  day: ShopDay,
): Omit<DayPlan, 'unplanned'> {
  const resources = dayResources(day);
  const table = dayTimetable(part, resources, schedule, orders);
  const { bound, iterations } = schedule;
  const worst = worstOrder(table);
  if (!worst) return { ...table, bound, iterations, loads: [], critical: [] };
  const tasks = criticalTasks(part, resources, schedule, dayTask(worst.order, 'pack').id);
  const holds = part.holds.filter(({ first, last }) => tasks.has(first) || tasks.has(last));
  const critical = new Set([...tasks, ...holds.map(({ id }) => id)]);
  const loads = dayLoads(table, resources, critical);
  return { ...table, bound, iterations, loads, critical: [...tasks] };
}
