import { createContext, runInContext } from 'node:vm';
import { demoRows } from '../../templates/demoShop/demoShop.ts';
import { demoCells, platformOf, type Values } from './demoCells.ts';

interface DaySize {
  readonly orders: number;
  readonly days: number;
  /** So many times the pieces; 1 where left out */
  readonly times?: number;
}

export interface DayTime {
  readonly orders: number;
  readonly days: number;
  readonly rounds: number;
  readonly milliseconds: number;
  /** Of the plan: orders in time, and its finish over the bound */
  readonly inTime: number;
  readonly overBound: number;
}

const FIRST_DAY = '2026-11-30';
/** Pieces ordered: a round or two of the demo shop's molds */
const QUANTITIES = [5, 6, 8, 10, 12];

/**
 * Time of the page call `planDayFor` of the built script in a fresh context, as the platform runs it: orders of the demo shop's molds
 * and patterns, due evenly over the days. The platform's reads are arrays in memory, so this is the script's own work.
 */
export function dayTimes(code: string, sizes: readonly DaySize[]): readonly DayTime[] {
  return sizes.map((size) => {
    const { orders, days } = size;
    const context = createContext(platformOf(demoCells({ orders: ordersOf(size) })));
    runInContext(code, context);
    const start = performance.now();
    const answer: unknown = runInContext(
      `JSON.stringify(planDayFor({ firstDay: '${FIRST_DAY}', days: '${days}' }))`,
      context,
    );
    const milliseconds = performance.now() - start;
    const { kind, plan, runs, problems } = JSON.parse(String(answer));
    if (kind !== 'ok') throw new Error(`no plan: ${JSON.stringify(problems)}`);
    const rounds = runs.reduce(
      (sum: number, run: { pieces: { rounds: number } }) => sum + run.pieces.rounds,
      0,
    );
    const inTime = plan.orders.filter(({ late }: { late: number }) => late === 0).length;
    const from = 8 * 3600;
    const overBound = (plan.cost.finish - from) / (plan.bound.finish - from) - 1;
    return { orders, days, rounds, milliseconds, inTime, overBound };
  });
}

function ordersOf({ orders: count, days, times = 1 }: DaySize): readonly Values[] {
  const base = demoRows().orders.filter(({ status }) => status !== 'canceled');
  return Array.from({ length: count }, (_, index): Values => {
    const due = new Date(Date.parse(FIRST_DAY) + Math.floor((index * days) / count) * 86_400_000);
    return {
      ...(base[index % base.length] as Values), // an order row is texts and numbers
      order: `N${index}`,
      quantity: times * (QUANTITIES[index % QUANTITIES.length] ?? 1),
      moldsInUse: 1,
      due: due.toISOString().slice(0, 10),
      status: 'accepted',
    };
  });
}
