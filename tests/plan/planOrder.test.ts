import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { openTime } from '../../shared/heat/openTime.ts';
import { planOrder } from '../../shared/plan/planOrder.ts';
import type { OrderPlan } from '../../shared/plan/planTypes.ts';
import { DEMO, type DemoChanges, demoBook, withChange } from '../book/demoBook.ts';

function planned(order: string, changes: DemoChanges = {}): OrderPlan {
  const plan = planOrder(demoBook(changes), order);
  if (plan.kind === 'missing') throw new Error(plan.missing.map((gap) => gap.text).join('; '));
  return plan;
}

function everyNumber(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null
    ? Object.values(value).flatMap(everyNumber)
    : [];
}

describe('planOrder', () => {
  test('takes the newest version unless the order names one', () => {
    expect(planned('2041').version).toBe(2);
    expect(planned('2043').version).toBe(1);
    expect(planned('2043').layers.map((layer) => layer.layer)).toEqual(['body']);
  });

  test('finds an order by row, by number in any case, and as a row that is not on the sheet', () => {
    const book = demoBook();
    const row = { row: 2, record: { ...DEMO.orders[0], firstPour: 600 } };
    expect(planOrder(book, 2)).toEqual(planOrder(book, ' 2041 '));
    expect(planOrder(book, row)).toMatchObject({ kind: 'plan', firstPour: 600 });
  });

  test('counts the record of all versions of a pattern in its mold', () => {
    const { pieces } = planned('2041');
    expect(pieces.evidence).toEqual({ good: 120, poured: 133 }); // 54 + 66 of 60 + 73
    expect(pieces.expectedYield).toBeNear((0.9 * 10 + 120) / (10 + 133), { relative: 1e-12 }); // arithmetic only
    expect(pieces.perRound).toBe(16);
    expect(pieces.rounds).toBe(Math.ceil(pieces.toPour / 16));
    expect(pieces.attained).toBeGreaterThanOrEqual(0.9);
  });

  test('a better record asks for fewer pieces, a worse one for more', () => {
    const withGood = (good: number) =>
      planned('2041', { pourLog: [{ ...DEMO.pourLog[0], poured: 100, good }] }).pieces.toPour;
    expect(withGood(99)).toBeLessThan(withGood(90));
    expect(withGood(90)).toBeLessThan(withGood(60));
  });

  test('weighs a layer by hand: pieces x cavity x share x density x overpour, plus color check and cup losses', () => {
    const { layers, pieces } = planned('2041');
    const [belly] = layers;
    const inCavities = pieces.toPour * 9.2e-6 * 0.35 * 1030 * 1.05;
    expect(belly?.cups).toBe(2);
    expect(belly?.totalMass).toBeNear(inCavities + 0.004 + 2 * 0.006, { relative: 1e-9 }); // arithmetic only
  });

  test('a two-piece mold takes its cavity from the piece weight and its shares from upright marks', () => {
    const { layers } = planned('2042');
    expect(layers.map((layer) => layer.share)).toEqual([0.4, 0.6]);
    const noLoss = planned('2042', { shop: { overpour: 0, cupLoss: 0, colorCheck: 0 } });
    expect(noLoss.plastisolMass).toBeNear(noLoss.pieces.toPour * 0.0062, { relative: 1e-9 }); // arithmetic only
  });

  test('an open mold turns fill marks into shares by its profile', () => {
    const marks = withChange(withChange(DEMO.patterns, 4, { share: undefined, fillMark: 0.5 }), 5, {
      share: undefined,
      fillMark: 1,
    });
    const patterns = marks.map((layer) => ({ ...layer }));
    const molds = withChange(DEMO.molds, 1, { kind: 'open' });
    const { layers } = planned('2042', { patterns, molds });
    expect(layers[0]?.fillMark).toBe(0.5);
    expect(layers[0]?.share).toBeNear(0.5, { relative: 1e-12 }); // half of an ellipse lies below its middle
  });

  test('shares rounded for typing are made to add up to exactly 1', () => {
    const patterns = DEMO.patterns.map((layer) =>
      layer.pattern === 'Creek minnow' && layer.version === 2 ? { ...layer, share: 0.333 } : layer,
    );
    const { layers } = planned('2041', { patterns });
    expect(layers.reduce((sum, layer) => sum + layer.share, 0)).toBeNear(1, { relative: 1e-12 }); // arithmetic only
  });

  test('the plate is set to the next 5 degrees of the dial at which the top settles 10 K above its target', () => {
    const { plate } = planned('2041');
    if (plate.kind !== 'reachable') throw new Error(plate.because);
    expect(plate.setting * 1.8 + 32).toBeNear(260, { relative: 1e-12 }); // arithmetic only
    // By hand, one loss for all faces: 0.178 x 0.14 x 0.025 m bare block loses 10.4 x 1.638 W/m2K, gains 110; (110 x 126.67
    // + 17.03 x 22) / 127.03. Losses that vary with temperature and face: half a kelvin.
    expect(plate.plateau).toBeNear(112.63, { absolute: 0.5 });
    expect(plate.plateau).toBeGreaterThanOrEqual(plate.topTarget + 10);
    expect(plate.topTarget).toBe(plate.boilingPoint + 3);
  });

  test('metric shops get a setting in steps of 5 °C', () => {
    const { plate } = planned('2041', { shop: { units: 'metric' } });
    expect(plate).toMatchObject({ kind: 'reachable', setting: 130 });
  });

  test('the plate goes on so long before the first pour as heating and the wait take', () => {
    const { plate, firstPour } = planned('2041');
    if (plate.kind !== 'reachable' || firstPour === undefined) throw new Error('no clock');
    expect(plate.readyAt).toBe(firstPour - 5);
    expect(plate.onAt).toBeNear(firstPour - 5 - plate.heatUp / 60, { relative: 1e-12 }); // arithmetic only
    expect(plate.heatUp).toBeGreaterThan(480);
  });

  test('no clock time is made up when the first pour is not given', () => {
    expect(planned('2042').plate).not.toHaveProperty('onAt');
  });

  test('a plate that is too weak is an answer with its figures, not a number', () => {
    const plates = withChange(DEMO.plates, 0, { highestSetting: 105 });
    const plan = planned('2041', { plates });
    const because =
      'at the highest setting of Long griddle, 221 °F, the mold top settles at 201 °F, short of the 215 °F that it must read (water boils at 209 °F here): use a plate that can be set to 260 °F';
    expect(plan.plate).toEqual({ kind: 'unreachable', because });
    expect(plan.warnings).toContainEqual({
      about: 'heat',
      text: `The mold will not get hot enough: ${because}.`,
    });
  });

  test('a plate whose dial ends below the target says so', () => {
    const plates = withChange(DEMO.plates, 0, { highestSetting: 95 });
    expect(planned('2041', { plates }).plate).toEqual({
      kind: 'unreachable',
      because:
        'at its highest setting, 203 °F, Long griddle is not as hot as the 215 °F that the mold top must read (water boils at 209 °F here): use a plate that can be set to 260 °F',
    });
  });

  test('the first layer has no window, the others follow a firm layer', () => {
    const windows = planned('2041').layers.map((layer) => layer.window);
    expect(windows[0]).toBeUndefined();
    expect(windows.slice(1).map((window) => window?.kind)).toEqual(['from', 'from']);
  });

  test('a two-piece mold, whose plastic has no cooler surface, is kept cool enough to carry the next layer', () => {
    const { plate, layers } = planned('2042');
    if (plate.kind !== 'reachable') throw new Error(plate.because);
    expect(plate.plateau).toBeLessThan(110);
    expect(layers[1]?.window?.kind).toBe('from');
    const hotter = planned('2042', { shop: { topTarget: 15 } });
    expect(hotter.layers[1]?.window).toMatchObject({ kind: 'none', why: 'stays soft' });
  });

  test('on a mold that is merely warm every window closes, and firm comes before late', () => {
    const plates = withChange(DEMO.plates, 0, { lowestSetting: undefined, highestSetting: 72 });
    const plan = planned('2041', { plates, shop: { topTarget: -30 } });
    for (const { window } of plan.layers.slice(1)) {
      if (window?.kind !== 'between') throw new Error(`got ${window?.kind}`);
      expect(window.earliest).toBeLessThan(window.latest);
    }
    expect(plan.layers[0]?.openTime.kind).toBe('seconds');
  });

  test('a wide shallow cavity sets like the slab it is, a square one half as late again', () => {
    const plates = withChange(DEMO.plates, 0, { lowestSetting: undefined, highestSetting: 204 });
    const openTimeOf = (kind: 'open' | 'two-piece', cavityWidth: number, cavityDepth: number) => {
      const cavity = { kind, profile: 'box' as const, cavityWidth, cavityDepth };
      const molds = withChange(DEMO.molds, 0, { ...cavity, cavityLength: undefined });
      const plan = planned('2043', { plates, molds, shop: { topTarget: -30 } });
      const open = plan.layers[0]?.openTime;
      const top = plan.plate.kind === 'reachable' ? plan.plate.topTarget : Number.NaN;
      return { open: open?.kind === 'seconds' ? open.seconds : Number.NaN, top };
    };
    const slab = (thickness: number, moldTemperature: number, more = {}) => {
      const open = openTime({ thickness, startTemperature: 158, moldTemperature, ...more });
      return open.kind === 'seconds' ? open.seconds : Number.NaN;
    };
    const wide = openTimeOf('open', 0.9, 0.003);
    // 300 times as wide as deep: corners are worth 1 %; the mold climbs a little meanwhile, here and below
    expect(wide.open).toBeNear(slab(0.003, wide.top), { relative: 0.03 });
    const square = openTimeOf('open', 0.012, 0.006);
    // 12 x 6 mm holds 72 mm2 over 24 mm of wall; by the factor of an aspect of 1
    expect(square.open).toBeNear(1.56 * slab(0.003, square.top), { relative: 0.05 });
    const closed = openTimeOf('two-piece', 0.012, 0.012);
    // 144 mm2 over 48 mm of wall, no surface to lose heat from
    const noSurface = slab(0.003, closed.top, { surfaceCoefficient: 0 });
    expect(closed.open).toBeNear(1.56 * noSurface, { relative: 0.05 });
    expect(closed.open).toBeGreaterThan(square.open);
  });

  test('minutes of work hold set-up, coloring, pouring and finishing at least', () => {
    const plan = planned('2041');
    const least = 20 + 4 * plan.cups + (8 * 3 * plan.pieces.toPour + 25 * plan.pieces.toPour) / 60;
    expect(plan.minutesOfWork).toBeGreaterThan(least);
    expect(plan.minutesOfWork).toBeLessThan(least + 60);
  });

  test('the hard stop is the lowest of shop and base, and the cook never passes it', () => {
    expect(planned('2041').hardStop).toBe(190);
    const materials = withChange(DEMO.materials, 0, { maximumTemperature: 174 });
    expect(planned('2041', { materials })).toMatchObject({ hardStop: 174, cookTemperature: 174 });
  });

  test('every plan holds: masses add up, cups are equal, doses keep their share, no number is NaN', () => {
    const shares = fc.tuple(fc.integer({ min: 5, max: 60 }), fc.integer({ min: 5, max: 35 }));
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 3000 }),
        shares,
        fc.integer({ min: 1, max: 2 }),
        (quantity, [first, second], moldsInUse) => {
          const parts = [first, second, 100 - first - second];
          const patterns = DEMO.patterns.map((layer) =>
            layer.version === 2
              ? { ...layer, share: (parts[(layer.layerOrder ?? 1) - 1] ?? 0) / 100 }
              : layer,
          );
          const orders = withChange(DEMO.orders, 0, { quantity, moldsInUse });
          const plan = planned('2041', { orders, patterns });
          expect(everyNumber(plan).every(Number.isFinite)).toBe(true);
          expect(plan.layers.reduce((sum, layer) => sum + layer.totalMass, 0)).toBeNear(
            plan.plastisolMass,
            { relative: 1e-9 },
          ); // sums of doubles
          expect(plan.layers.reduce((sum, layer) => sum + layer.cups, 0)).toBe(plan.cups);
          for (const layer of plan.layers) {
            expect(layer.cupMass * layer.cups).toBeNear(layer.totalMass, { relative: 1e-9 }); // sums of doubles
            expect(layer.cupVolume).toBeLessThanOrEqual(1.774e-4);
          }
          expect(plan.pieces.rounds * plan.pieces.perRound).toBeGreaterThanOrEqual(
            plan.pieces.toPour,
          );
          expect(plan.pieces.toPour).toBeGreaterThanOrEqual(quantity);
        },
      ),
      { numRuns: 60 },
    );
  });
});
