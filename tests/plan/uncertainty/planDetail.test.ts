import { describe, expect, test } from 'vitest';
import { indexBook } from '../../../shared/book/bookIndex.ts';
import { DEFAULTS } from '../../../shared/material/defaults.ts';
import { findOrder } from '../../../shared/plan/facts/findOrder.ts';
import { planRow } from '../../../shared/plan/planOrder.ts';
import type { OrderPlan } from '../../../shared/plan/planTypes.ts';
import type { Band, HeatDetail } from '../../../shared/plan/uncertainty/heatDetail.ts';
import { type DetailWanted, planDetail } from '../../../shared/plan/uncertainty/planDetail.ts';
import { DEMO, type DemoChanges, demoBook, withChange } from '../../book/demoBook.ts';
import { errorText } from '../../heat/errorText.ts';
import { pseudoRandom } from '../../uncertainty/pseudoRandom.ts';

interface Detailed {
  readonly plan: OrderPlan;
  readonly detail: HeatDetail;
}

/** The demo's order on this line (0: three layers, open; 1: two-piece; 2: one layer) with its detail. */
function detailed(
  line: number,
  changes: DemoChanges = {},
  wanted: DetailWanted = { draws: 48, seed: 1 },
): Detailed {
  const index = indexBook(demoBook(changes));
  const row = index.book.orders[line] ?? { row: 0, record: {} };
  const plan = planRow(index, row);
  const found = findOrder(index, row);
  if (plan.kind === 'missing' || found.kind === 'missing') throw new Error('the demo is whole');
  return { plan, detail: planDetail(index, found.facts, plan, wanted) };
}

function plateWith(change: Partial<(typeof DEMO.plates)[number]>): DemoChanges {
  return { plates: withChange(DEMO.plates, 0, change) };
}

function bandsOf({ heatUp, plateau, cupTime, layers }: HeatDetail): readonly Band[] {
  const ofLayers = layers.flatMap(({ open, earliest, latest, contact }) => [
    open,
    earliest,
    latest,
    contact,
  ]);
  return [heatUp, plateau, cupTime, ...ofLayers].filter((one) => one !== undefined);
}

function widthOf({ low = Number.NaN, high = Number.NaN }: Band = {}): number {
  return high - low;
}

function everyNumber(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null
    ? Object.values(value).flatMap(everyNumber)
    : [];
}

const TOO_COOL = plateWith({ highestSetting: 105 });

describe('planDetail', () => {
  test('a seed fixes everything, another seed moves the bands a little', () => {
    const { detail } = detailed(0);
    expect(detailed(0).detail).toEqual(detail);
    const other = detailed(0, {}, { draws: 48, seed: 2 }).detail;
    expect(other.cupTime).not.toEqual(detail.cupTime);
    // Of the width, four standard errors of an end at 48 draws.
    const near = { absolute: 0.3 * widthOf(detail.cupTime) };
    expect(other.cupTime.low).toBeNear(detail.cupTime.low ?? 0, near);
    expect(other.cupTime.high).toBeNear(detail.cupTime.high ?? 0, near);
  });

  test.each([
    { name: 'three layers, two molds', line: 0, changes: {} },
    { name: 'a two-piece mold', line: 1, changes: {} },
    { name: 'one layer', line: 2, changes: {} },
    {
      name: 'a contact nobody fitted',
      line: 0,
      changes: plateWith({ contactConductance: undefined }),
    },
    { name: 'a plate that is too weak', line: 0, changes: TOO_COOL },
    { name: 'a cold bench', line: 0, changes: { shop: { roomTemperature: 10, topTarget: -25 } } },
  ])('of $name reaches a page unharmed: finite numbers, bands the right way round', (row) => {
    const { detail } = detailed(row.line, row.changes);
    expect(everyNumber(detail).every(Number.isFinite)).toBe(true);
    expect(JSON.parse(JSON.stringify(detail))).toEqual(detail);
    for (const { low = 0, high = Number.POSITIVE_INFINITY } of bandsOf(detail))
      expect(low).toBeLessThanOrEqual(high);
    for (const { low, top, high } of detail.heatCourse) {
      expect(low).toBeLessThanOrEqual(high + 1e-9);
      expect(top).toBeGreaterThan(0);
    }
  });

  test('has one entry per layer, windows from the second on, nothing beyond the plan', () => {
    const { detail, plan } = detailed(0);
    expect(detail.layers).toHaveLength(plan.layers.length);
    expect(Object.keys(detail.layers[0] ?? {})).toEqual(['open']);
    for (const layer of detail.layers.slice(1))
      expect(Object.keys(layer)).toEqual(['open', 'earliest', 'latest', 'contact']);
    expect(detailed(2).detail.layers.map((layer) => Object.keys(layer))).toEqual([['open']]);
  });

  test('holds the plan’s own figures inside its bands', () => {
    for (const line of [0, 1, 2]) {
      const { plan, detail } = detailed(line);
      const holds = (figure: number, { low = 0, high = Number.POSITIVE_INFINITY }: Band = {}) => {
        expect(figure).toBeGreaterThan(low);
        expect(figure).toBeLessThan(high);
      };
      if (plan.plate.kind === 'reachable') {
        holds(plan.plate.heatUp, detail.heatUp);
        holds(plan.plate.plateau, detail.plateau);
      }
      holds(plan.cupTime, detail.cupTime);
      plan.layers.forEach(({ joint, window }, index) => {
        const own = detail.layers[index];
        if (joint) holds(joint.contactTemperature, own?.contact);
        if (window && window.kind !== 'none') holds(window.earliest, own?.earliest);
      });
    }
  });

  test('on a griddle nobody fitted, the minutes to a hot mold hang on the contact', () => {
    const { detail } = detailed(0, plateWith({ contactConductance: undefined }), { seed: 1 });
    expect(detail.heatUp?.widest).toBe('contactConductance');
  });

  test('a fitted contact narrows minutes and plateau, a surer fit more, a measured dial again', () => {
    const plateaus = [
      { contactConductance: undefined },
      { contactConductance: 110, contactError: 25 },
      { contactConductance: 110, contactError: 5 },
      { contactConductance: 110, contactError: 5, dialOffset: 0 },
    ].map((change) => detailed(0, plateWith(change)).detail);
    const [unknown, loose, sure, measured] = plateaus;
    expect(widthOf(sure?.plateau)).toBeLessThan(widthOf(loose?.plateau));
    expect(widthOf(sure?.plateau)).toBeLessThan(widthOf(unknown?.plateau));
    expect(widthOf(measured?.plateau)).toBeLessThan(0.6 * widthOf(sure?.plateau));
    // Far off, a dial leaves some griddles short of the target: the minutes have no upper end.
    expect(unknown?.heatUp).not.toHaveProperty('high');
    expect(widthOf(measured?.heatUp)).toBeLessThan(10 * 60);
    expect(sure?.plateau?.widest).toBe('dialOffset');
    expect(measured?.plateau?.widest).not.toBe('dialOffset');
  });

  test('names only what can move an answer', () => {
    const heat = ['contactConductance', 'lossShare', 'dialOffset', undefined];
    const cup = ['cupCoefficient', 'specificHeat', undefined];
    for (let seed = 1; seed <= 8; seed += 1) {
      const { detail } = detailed(0, {}, { draws: 96, seed });
      expect(heat).toContain(detail.heatUp?.widest);
      expect(heat).toContain(detail.plateau?.widest);
      expect(cup).toContain(detail.cupTime.widest);
      for (const { open, earliest, contact } of detail.layers) {
        expect([undefined, 'cupCoefficient', 'bondTemperature']).not.toContain(open.widest);
        expect(['setTemperature', 'bondTemperature', 'cupCoefficient']).not.toContain(
          earliest?.widest,
        );
        const noContact = [
          'setTemperature',
          'firmTemperature',
          'bondTemperature',
          'cupCoefficient',
        ];
        expect(noContact).not.toContain(contact?.widest);
      }
    }
  });

  test('the band of a cup’s time is that of 100,000 pseudo-random draws of its closed form', () => {
    const { plan, detail } = detailed(0, {}, { seed: 1 });
    const next = pseudoRandom(3);
    const drawn = ({ low, value, high }: (typeof DEFAULTS)['specificHeat' | 'cupCoefficient']) => {
      for (;;) {
        const x = low + next() * (high - low);
        if (next() < (x < value ? (x - low) / (value - low) : (high - x) / (high - value)))
          return x;
      }
    };
    // t goes with cp and with 1 / h; mass, surface and temperatures are the plan's own.
    const times = Array.from({ length: 100_000 }, () => {
      const held = drawn(DEFAULTS.specificHeat) / DEFAULTS.specificHeat.value;
      return (plan.cupTime * held * DEFAULTS.cupCoefficient.value) / drawn(DEFAULTS.cupCoefficient);
    }).sort((one, other) => one - other);
    const [low = 0, high = 0] = [times[5_000], times[95_000]];
    // Of the width, three standard errors of an end at this number of draws.
    expect(detail.cupTime.low).toBeNear(low, { absolute: 0.12 * (high - low) });
    expect(detail.cupTime.high).toBeNear(high, { absolute: 0.12 * (high - low) });
  });

  test('a set temperature from the shop’s own pucks narrows the open times', () => {
    const cool = { shop: { topTarget: -30 }, ...plateWith({ lowestSetting: undefined }) };
    const materials = DEMO.materials.map((one) =>
      one.kind === 'plastisol' ? { ...one, setTemperature: 92 } : one,
    );
    const usual = detailed(2, cool).detail.layers[0]?.open;
    const own = detailed(2, { ...cool, materials }).detail.layers[0]?.open;
    expect(widthOf(own)).toBeLessThan(0.9 * widthOf(usual));
    expect(widthOf(own)).toBeGreaterThan(0);
  });

  test('a plate that never brings the mold to its target has no minutes, but its curve', () => {
    const { detail, plan } = detailed(0, TOO_COOL);
    expect(plan.plate.kind).toBe('unreachable');
    expect(detail).not.toHaveProperty('heatUp');
    expect(detail).not.toHaveProperty('plateau');
    expect(detail.heatCourse.length).toBeGreaterThan(10);
    expect(detail.layers).toHaveLength(3);
  });

  test('the curve runs from switch-on at the room’s temperature past the target, with its band', () => {
    const { detail, plan } = detailed(0);
    if (plan.plate.kind === 'unreachable') throw new Error(plan.plate.because);
    const [first] = detail.heatCourse;
    const room = demoBook().shop.roomTemperature;
    // Nothing has warmed yet in any draw: rounding only.
    for (const figure of [first?.top, first?.low, first?.high])
      expect(figure).toBeNear(room, { absolute: 1e-6 });
    const last = detail.heatCourse[detail.heatCourse.length - 1];
    expect(last?.seconds).toBeGreaterThan(plan.plate.heatUp);
    expect(last?.top).toBeGreaterThan(plan.plate.topTarget);
    expect(last?.low).toBeLessThan(last?.top ?? 0);
    expect(last?.high).toBeGreaterThan(last?.top ?? 0);
  });

  test('the curve passes the target when the plan says so', () => {
    const { detail, plan } = detailed(0);
    const { plate } = plan;
    if (plate.kind === 'unreachable') throw new Error(plate.because);
    const after = detail.heatCourse.findIndex(({ seconds }) => seconds > plate.heatUp);
    const [one, other] = [detail.heatCourse[after - 1], detail.heatCourse[after]];
    if (!one || !other) throw new Error('the curve ends too soon');
    const share = (plate.heatUp - one.seconds) / (other.seconds - one.seconds);
    // A straight line over one fortieth of the curve.
    expect(one.top + share * (other.top - one.top)).toBeNear(plate.topTarget, { absolute: 0.05 });
  });

  test('profiles stand just before each next pour and at the end, through all layers poured by then', () => {
    const { detail, plan } = detailed(0);
    const waits = plan.layers.map(({ run }) => run.wait?.longest ?? 0);
    const second = waits[1] ?? 0;
    const third = second + (waits[2] ?? 0);
    expect(detail.profiles.map(({ time }) => time)).toEqual([second - 1, third - 1, third + 1200]);
    detail.profiles.forEach(({ heights, temperatures }, index) => {
      expect(temperatures).toHaveLength(heights.length);
      // Sums of thicknesses: rounding only.
      expect(heights[heights.length - 1]).toBeNear(detail.jointHeights[index] ?? 0, {
        relative: 1e-9,
      });
    });
    expect(detail.layerCourses).toHaveLength(3);
    expect(detail.layerCourses.map(([first]) => first?.time)).toEqual([0, second, third]);
  });

  test('a two-piece mold has no stack to draw', () => {
    const { detail } = detailed(1);
    expect(detail.profiles).toEqual([]);
    expect(detail.jointHeights).toEqual([]);
    expect(detail.layerCourses).toHaveLength(2);
  });

  test('hands on what heat trials read', () => {
    const readings = [{ trial: 'T1', seconds: 300, top: 61 }];
    expect(detailed(2, {}, { draws: 8, seed: 1, readings }).detail.readings).toEqual(readings);
    expect(detailed(2).detail.readings).toEqual([]);
  });

  test('refuses draws that make no band', () => {
    expect(errorText(() => detailed(2, {}, { draws: 1, seed: 1 }))).toBe(
      'number of draws must be at least 2, got 1',
    );
  });
});
