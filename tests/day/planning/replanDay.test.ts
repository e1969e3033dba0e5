import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { DayTick } from '../../../shared/day/planning/begunTasks.ts';
import { planDay } from '../../../shared/day/planning/planDay.ts';
import { replanDay } from '../../../shared/day/planning/replanDay.ts';
import { errorText } from '../../heat/errorText.ts';
import { brokenDay } from './brokenDay.ts';
import { demoDay, demoRun, HOUR, weekOrders } from './demoDay.ts';

const EFFORT = { iterations: 20, seed: 3 };
const DAY = demoDay();
const ORDERS = weekOrders(3, 1);
const PLAN = planDay(DAY, ORDERS, EFFORT);

/** Ticks of all that the plan has finished by then, each so much later than planned. */
function ticksUntil(now: number, late: (id: string) => number): readonly DayTick[] {
  return PLAN.entries.flatMap(({ id, what, from, to }): readonly DayTick[] => {
    if (isPassive({ what })) return [];
    const by = late(id);
    if (to + by <= now) return [{ id, startedAt: from + by, finishedAt: to + by }];
    return from + by <= now ? [{ id, startedAt: from + by }] : [];
  });
}

/** Nobody ticks it: it goes on by itself. */
function isPassive({ what }: Pick<(typeof PLAN.entries)[number], 'what'>): boolean {
  return what === 'heat' || what === 'cool';
}

function entry(plan: Pick<typeof PLAN, 'entries'>, id: string) {
  const found = plan.entries.find((one) => one.id === id);
  if (!found) throw new Error(`no ${id}`);
  return found;
}

describe('a day as it was planned', () => {
  test('ticks in time change nothing', () => {
    const now = 11 * HOUR;
    const next = replanDay(DAY, ORDERS, EFFORT, {
      plan: PLAN,
      ticks: ticksUntil(now, () => 0),
      now,
    });
    expect(next.suffers).toEqual([]);
    expect(next.brokenWindows).toEqual([]);
    expect(next.cost.lateness).toBe(PLAN.cost.lateness);
    expect(next.cost.finish).toBeLessThanOrEqual(PLAN.cost.finish);
    for (const { id, from, to, person } of PLAN.entries.filter((one) => one.to <= now))
      expect(entry(next, id)).toMatchObject({ from, to, ...(person && { person }) });
  });

  test('nothing ticked yet and the day not begun: no later than planned', () => {
    const next = replanDay(DAY, ORDERS, EFFORT, { plan: PLAN, ticks: [], now: 0 });
    expect(next.cost.lateness).toBeLessThanOrEqual(PLAN.cost.lateness);
    expect(next.cost.finish).toBeLessThanOrEqual(PLAN.cost.finish);
    expect(next.assumed).toEqual([]);
    const same = next.entries.filter(({ id, person }) => entry(PLAN, id).person === person);
    expect(same.length).toBeGreaterThan(0.8 * next.entries.length); // people keep their tasks
  });
});

describe('what has happened', () => {
  const one = [{ run: demoRun('2041'), due: 14 * HOUR }];
  const plan = planDay(DAY, one, EFFORT);
  const replan = (ticks: readonly DayTick[], now: number) =>
    replanDay(DAY, one, EFFORT, { plan, ticks, now });

  test('a late start moves the rest by as much, and tells which order suffers', () => {
    const now = 12 * HOUR;
    const next = replan([], now);
    const [suffering] = next.suffers;
    const finish = next.orders[0]?.finish ?? 0;
    expect(suffering).toEqual({ order: '2041', late: finish - 14 * HOUR, wasLate: 0 });
    expect(Math.min(...next.entries.map(({ from }) => from))).toBe(now);
  });

  test('what a ticked task had to wait for is taken as done, and said', () => {
    const pour = entry(plan, '2041 pour belly, round 1');
    const tick = { id: pour.id, startedAt: pour.from, finishedAt: pour.to };
    const next = replan([tick], pour.to);
    expect(next.assumed).toEqual(
      expect.arrayContaining([
        '2041 lay out',
        '2041 weigh and color',
        '2041 set on the plate, round 1',
        '2041 heat, round 1',
        '2041 cook belly, round 1',
      ]),
    );
    expect(next.assumed).not.toContain('2041 cook back, round 1');
  });

  test('who ticked it did it', () => {
    const layOut = entry(plan, '2041 lay out');
    const who = ['Ada', 'Ben', 'Cleo'].find((name) => name !== layOut.person) ?? '';
    const tick = { id: layOut.id, startedAt: layOut.from, finishedAt: layOut.to, who };
    expect(entry(replan([tick], layOut.to), layOut.id).person).toBe(who);
  });

  test('a task that goes on past its time is taken as just about over', () => {
    const color = entry(plan, '2041 weigh and color');
    const now = color.to + 1800;
    const next = replan([{ id: color.id, startedAt: color.from }], now);
    expect(entry(next, color.id)).toMatchObject({ from: color.from, to: now });
    expect(entry(next, '2041 cook belly, round 1').from).toBeGreaterThanOrEqual(now);
  });

  test('a layer that came too late is reported by as much, the rest of the day is planned', () => {
    const belly = entry(plan, '2041 pour belly, round 1');
    // The window closes at 400 s; the last cavity waits 10 s more than the first.
    const startedAt = belly.from + 390 + 45;
    const ticks = [
      { id: belly.id, startedAt: belly.from, finishedAt: belly.to },
      { id: '2041 pour back, round 1', startedAt },
    ];
    const next = replan(ticks, startedAt);
    expect(next.brokenWindows).toEqual([
      { before: belly.id, after: '2041 pour back, round 1', late: 45 },
    ]);
    expect(next.unplanned).toEqual([]);
  });

  test('a layer that can no longer come in time is reported before it is poured', () => {
    const belly = entry(plan, '2041 pour belly, round 1');
    const tick = { id: belly.id, startedAt: belly.from, finishedAt: belly.to };
    const next = replan([tick], belly.from + 390 + 600);
    expect(next.brokenWindows).toContainEqual({
      before: belly.id,
      after: '2041 pour back, round 1',
      late: expect.any(Number),
    });
    expect(next.brokenWindows[0]?.late).toBeGreaterThanOrEqual(600);
    expect(next.unplanned).toEqual([]);
  });
});

test('a day replayed with two delays: nothing before now, nothing over what there is, both dues told', () => {
  const at = (id: string, by: number) => ({ id, by });
  const first = at(PLAN.entries.find(({ what }) => what === 'weigh and color')?.id ?? '', 40 * 60);
  const now = entry(PLAN, first.id).to + first.by;
  const ticks = ticksUntil(now, (id) => (id === first.id ? first.by : 0));
  const once = replanDay(DAY, ORDERS, EFFORT, { plan: PLAN, ticks, now });
  expect(once.entries.filter((one) => one.from < now).map(({ id }) => id)).toEqual(
    expect.arrayContaining(ticks.filter(({ startedAt }) => startedAt < now).map(({ id }) => id)),
  );
  const begun = new Set([...ticks.map(({ id }) => id), ...once.assumed]);
  expect(
    once.entries.filter((one) => !begun.has(one.id) && !isPassive(one) && one.from < now),
  ).toEqual([]);
  // Then a mold takes an hour longer to cool than planned: nobody demolds it before.
  const cool = once.entries.find((one) => one.what === 'cool' && one.from >= now);
  const demold = once.entries.find(
    (one) => one.what === 'demold' && one.order === cool?.order && one.round === cool?.round,
  );
  if (!demold) throw new Error('something is demolded');
  const later = demold.from + HOUR;
  const more: DayTick[] = [];
  for (const { id, what, from, to } of once.entries) {
    if (isPassive({ what })) continue;
    if (id !== demold.id && to <= demold.from) more.push({ id, startedAt: from, finishedAt: to });
  }
  more.push({ id: demold.id, startedAt: later });
  const twice = replanDay(DAY, ORDERS, EFFORT, { plan: once, ticks: more, now: later });
  expect(entry(twice, demold.id).from).toBe(later);
  const ticked = new Set([...more.map(({ id }) => id), ...twice.assumed]);
  expect(
    twice.entries.filter((one) => !ticked.has(one.id) && !isPassive(one) && one.from < later),
  ).toEqual([]);
  for (const { order, late, wasLate } of twice.suffers) {
    expect(late).toBe(twice.orders.find((one) => one.order === order)?.late);
    expect(wasLate).toBe(once.orders.find((one) => one.order === order)?.late);
    expect(late).toBeGreaterThan(wasLate);
  }
  expect(twice.cost.finish).toBeGreaterThanOrEqual(once.cost.finish);
});

test('any moment, any delay: no resource over capacity, no window broken by the planner', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 8 * HOUR, max: 13 * HOUR }),
      fc.integer({ min: 0, max: 600 }),
      (now, by) => {
        // All of the day by so much later: whatever was in step stays in step.
        const ticks = ticksUntil(now, () => by);
        const next = replanDay(DAY, ORDERS, { iterations: 2, seed: 1 }, { plan: PLAN, ticks, now });
        const moved = brokenDay(DAY, ORDERS, next).filter(
          (words) => !/outside the hours|bears|waits hot|stands|too late|topped off/.test(words),
        );
        expect(moved).toEqual([]);
      },
    ),
    { numRuns: 40 },
  );
});

describe('refused', () => {
  const replan = (tick: DayTick, now = 9 * HOUR) =>
    errorText(() => replanDay(DAY, ORDERS, EFFORT, { plan: PLAN, ticks: [tick], now }));
  const id = PLAN.entries[0]?.id ?? '';

  test.each<[DayTick, string]>([
    [{ id: 'tea', startedAt: 0 }, 'ticked task must be listed in the tasks of the day, got "tea"'],
    [{ id, startedAt: 10 * HOUR }, `start of ${id} must be at most now (32400 s), got 36000 s`],
    [
      { id, startedAt: 8 * HOUR, finishedAt: 7 * HOUR },
      `finish of ${id} must be at least its start (28800 s), got 25200 s`,
    ],
  ])('%o', (tick, text) => {
    expect(replan(tick)).toBe(text);
  });
});
