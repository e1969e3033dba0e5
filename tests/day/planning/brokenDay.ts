import { DAY_RULES } from '../../../shared/book/settings/dayRules.ts';
import type { DayBar, DayEntry } from '../../../shared/day/planning/dayTimetable.ts';
import type { DayPlan } from '../../../shared/day/planning/planDay.ts';
import type { DayOrder, ShopDay } from '../../../shared/day/planning/shopDay.ts';
import type { Span } from '../../../shared/schedule/schedulingTypes.ts';

/** Everything in a timetable that a shop could not do, in words; told from the timetable and the runs alone. */
export function brokenDay(
  day: ShopDay,
  orders: readonly DayOrder[],
  plan: DayPlan,
): readonly string[] {
  return [
    ...orders
      .filter(({ run }) => plan.orders.some(({ order }) => order === run.order))
      .flatMap((order) => brokenOrder(order, plan.entries)),
    ...day.people.flatMap(({ name, hours }) => {
      const bars = barsOf(plan, 'person', name);
      const out = bars.filter((bar) => !hours.some((open) => within(bar, open)));
      return [
        ...out.map(({ id }) => `${id} is outside the hours of ${name}`),
        ...over(bars, name, 100),
      ];
    }),
    ...day.plates.flatMap(({ name }) => over(barsOf(plan, 'plate', name), name, 1)),
    ...day.molds.flatMap(({ name, owned }) => over(barsOf(plan, 'mold', name), name, owned)),
    ...day.ovens.flatMap(({ name }) => over(barsOf(plan, 'oven', name), name, 1)),
    ...day.circuits.flatMap(({ name, watts }) => over(barsOf(plan, 'circuit', name), name, watts)),
    ...over(barsOf(plan, 'cups', ''), 'cups', day.cups),
    ...over(barsOf(plan, 'color bench', ''), 'color bench', 1),
  ];
}

function barsOf({ bars }: DayPlan, kind: DayBar['kind'], name: string) {
  return bars.filter((bar) => bar.kind === kind && bar.name === name);
}

function within(inner: Span, outer: Span): boolean {
  return outer.from <= inner.from && inner.to <= outer.to;
}

function over(bars: readonly DayBar[], name: string, capacity: number): readonly string[] {
  return bars.flatMap(({ from, id }) => {
    const used = bars
      .filter((bar) => bar.from <= from && from < bar.to)
      .reduce((sum, { amount }) => sum + amount, 0);
    return used > capacity ? [`${name} bears ${used} at ${id}`] : [];
  });
}

function brokenOrder({ run, release = 0 }: DayOrder, all: readonly DayEntry[]): readonly string[] {
  const own = all.filter(({ order }) => order === run.order);
  const found: string[] = [];
  const one = (what: DayEntry['what'], round?: number, layer?: string): DayEntry => {
    const entry = own.find(
      (other) => other.what === what && other.round === round && other.layer === layer,
    );
    if (!entry) throw new Error(`${run.order} has no ${what}`);
    return entry;
  };
  const must = (isSo: boolean, words: string) => {
    if (!isSo) found.push(`${run.order}: ${words}`);
  };
  const [layOut, color, pack, clean] = [
    one('lay out'),
    one('weigh and color'),
    one('pack'),
    one('clean'),
  ];
  must(layOut.from >= release && color.from >= release, 'before its release');
  for (let round = 1; round <= run.pieces.rounds; round += 1) {
    const [set, heat] = [one('set on the plate', round), one('heat', round)];
    must(set.from >= layOut.to && heat.from === set.to, `round ${round} is heated out of turn`);
    run.layers.forEach(({ layer, window, run: pass }, index) => {
      const [cook, pour] = [one('cook', round, layer), one('pour', round, layer)];
      must(cook.from >= color.to, `${layer} is cooked before it is colored`);
      const stands = pour.from - cook.to;
      must(stands >= 0 && stands <= DAY_RULES.cupWait, `${layer} stands ${stands}`);
      const below = run.layers[index - 1];
      if (!below) {
        const waits = pour.from - heat.to;
        must(waits >= 300 && waits <= 300 + DAY_RULES.hotWait, `round ${round} waits hot ${waits}`);
        return;
      }
      const gap = pour.from - one('pour', round, below.layer).from;
      const planned = pass.firstAt - below.run.firstAt;
      must(gap >= planned, `${layer} follows too soon`);
      const longest = gap + Math.max(0, (pass.wait?.longest ?? planned) - planned);
      if (window?.kind === 'between') must(longest <= window.latest, `${layer} is too late`);
    });
    const last = run.layers[run.layers.length - 1]?.layer;
    const [topOff, cool, demold] = [
      one('top off', round),
      one('cool', round),
      one('demold', round),
    ];
    must(topOff.from === one('pour', round, last).to, 'topped off late');
    must(cool.from === topOff.to && demold.from >= cool.to, `round ${round} is demolded hot`);
    const inspect = one('inspect', round);
    must(inspect.from >= demold.to && pack.from >= inspect.to, 'inspected or packed too soon');
    must(clean.from >= demold.to, 'cleaned too soon');
  }
  return found;
}
