import { describe, expect, test } from 'vitest';
import { planDay } from '../../../shared/day/planning/planDay.ts';
import type { DayOrder, ShopDay } from '../../../shared/day/planning/shopDay.ts';
import { savingChanges } from '../../../shared/day/shop/savingChanges.ts';
import { DAY, demoDay, demoRun, HOUR } from '../planning/demoDay.ts';

const EFFORT = { iterations: 20, seed: 3 };
const PLANNER = (day: ShopDay, orders: readonly DayOrder[]) => planDay(day, orders, EFFORT);

function changesFor(day: ShopDay, orders: readonly DayOrder[], packedBefore = 0) {
  const plan = PLANNER(day, orders);
  const before = { day, orders, plan, firstDay: '2026-11-30', packedBefore };
  return { plan, changes: savingChanges(before, PLANNER) };
}

const RUN = demoRun('1');

describe('the smallest change that saves a late order', () => {
  test('nothing where nothing is late', () => {
    expect(changesFor(demoDay(), [{ run: RUN, due: 17 * HOUR }]).changes).toEqual([]);
  });

  test('a little longer, when the run ends just after hours', () => {
    // Due on the first day; the shop closes half an hour before it could be packed.
    const { plan } = changesFor(demoDay(), [{ run: RUN }]);
    const packed = plan.orders[0]?.finish ?? 0;
    const people = demoDay().people.map((one) => ({
      ...one,
      hours: [
        { from: 8 * HOUR, to: packed - 900 },
        { from: DAY + 8 * HOUR, to: DAY + 17 * HOUR },
      ],
    }));
    const { changes } = changesFor(demoDay({ people }), [{ run: RUN, due: DAY }]);
    expect(changes).toEqual([{ order: '1', change: { kind: 'longer', by: 1800 } }]);
  });

  test('one more mold, when two orders wait for the same', () => {
    const orders = ['1', '2'].map((name) => ({ run: demoRun(name, { mold: 'Grub 2 in' }) }));
    const day = demoDay();
    const together = { ...day, molds: day.molds.map((mold) => ({ ...mold, owned: 2 })) };
    const best = Math.max(...PLANNER(together, orders).orders.map(({ finish }) => finish));
    const dues = orders.map((order) => ({ ...order, due: best + 300 }));
    const { changes } = changesFor(day, dues);
    expect(changes).toContainEqual({
      order: expect.any(String),
      change: { kind: 'one more', of: 'mold', name: 'Grub 2 in', count: 1 },
    });
  });

  test.each([
    { colors: 'other colors', pattern: 'Two' },
    { colors: 'the same colors, weighed after it', pattern: 'One' },
  ])(
    'first, at the cost of another of $colors, when one mold serves two and no more is to be had',
    ({ pattern }) => {
      const day = demoDay();
      const patterns = ['One', pattern];
      const work = { ...RUN.work, coloring: HOUR };
      const runs = patterns.map((own, place) =>
        demoRun(`${place + 1}`, { mold: 'Grub 2 in', pattern: own, work }),
      );
      const alone = PLANNER(day, [{ run: demoRun('1', { mold: 'Grub 2 in', work }) }]);
      const due = (alone.orders[0]?.finish ?? 0) + 60;
      // Its weight keeps the second in front; the first could be in its place.
      const orders = runs.map((run, place) => ({ run, due: due - place, weight: 1 + 49 * place }));
      const { plan } = changesFor(day, orders);
      expect(plan.orders.map(({ late }) => late > 0)).toEqual([true, false]);
      // Hours and purchases are taken away: a planner that has only the order of things to change.
      const before = { day, orders, plan, firstDay: '2026-11-30', packedBefore: 0 };
      const changes = savingChanges(before, (changed, others) =>
        PLANNER({ ...day, rules: changed.rules }, others),
      );
      expect(changes).toEqual([{ order: '1', change: { kind: 'first', later: ['2'] } }]);
    },
  );

  test('a change that makes another order later does not count', () => {
    const outcomes = (lates: readonly number[]) => ({
      loads: [],
      orders: lates.map((late, place) => ({ order: `${place + 1}`, finish: 2 * DAY, late })),
    });
    const orders = ['1', '2'].map((name) => ({ run: demoRun(name), due: HOUR }));
    const before = { orders, firstDay: '2026-11-30', packedBefore: 0 };
    const found = (lates: readonly number[]) =>
      savingChanges({ ...before, day: demoDay(), plan: outcomes([60, 0]) }, (_, planned) =>
        outcomes(planned.some(({ weight }) => weight !== undefined) ? [30, 0] : lates),
      ).map(({ change }) => change);
    expect(found([0, 0])).toEqual([{ kind: 'longer', by: 1800 }]);
    expect(found([0, 1])).toEqual([{ kind: 'due', on: '2026-12-01' }]);
  });

  test('another due date, shipping days included, when nothing helps', () => {
    const { plan, changes } = changesFor(demoDay(), [{ run: RUN, due: HOUR }], 3);
    expect(plan.orders[0]?.finish).toBeLessThan(DAY);
    expect(changes).toEqual([{ order: '1', change: { kind: 'due', on: '2026-12-03' } }]);
  });
});
