import type { DayBook } from '../../book/book.ts';
import { indexBook, nameKey } from '../../book/bookIndex.ts';
import { daysBetween } from '../../book/reading/daysBetween.ts';
import type { PlateRecord } from '../../book/tables.ts';
import { planRow } from '../../plan/planOrder.ts';
import type { OrderPlan } from '../../plan/planTypes.ts';
import type { DayOrder } from '../planning/shopDay.ts';
import type { DaysAsked } from './daysAsked.ts';

const DAY = 86_400;

/** Statuses of orders that are still to be poured. */
const OPEN = new Set(['accepted', 'planned']);

/** An order that cannot be planned, and why. */
export interface LeftOut {
  readonly order: string;
  readonly because: string;
}

export interface DayOrders {
  readonly orders: readonly DayOrder[];
  /** The plan of each */
  readonly runs: readonly OrderPlan[];
  readonly leftOut: readonly LeftOut[];
}

/** Orders accepted or planned that nobody has poured yet, by their due dates; those without one last. */
export function openOrders({ orders }: Pick<DayBook, 'orders'>): readonly string[] {
  const dueOf = ({ due = '9' }: { readonly due?: string | undefined }) => due;
  return orders
    .filter(({ record }) => record.order !== undefined && OPEN.has(record.status ?? ''))
    .slice()
    .sort((one, other) => (dueOf(one.record) < dueOf(other.record) ? -1 : 1))
    .map(({ record }) => record.order ?? '');
}

/**
 * Orders as the planner takes them: their plans, due at the end of the last day on which they may be packed, on their plate or one
 * that heats alike, colors told by the materials in them.
 */
export function dayOrders(
  book: DayBook,
  names: readonly string[],
  { firstDay }: DaysAsked,
): DayOrders {
  const index = indexBook(book);
  const orders: DayOrder[] = [];
  const runs: OrderPlan[] = [];
  const leftOut: LeftOut[] = [];
  for (const name of new Set(names.map((one) => one.trim()))) {
    const row = index.orders.get(nameKey(name));
    const run = row && planRow(index, row);
    if (run?.kind !== 'plan') {
      leftOut.push({ order: name, because: run?.missing[0]?.text ?? 'Orders does not list it' });
      continue;
    }
    const { due } = run;
    const lastDay =
      due === undefined ? undefined : daysBetween(firstDay, due) - book.shop.packedBefore;
    runs.push(run);
    orders.push({
      run,
      ...(lastDay !== undefined && { due: (lastDay + 1) * DAY }),
      plates: platesAlike(book, run, row?.record.plate !== undefined),
      colors: colorsOf(run),
    });
  }
  return { orders, runs, leftOut };
}

/** The plate of the plan, and where the order names none, all that heat like it. */
function platesAlike({ plates }: DayBook, { plate }: OrderPlan, isNamed: boolean): string[] {
  if (plate.kind === 'unreachable') return [];
  const own = plates.find(({ record }) => nameKey(record.plate) === nameKey(plate.plate));
  if (isNamed || own === undefined) return [plate.plate];
  const key = heatsLike(own.record);
  const others = plates.filter(({ record }) => heatsLike(record) === key);
  return others.flatMap(({ record }) => record.plate ?? []);
}

function heatsLike(plate: PlateRecord): string {
  const { kind, watts, lowestSetting, highestSetting, warmUp, dialOffset } = plate;
  const { contactConductance, deadBand, lid = 'none', heatLoss } = plate;
  return nameKey(
    ...[kind, watts, lowestSetting, highestSetting, warmUp, dialOffset],
    ...[contactConductance, deadBand, lid, heatLoss],
  );
}

/** Bases and colorants of all layers: orders that share them need no wash-up in between. */
function colorsOf({ layers }: OrderPlan): string {
  const materials = layers.flatMap(({ base, doses }) => [
    base,
    ...doses.map(({ material }) => material),
  ]);
  return [...new Set(materials)].sort().join('\n');
}
