import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DAY_RULES } from '../../../shared/book/settings/dayRules.ts';
import { colorBatches } from '../../../shared/day/planning/colorTasks.ts';
import { layerWait } from '../../../shared/day/planning/layerWait.ts';
import { oneMore } from '../../../shared/day/planning/oneMore.ts';
import { planDay } from '../../../shared/day/planning/planDay.ts';
import type { PlannedRun, RunLayer } from '../../../shared/day/planning/plannedRun.ts';
import type { DayOrder, ShopDay } from '../../../shared/day/planning/shopDay.ts';
import { planOrder } from '../../../shared/plan/planOrder.ts';
import { demoBook } from '../../book/demoBook.ts';
import { errorText } from '../../heat/errorText.ts';
import { brokenDay } from './brokenDay.ts';
import { DAY, demoDay, demoRun, HOUR, weekOrders } from './demoDay.ts';

const EFFORT = { iterations: 40, seed: 3 };
const ONE_ROUND: Partial<PlannedRun> = {
  pieces: { toPour: 16, rounds: 1, perRound: 16 },
  layers: [{ layer: 'body', cups: 1, run: { firstAt: 0, passTime: 128 } }],
};
/** One person who does everything, from eight, without a break. */
const ALONE: ShopDay['people'] = [
  {
    name: 'Ada',
    skills: ['color', 'cook', 'pour', 'finish'],
    hours: [{ from: 8 * HOUR, to: 20 * HOUR }],
  },
];

function layers(window: RunLayer['window'], longest: number): [RunLayer, RunLayer] {
  const pass = { firstAt: 150.5, passTime: 100, wait: { shortest: 150.5, longest } };
  return [
    { layer: 'belly', cups: 1, run: { firstAt: 0, passTime: 100 } },
    { layer: 'back', cups: 1, run: pass, ...(window && { window }) },
  ];
}

describe('a day of one order', () => {
  test('by hand: one person, one round of one layer', () => {
    const plan = planDay(demoDay({ people: ALONE }), [{ run: demoRun('2041', ONE_ROUND) }], EFFORT);
    const minutes = plan.entries.map(({ id, from, to }) => [id, from - 8 * HOUR, to - 8 * HOUR]);
    // Heat-up of 1831 s (1830.2 up), a tenth of it at hand: 184 s. Cup: 130 + 5 x 20 + 60 = 290 s.
    // First pour: heated, and 300 s to spare; the bench is washed before, within 900 s. Finishing 1000 s: 0.4, 0.4, 0.2.
    expect(Object.fromEntries(minutes.map(([id, from, to]) => [id, [from, to]]))).toMatchObject({
      '2041 lay out': [0, 600],
      '2041 set on the plate, round 1': [600, 784],
      '2041 heat, round 1': [784, 784 + 1647],
      '2041 weigh and color': [784, 1984],
      '2041 cook body, round 1': [1984, 1984 + 290],
      '2041 wash up': [1984 + 290, 2874],
      '2041 pour body, round 1': [2874, 3002],
      '2041 top off, round 1': [3002, 3050],
      '2041 cool, round 1': [3050, 5450],
      '2041 demold, round 1': [5450, 5850],
      '2041 inspect, round 1': [5850, 6250],
      '2041 clean': [6250, 6850],
      '2041 pack': [6850, 7050],
    });
    expect(plan.cost).toEqual({ lateness: 0, finish: 8 * HOUR + 7050 });
    expect(plan.bound.finish).toBeLessThanOrEqual(plan.cost.finish);
    expect(plan.orders).toEqual([{ order: '2041', finish: 8 * HOUR + 7050, late: 0 }]);
  });

  test('whoever pours, the plate and the mold stand beside the pour', () => {
    const plan = planDay(demoDay(), [{ run: demoRun('2041') }], EFFORT);
    expect(plan.entries.find(({ id }) => id === '2041 pour back, round 2')).toMatchObject({
      what: 'pour',
      layer: 'back',
      round: 2,
      person: expect.stringMatching(/^(Ada|Ben)$/),
      plate: 'Long griddle',
      mold: 'Ribbed 4 in',
    });
    const cools = plan.entries.filter(({ what }) => what === 'cool');
    expect(cools.map(({ plate, person }) => [plate, person])).toEqual(
      new Array(3).fill([undefined, undefined]),
    );
  });

  test('the plan of an order in the book is planned as it stands', () => {
    const run = planOrder(demoBook(), '2041');
    if (run.kind !== 'plan') throw new Error('2041 has a plan');
    const orders = [{ run, due: 2 * DAY }];
    const plan = planDay(demoDay(), orders, EFFORT);
    expect(plan.unplanned).toEqual([]);
    expect(plan.entries.filter(({ what }) => what === 'pour')).toHaveLength(
      run.pieces.rounds * run.layers.length,
    );
  });

  test('late by the time that is missing, weighted', () => {
    const order = { run: demoRun('2041', ONE_ROUND), due: 9 * HOUR, weight: 2 };
    const plan = planDay(demoDay({ people: ALONE }), [order], EFFORT);
    expect(plan.orders[0]).toEqual({ order: '2041', due: 9 * HOUR, finish: 35250, late: 2850 }); // packed before cleaning: 8 h + 6450 s
    expect(plan.cost.lateness).toBe(2 * 2850);
  });
});

describe('what cannot be planned says why, the rest is planned', () => {
  const [belly, back] = layers({ kind: 'between', earliest: 90, latest: 155 }, 160.5);
  test.each<{ name: string; change: Partial<PlannedRun>; day?: Partial<ShopDay>; because: string }>(
    [
      {
        name: 'plate too cool',
        change: { plate: { kind: 'unreachable', because: 'the plate is too cool' } },
        because: 'the plate is too cool',
      },
      {
        name: 'no window',
        change: { layers: layers({ kind: 'none', because: 'it stays soft' }, 0) },
        because: 'back cannot follow belly: it stays soft',
      },
      {
        name: 'a window that closes before the last cavity',
        change: { layers: [belly, back] },
        because: 'back reaches the last cavity 6 s after its latest moment on belly',
      },
      { name: 'mold', change: { mold: 'Frog' }, because: 'the shop has no mold Frog' },
      {
        name: 'copies',
        change: { moldsInUse: 3 },
        because: 'a round takes 3 of Ribbed 4 in, the shop has 2',
      },
      {
        name: 'plate too small',
        change: {},
        day: { plates: [{ name: 'Long griddle', area: 0.02, rounds: 'one' }] },
        because: 'no plate that it may be heated on holds 1 of Ribbed 4 in',
      },
      { name: 'oven', change: {}, day: { ovens: [] }, because: 'the shop has no oven' },
      {
        name: 'skill',
        change: {},
        day: { people: [{ name: 'Ada', skills: ['color', 'cook', 'finish'], hours: [] }] },
        because: 'nobody is there to pour',
      },
      {
        name: 'cups',
        change: { layers: [{ layer: 'body', cups: 12, run: { firstAt: 0, passTime: 128 } }] },
        day: { cups: 3 },
        because: 'a layer takes 4 cups at once, the shop has 3',
      },
      {
        name: 'hours too short for a run',
        change: ONE_ROUND,
        day: { people: ALONE.map((one) => ({ ...one, hours: [{ from: 0, to: HOUR }] })) },
        because: '2041 set on the plate, round 1 finds no room in the hours that are open',
      },
      {
        name: 'one pair of hands for a window that needs cups cooked meanwhile',
        change: ONE_ROUND,
        day: { rules: { ...DAY_RULES, cupWait: 0, hotWait: 0, cookAttended: 1 }, cups: 1 },
        because: 'was planned',
      },
    ],
  )('$name', ({ change, day, because }) => {
    const orders = [{ run: demoRun('2041', change) }];
    const { unplanned, entries } = planDay(demoDay(day), orders, EFFORT);
    if (because === 'was planned') expect(unplanned).toEqual([]);
    else {
      expect(unplanned).toEqual([{ order: '2041', because }]);
      expect(entries).toEqual([]);
    }
  });

  test('an order that finds no room leaves the others their day', () => {
    const long = demoRun('9', { work: { ...demoRun('9').work, coloring: 10 * HOUR } });
    const plan = planDay(demoDay(), [{ run: demoRun('2041') }, { run: long }], EFFORT);
    const because = '9 weigh and color finds no room in the hours that are open';
    expect(plan.unplanned).toEqual([{ order: '9', because }]);
    expect(plan.orders.map(({ order }) => order)).toEqual(['2041']);
  });
});

describe('waits between passes', () => {
  test('whole seconds inside the window, the cavity that waits longest counts', () => {
    const [belly, back] = layers({ kind: 'between', earliest: 90, latest: 400.7 }, 160.5);
    expect(layerWait(belly, back)).toEqual({ kind: 'wait', least: 151, most: 390 }); // 400.7 - 10
    expect(layerWait(...layers({ kind: 'from', earliest: 90 }, 160.5))).toEqual({
      kind: 'wait',
      least: 151,
    });
  });
});

describe('colors', () => {
  const order = (name: string, due: number | undefined, pattern = 'Creek minnow'): DayOrder => ({
    run: demoRun(name, { pattern }),
    ...(due !== undefined && { due }),
  });
  const names = (orders: readonly DayOrder[]) =>
    colorBatches(orders, DAY_RULES).map((batch) => batch.map(({ run }) => run.order));

  test('one batch for the same colors due within a day, earliest first', () => {
    const orders = [
      order('c', 3 * DAY),
      order('a', DAY),
      order('b', 2 * DAY),
      order('d', DAY, 'Two'),
    ];
    expect(names(orders)).toEqual([['a', 'b'], ['d'], ['c']]);
    expect(names([order('a', undefined), order('b', DAY), order('c', undefined)])).toEqual([
      ['b'],
      ['a', 'c'],
    ]);
  });

  test('a batch is no longer than two hours', () => {
    const many = Array.from({ length: 7 }, (_, place) => order(String(place), DAY));
    expect(names(many).map(({ length }) => length)).toEqual([6, 1]); // 20 min each
  });

  test('a shared clean-up saves its time', () => {
    const two = (pattern: string) => [order('a', DAY), order('b', DAY, pattern)];
    const washes = (orders: readonly DayOrder[]) =>
      planDay(demoDay(), orders, EFFORT).entries.filter(({ what }) => what === 'wash up').length;
    expect(washes(two('Creek minnow'))).toBe(1);
    expect(washes(two('Two tone'))).toBe(2);
  });
});

describe('any day', () => {
  const anyOrder = fc.record({
    mold: fc.constantFrom('Ribbed 4 in', 'Paddle 3 in', 'Grub 2 in'),
    rounds: fc.integer({ min: 1, max: 3 }),
    spare: fc.option(fc.integer({ min: 0, max: 300 }), { nil: undefined }),
    firstAt: fc.integer({ min: 1280, max: 4000 }).map((tenths) => tenths / 10),
    cups: fc.integer({ min: 1, max: 6 }),
    due: fc.option(fc.integer({ min: 10 * HOUR, max: 2 * DAY }), { nil: undefined }),
    pattern: fc.constantFrom('One', 'Two'),
    release: fc.constantFrom(0, 10 * HOUR),
  });
  const anyOrders = fc.array(anyOrder, { minLength: 1, maxLength: 5 }).map((draws) =>
    draws.map(({ mold, rounds, spare, firstAt, cups, due, pattern, release }, place): DayOrder => {
      const pass = { firstAt, passTime: 128, wait: { shortest: firstAt, longest: firstAt + 5 } };
      const latest = firstAt + 6 + (spare ?? 0);
      const run = demoRun(String(place), {
        mold,
        pattern,
        pieces: { toPour: rounds * 16 - 3, rounds, perRound: 16 },
        layers: [
          { layer: 'belly', cups, run: { firstAt: 0, passTime: 128 } },
          {
            layer: 'back',
            cups: 2,
            run: pass,
            window:
              spare === undefined
                ? { kind: 'from', earliest: 60 }
                : { kind: 'between', earliest: 60, latest },
          },
        ],
      });
      const plates = ['Long griddle', 'Flat plate'];
      return { run, plates, release, ...(due !== undefined && { due }) };
    }),
  );

  test('nobody in two places, nothing over what there is, no window broken', () => {
    fc.assert(
      fc.property(anyOrders, fc.nat(20), fc.boolean(), (orders, seed, isShort) => {
        const plates = demoDay().plates.map((plate) => ({
          ...plate,
          plug: { watts: 1500, circuit: 'Bench' },
        }));
        const day = demoDay(isShort ? { plates, cups: 4 } : {});
        const plan = planDay(day, orders, { iterations: 4, seed });
        if (!isShort) expect(plan.unplanned).toEqual([]);
        expect(brokenDay(day, orders, plan)).toEqual([]);
        expect(plan.bound.finish).toBeLessThanOrEqual(plan.cost.finish);
      }),
      { numRuns: 80 },
    );
  });
});

describe('the bottleneck', () => {
  test('one mold for three rounds: it is the mold, and one more saves time', () => {
    const grub = { mold: 'Grub 2 in' };
    const orders = [{ run: demoRun('1', grub) }, { run: demoRun('2', grub) }];
    const plan = planDay(demoDay(), orders, EFFORT);
    expect(plan.loads[0]).toMatchObject({ kind: 'mold', name: 'Grub 2 in' });
    expect(plan.loads[0]?.load).toBeGreaterThan(0.7); // six rounds one after the other
    const more = oneMore(demoDay(), orders, EFFORT, plan);
    expect(more.map(({ kind }) => kind)).toEqual(['mold', 'plate', 'person']);
    expect(more[0]).toMatchObject({ name: 'Grub 2 in', lateness: 0, alsoPlanned: [] });
    expect(more[0]?.finish).toBeGreaterThan(HOUR); // half of the rounds run beside the others
    expect(more[1]?.finish).toBeLessThan(600); // a plate would stand idle
  });

  test('one more saves lateness, and what had no room', () => {
    const orders = weekOrders(6, 1).map((order) => ({ ...order, due: 13 * HOUR }));
    const plan = planDay(demoDay(), orders, EFFORT);
    expect(plan.cost.lateness).toBeGreaterThan(0);
    const saved = oneMore(demoDay(), orders, EFFORT, plan);
    expect(Math.max(...saved.map(({ lateness }) => lateness))).toBeGreaterThan(0);
  });
});

describe('refused', () => {
  test.each<[Partial<ShopDay>, string]>([
    [{ cups: 0 }, 'cups must be at least 1, got 0'],
    [{ circuits: [] }, 'circuit of Long griddle must be listed in the circuits, got "Bench"'],
    [
      { circuits: [{ name: 'Bench', watts: 1000 }] },
      'watts of Long griddle must be at most 1000 W, got 1500 W',
    ],
    [
      { molds: [{ name: 'Grub 2 in', owned: 1.5, footprint: 0.02 }] },
      'copies of Grub 2 in must be a whole number, got 1.5',
    ],
    [
      { rules: { ...DAY_RULES, inspectShare: 0.7 } },
      'share of demolding and inspecting must be at most 1, got 1.1',
    ],
    [{ rules: { ...DAY_RULES, topOff: -1 } }, 'time to top off must be at least 0 s, got -1 s'],
    [{ people: [...ALONE, ...ALONE] }, 'person must be named once, got "Ada"'],
  ])('%o', (change, text) => {
    const call = () => planDay(demoDay(change), [{ run: demoRun('2041') }], EFFORT);
    expect(errorText(call)).toBe(text);
  });

  test('an order twice', () => {
    const orders = [{ run: demoRun('2041') }, { run: demoRun('2041') }];
    expect(errorText(() => planDay(demoDay(), orders, EFFORT))).toBe(
      'order must be named once, got "2041"',
    );
  });
});
