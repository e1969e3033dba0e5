import { describe, expect, test } from 'vitest';
import { pourDay } from '../../../shared/day/shop/pourDay.ts';
import { replannedDay } from '../../../shared/day/shop/replannedDay.ts';
import { demoBook } from '../../../templates/demoShop/demoBook.ts';
import { HOUR } from '../planning/demoDay.ts';

const WEEK = { firstDay: '2026-11-30', days: 5, orders: [] };
const BOOK = demoBook();
const DAY = pourDay(BOOK, WEEK);

describe('a week of the demo shop', () => {
  test('every open order is packed in time, near the best there is', () => {
    const { plan, runs, leftOut, assumptions, changes } = DAY;
    expect(runs.map(({ order }) => order)).toEqual(['1007', '1008', '1009', '1010']);
    expect(plan.orders.map(({ late }) => late)).toEqual([0, 0, 0, 0]);
    expect([leftOut, assumptions, plan.unplanned, changes]).toEqual([[], [], [], []]);
    expect(plan.cost.finish - plan.bound.finish).toBeLessThan(HOUR);
  });

  test('the bottleneck is the mold of two orders, and one more set saves most of a day', () => {
    expect(DAY.plan.loads[0]).toMatchObject({ kind: 'mold', name: 'Round stick 5 in' });
    const [mold, plate, person] = DAY.saves;
    expect(mold).toMatchObject({ kind: 'mold', name: 'Round stick 5 in', count: 2, lateness: 0 });
    expect(mold?.finish).toBeGreaterThan(6 * HOUR);
    expect(plate?.finish).toBeLessThan(HOUR);
    expect(person?.finish).toBeLessThan(HOUR);
  });

  test('the same book gives the same plan', () => {
    expect(pourDay(BOOK, WEEK).plan.entries).toEqual(DAY.plan.entries);
  });

  test('one day is too short for any of them, and each says so', () => {
    const { plan, saves } = pourDay(BOOK, { ...WEEK, days: 1 });
    expect(plan.orders).toEqual([]);
    expect(saves).toEqual([]);
    expect(plan.unplanned.map(({ order }) => order).sort()).toEqual([
      '1007',
      '1008',
      '1009',
      '1010',
    ]);
    for (const { order, because } of plan.unplanned)
      expect(because).toMatch(
        new RegExp(`^.*${order} .* finds no room in the hours|at no time free`),
      );
  });
});

test('a plan that is followed in time stays; an afternoon lost shows in what is packed when', () => {
  const asked = { ...WEEK, orders: ['1007', '1009'] };
  const { plan } = pourDay(BOOK, asked);
  const followed = { entries: plan.entries, orders: plan.orders, unplanned: plan.unplanned };
  const now = 12 * HOUR;
  const done = plan.entries.filter(
    ({ to, what }) => to <= now && what !== 'heat' && what !== 'cool',
  );
  const ticks = done.map(({ id, from, to }) => ({ id, startedAt: from, finishedAt: to }));
  const same = replannedDay(BOOK, asked, { followed, ticks, now });
  expect(same.plan.cost.finish).toBeLessThanOrEqual(plan.cost.finish + HOUR);
  expect(same.plan.suffers).toEqual([]);
  const lost = replannedDay(BOOK, asked, { followed, ticks, now: 16 * HOUR });
  expect(lost.plan.cost.finish).toBeGreaterThan(same.plan.cost.finish);
  const before = lost.plan.entries.filter(
    ({ id, from }) => from < lost.now && !lost.plan.assumed.includes(id),
  );
  for (const { id, what } of before)
    expect(what === 'heat' || what === 'cool' || ticks.some((tick) => tick.id === id)).toBe(true);
});
