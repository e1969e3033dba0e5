import type { DayRules } from '../../book/settings/dayRules.ts';
import { type DayPart, joinParts } from './dayPart.ts';
import { personModes, resourceId } from './dayResources.ts';
import { dayTask } from './dayTask.ts';
import type { DayOrder, ShopDay } from './shopDay.ts';

/** Orders of the same colors that are due close together, earliest first. */
export function colorBatches(
  orders: readonly DayOrder[],
  rules: Pick<DayRules, 'batchWithin' | 'longestBatch'>,
): readonly (readonly DayOrder[])[] {
  const batches: DayOrder[][] = [];
  const byDue = orders.slice().sort((one, other) => compareDues(one, other));
  for (const order of byDue) {
    const same = batches.find((batch) => isOneBatch(batch, order, rules));
    if (same) same.push(order);
    else batches.push([order]);
  }
  return batches;
}

function compareDues(one: DayOrder, other: DayOrder): number {
  if (one.due === other.due) return 0;
  return (one.due ?? Number.POSITIVE_INFINITY) - (other.due ?? Number.POSITIVE_INFINITY);
}

function isOneBatch(
  batch: readonly DayOrder[],
  order: DayOrder,
  { batchWithin, longestBatch }: Pick<DayRules, 'batchWithin' | 'longestBatch'>,
): boolean {
  const [first] = batch;
  if (!first || colorsOf(first) !== colorsOf(order)) return false;
  const together = [...batch, order].reduce((sum, { run }) => sum + run.work.coloring, 0);
  if (together > longestBatch) return false;
  if (first.due === undefined || order.due === undefined) return first.due === order.due;
  return order.due - first.due <= batchWithin;
}

function colorsOf({ colors, run }: DayOrder): string {
  return colors ?? `${run.pattern} ${run.version}`;
}

/** Weighing and coloring, batch after batch at one bench, each with one clean-up behind it. */
export function colorTasks(day: ShopDay, orders: readonly DayOrder[]): DayPart {
  return joinParts(colorBatches(orders, day.rules).map((batch) => batchTasks(day, batch)));
}

function batchTasks(day: ShopDay, batch: readonly DayOrder[]): DayPart {
  const names = batch.map(({ run }) => run.order);
  const coloring = batch.map(({ run }) => dayTask(run.order, 'weigh and color'));
  const [first] = coloring;
  if (first === undefined) return joinParts([]);
  const wash = dayTask(names[0] ?? '', 'wash up');
  return {
    tasks: [
      ...batch.map(({ run, release = 0 }, place) => ({
        ...(coloring[place] ?? first),
        duration: Math.ceil(run.work.coloring),
        uses: [personModes(day, 'color')],
        release,
      })),
      { ...wash, duration: Math.ceil(day.rules.colorChange), uses: [personModes(day, 'color')] },
    ],
    links: [...coloring, wash].slice(1).map(({ id }, place) => ({
      before: coloring[place]?.id ?? first.id,
      after: id,
      most: day.rules.batchPause,
    })),
    holds: [
      {
        id: `color bench for ${names.join(', ')}`,
        order: names[0] ?? '',
        first: first.id,
        last: wash.id,
        modes: [[{ resource: resourceId('color bench'), amount: 1 }]],
      },
    ],
  };
}
