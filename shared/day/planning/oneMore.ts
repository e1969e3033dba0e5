import type { SearchEffort } from '../../schedule/planSchedule.ts';
import { type DayPlan, planDay } from './planDay.ts';
import type { DayOrder, ShopDay } from './shopDay.ts';

/** What the same orders would be with one more of something, planned and not guessed. */
export interface OneMore {
  readonly kind: 'mold' | 'plate' | 'person';
  readonly name: string;
  /** How many: of a mold as many copies as a round takes */
  readonly count: number;
  /** Less weighted lateness [s], >= 0 */
  readonly lateness: number;
  /** Finished so much sooner [s], >= 0; only where the lateness does not grow */
  readonly finish: number;
  /** Orders that had no place and now have one */
  readonly alsoPlanned: readonly string[];
}

/**
 * One more set of the mold, one more of the plate and of the person with the highest loads: the day is planned again with each. A
 * plate comes with a circuit of its own, a person with the same hours and skills.
 * @param plan of the same day and orders
 */
export function oneMore(
  day: ShopDay,
  orders: readonly DayOrder[],
  effort: SearchEffort,
  plan: DayPlan,
): readonly OneMore[] {
  const like = new Map(plan.entries.map(({ id, from }) => [id, from]));
  return (['mold', 'plate', 'person'] as const).flatMap((kind) => {
    const busiest = plan.loads.find((load) => load.kind === kind);
    if (!busiest || busiest.load === 0) return [];
    const more = withOneMore(day, orders, { kind, name: busiest.name });
    const other = planDay(more.day, more.orders, { ...effort, like });
    const left = new Set(other.unplanned.map(({ order }) => order));
    const alsoPlanned = plan.unplanned.flatMap(({ order }) => (left.has(order) ? [] : [order]));
    const lateness = plan.cost.lateness - other.cost.lateness;
    const finish = plan.cost.finish - other.cost.finish;
    // More orders take longer: the two plans then do not compare.
    const compares = alsoPlanned.length === 0;
    return [
      {
        kind,
        name: busiest.name,
        count: more.count,
        lateness: compares ? Math.max(0, lateness) : 0,
        finish: compares && lateness >= 0 ? Math.max(0, finish) : 0,
        alsoPlanned,
      },
    ];
  });
}

export function withOneMore(
  day: ShopDay,
  orders: readonly DayOrder[],
  { kind, name }: Pick<OneMore, 'kind' | 'name'>,
): { readonly day: ShopDay; readonly orders: readonly DayOrder[]; readonly count: number } {
  const copy = `${name}, one more`;
  switch (kind) {
    case 'mold': {
      const inMold = orders.filter(({ run }) => run.mold === name);
      const count = Math.max(1, ...inMold.map(({ run }) => run.moldsInUse));
      const molds = day.molds.map((mold) =>
        mold.name === name ? { ...mold, owned: mold.owned + count } : mold,
      );
      return { day: { ...day, molds }, orders, count };
    }
    case 'person':
      return {
        day: {
          ...day,
          people: day.people.flatMap((one) =>
            one.name === name ? [one, { ...one, name: copy }] : [one],
          ),
        },
        orders,
        count: 1,
      };
    case 'plate':
      return {
        day: {
          ...day,
          plates: day.plates.flatMap((plate) => {
            if (plate.name !== name) return [plate];
            const { plug: _plug, ...free } = plate;
            return [plate, { ...free, name: copy }];
          }),
        },
        orders: orders.map((order) => {
          const { run } = order;
          const own = run.plate.kind === 'reachable' ? [run.plate.plate] : [];
          const plates = order.plates ?? own;
          return plates.includes(name) ? { ...order, plates: [...plates, copy] } : order;
        }),
        count: 1,
      };
  }
}
