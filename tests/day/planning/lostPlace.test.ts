import { expect, test } from 'vitest';
import { planDay } from '../../../shared/day/planning/planDay.ts';
import { replanDay } from '../../../shared/day/planning/replanDay.ts';
import { weekHours } from '../../../shared/day/planning/weekHours.ts';
import { demoDay, HOUR, weekOrders } from './demoDay.ts';

const EFFORT = { iterations: 20, seed: 3 };

test('a begun order that has no room left is left out with its reason; its ticks keep nobody from planning the others', () => {
  const hours = weekHours([{ from: 8 * HOUR, to: 17 * HOUR }], 1);
  const base = demoDay();
  const day = { ...base, people: base.people.map((person) => ({ ...person, hours })) };
  const orders = weekOrders(3, 1);
  const plan = planDay(day, orders, EFFORT);
  expect(plan.unplanned).toEqual([]);
  const now = 13.5 * HOUR;
  const ticks = orders.map(({ run }) => ({
    id: `${run.order} lay out`,
    startedAt: now - 600,
    finishedAt: now,
  }));
  const next = replanDay(day, orders, EFFORT, { plan, ticks, now });
  expect(next.unplanned.length).toBeGreaterThan(0);
  expect(next.orders.length + next.unplanned.length).toBe(orders.length);
  for (const { because } of next.unplanned) expect(because).not.toBe('');
  for (const { from, id } of next.entries)
    if (!id.endsWith('lay out')) expect(from, id).toBeGreaterThanOrEqual(now);
});
