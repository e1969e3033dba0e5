import type { DayResource, ResourceKind } from './dayResources.ts';
import type { DayTimetable } from './dayTimetable.ts';

/** How much of the time that decides the worst order a resource is at it. */
export interface ResourceLoad {
  readonly kind: ResourceKind;
  readonly name: string;
  /** Fraction */
  readonly load: number;
}

/** The order that is latest; where none is late, the last one finished. */
export function worstOrder({ orders }: Pick<DayTimetable, 'orders'>) {
  return orders.slice().sort((one, other) => other.late - one.late || other.finish - one.finish)[0];
}

/**
 * Loads in the critical part, highest first: of all the time from the first critical task to the end of the worst order.
 * load = share of the capacity that critical tasks take x their time / that time
 * @param critical tasks and holds that cannot wait
 */
export function dayLoads(
  table: Pick<DayTimetable, 'bars' | 'orders'>,
  resources: readonly DayResource[],
  critical: ReadonlySet<string>,
): readonly ResourceLoad[] {
  const end = worstOrder(table)?.finish ?? 0;
  const bars = table.bars.filter(({ id, from }) => critical.has(id) && from < end);
  const from = bars.reduce((least, bar) => Math.min(least, bar.from), Number.POSITIVE_INFINITY);
  const span = end - from;
  return resources
    .filter(({ kind }) => kind !== 'shop')
    .map(({ kind, name, capacity }) => {
      const used = bars
        .filter((bar) => bar.kind === kind && bar.name === name)
        .reduce((sum, bar) => sum + bar.amount * (Math.min(bar.to, end) - bar.from), 0);
      return { kind, name, load: span > 0 ? used / (capacity * span) : 0 };
    })
    .sort((one, other) => other.load - one.load);
}
