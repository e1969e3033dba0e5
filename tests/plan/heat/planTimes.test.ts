import { describe, expect, test } from 'vitest';
import { indexBook, nameKey } from '../../../shared/book/bookIndex.ts';
import { openTime } from '../../../shared/heat/openTime.ts';
import { findOrder } from '../../../shared/plan/facts/findOrder.ts';
import { usualFigures } from '../../../shared/plan/heat/heatFigures.ts';
import { cavityThicknesses, layerHeat } from '../../../shared/plan/heat/layerHeat.ts';
import { fillingOf } from '../../../shared/plan/heat/planRound.ts';
import { planTimes, pourMoments, type TimedRound } from '../../../shared/plan/heat/planTimes.ts';
import { isInTime, windowRemedies } from '../../../shared/plan/heat/windowRemedies.ts';
import { DEMO, type DemoChanges, demoBook, withChange } from '../../book/demoBook.ts';

const PASS = { cavities: 8, pourSeconds: 8, cavitiesPerHeating: 20, stop: 30 };
const LIMITS = { warmerMold: 40, hottestCup: 177 };

function factsOf(order: string, changes: DemoChanges = {}) {
  const index = indexBook(demoBook(changes));
  const row = index.orders.get(nameKey(order));
  const found = row && findOrder(index, row);
  if (found?.kind !== 'found') throw new Error('no such order');
  const figures = usualFigures(found.facts.plate, index.book.shop);
  return { filling: fillingOf(found.facts), figures };
}

/** The three-layer order at a mold held at a temperature. */
function roundAt(course: TimedRound['course'], pass: Partial<typeof PASS> = {}, order = '2041') {
  const { filling, figures } = factsOf(order);
  const passes = filling.layers.map(() => ({ ...PASS, ...pass }));
  const round: TimedRound = { course, figures, passes, effort: 'exact' };
  return { filling, round, times: planTimes(filling, round, 'US') };
}

function waitOf({ run }: { readonly run: { readonly wait?: { readonly longest: number } } }) {
  return run.wait?.longest ?? Number.NaN;
}

describe('planTimes', () => {
  test('each layer follows when the one below is whole and firm, in every cavity', () => {
    const { times } = roundAt(103);
    const [, vein, back] = times;
    expect(times[0]?.run).toEqual({ firstAt: 0, lastAt: 56, passTime: 64, stops: 0 });
    for (const layer of [vein, back]) {
      const window = layer?.window;
      if (window?.kind !== 'from') throw new Error(`got ${window?.kind}`);
      expect(layer?.run.wait?.shortest).toBeGreaterThanOrEqual(window.earliest);
      expect(layer?.run.wait?.shortest).toBeGreaterThanOrEqual(64 + 10);
    }
    expect(vein?.run.firstAt).toBe(waitOf(vein ?? { run: {} }));
    expect(back?.run.firstAt).toBe((vein?.run.firstAt ?? 0) + waitOf(back ?? { run: {} }));
  });

  test('on a mold at boiling every joint bonds, and stays above the bond temperature for a while', () => {
    for (const { joint } of roundAt(100).times.slice(1)) {
      expect(joint?.verdict).toBe('bonds');
      expect(joint?.contactTemperature).toBeGreaterThan(116);
      expect(joint?.secondsAboveBond).toBeGreaterThan(1);
    }
  });

  test('a slow round lets the joints go cold in a warm mold, and says so', () => {
    const { times } = roundAt(60, { pourSeconds: 40 });
    const [, vein] = times;
    expect(vein?.window?.kind).toBe('between');
    expect(vein?.joint?.verdict).toBe('peels');
    expect(times.every(isInTime)).toBe(false);
  });

  test('a mold that climbs keeps layers open longer than one that is held', () => {
    const held = roundAt(90).times[0]?.openTime;
    const climbing = roundAt((time) => 90 + 15 * (1 - Math.exp(-time / 600))).times[0]?.openTime;
    if (held?.kind !== 'seconds') throw new Error('it sets');
    expect(
      climbing?.kind === 'seconds' ? climbing.seconds : Number.POSITIVE_INFINITY,
    ).toBeGreaterThan(held.seconds);
  });

  test('a layer of a two-piece mold cools by its whole section with no free surface', () => {
    const { filling, times } = roundAt(60, {}, '2042');
    const [layer] = times;
    const [thickness, shapeFactor] = [0.003573, 1.4163]; // of a 16 x 13 mm ellipse, see effectiveThickness and cavityShapeFactor
    const heat = { thickness, startTemperature: 158, moldTemperature: 60, shapeFactor };
    const alone = openTime({ ...heat, surfaceCoefficient: 0 }, 92);
    expect(filling.mold.kind).toBe('two-piece');
    if (layer?.openTime.kind !== 'seconds' || alone.kind !== 'seconds') throw new Error('it sets');
    expect(layer.openTime.seconds).toBeNear(alone.seconds, { relative: 0.01 }); // solver 0.5 %, figures of four digits
  });

  test('thicknesses of an open stack add up to volume over wetted metal; of an ellipse they go by volume', () => {
    const { filling } = factsOf('2041');
    const sum = cavityThicknesses(filling).reduce((total, one) => total + one, 0);
    // half-round 14 x 10.5 mm: pi/4 x 14 x 10.5 = 115.45 mm2 over half an ellipse's arc of 26.66 mm... by Ramanujan
    const arc = 0.5 * Math.PI * (3 * 17.5 - Math.sqrt((3 * 7 + 10.5) * (7 + 3 * 10.5)));
    expect(sum).toBeNear((Math.PI * 14 * 10.5) / 4 / arc / 1000, { relative: 1e-3 }); // his first approximation
    const molds = withChange(DEMO.molds, 0, { profile: 'ellipse' });
    const round = factsOf('2041', { molds });
    const shares = cavityThicknesses(round.filling);
    expect((shares[0] ?? 0) / shares.reduce((total, one) => total + one, 0)).toBeNear(0.35, {
      relative: 1e-9, // arithmetic only
    });
  });

  test('a set temperature of the plastisol’s own stands against the shop’s', () => {
    const firm = factsOf('2041');
    const materials = withChange(DEMO.materials, 0, { setTemperature: 105 });
    const own = factsOf('2041', { materials });
    const openOf = ({ filling, figures }: typeof own) =>
      layerHeat(filling, { course: 60, figures, pouredAt: [0], effort: 'exact' }).layers[0]?.open;
    const [usual, measured] = [openOf(firm), openOf(own)];
    if (usual?.kind !== 'seconds' || measured?.kind !== 'seconds') throw new Error('both set');
    expect(measured.seconds).toBeLessThan(usual.seconds);
  });

  test('quick is within 3 % of exact', () => {
    for (const mold of [50, 71, 85, 100]) {
      const { filling, round } = roundAt(mold);
      const seconds = (effort: TimedRound['effort']) =>
        planTimes(filling, { ...round, effort }, 'US').map(({ openTime: open }) =>
          open.kind === 'seconds' ? open.seconds : -1,
        );
      const exact = seconds('exact');
      seconds('quick').forEach((value, index) => {
        // 2 % of the solver and up to a step of five seconds in the wait before
        expect(value).toBeNear(exact[index] ?? 0, { relative: 0.03 });
      });
    }
  });

  test('pour moments add up the longest waits', () => {
    expect(pourMoments([{ longest: 60 }, { longest: 90 }])).toEqual([0, 60, 150]);
  });
});

describe('windowRemedies', () => {
  const late = roundAt(68, { pourSeconds: 20 });

  test('every remedy it names brings all layers into their windows, and one step less does not', () => {
    expect(late.times.every(isInTime)).toBe(false);
    const remedies = windowRemedies(late.filling, late.round, LIMITS);
    expect(remedies.map(({ kind }) => kind)).toEqual(['fewer cavities', 'mold top', 'hotter cup']);
    const [fewer, hotter] = remedies;
    if (fewer?.kind !== 'fewer cavities' || hotter?.kind !== 'mold top') throw new Error('kinds');
    const inTime = (change: Partial<TimedRound>) =>
      planTimes(late.filling, { ...late.round, ...change }, 'US').every(isInTime);
    const passesOf = (cavities: number) => late.round.passes.map((pass) => ({ ...pass, cavities }));
    expect(inTime({ passes: passesOf(fewer.cavities) })).toBe(true);
    expect(inTime({ passes: passesOf(fewer.cavities + 1) })).toBe(false);
    expect(inTime({ course: 68 + hotter.warmer })).toBe(true);
    expect(inTime({ course: 68 + hotter.warmer - 5 })).toBe(false);
    const layers = late.filling.layers.map((layer) => ({ ...layer, pourTemperature: 177 }));
    expect(planTimes({ ...late.filling, layers }, late.round, 'US').every(isInTime)).toBe(true);
  });

  test('a mold too hot to carry a layer wants a cooler one', () => {
    const hot = roundAt(135);
    expect(hot.times.every(isInTime)).toBe(false);
    const [remedy] = windowRemedies(hot.filling, hot.round, LIMITS).filter(
      ({ kind }) => kind === 'mold top',
    );
    expect(remedy).toMatchObject({ kind: 'mold top' });
    expect(remedy?.kind === 'mold top' ? remedy.warmer : 0).toBeLessThan(0);
  });

  test('none is named where the plate has nothing left and even one cavity is too late', () => {
    const slow = roundAt(40, { pourSeconds: 300 });
    expect(windowRemedies(slow.filling, slow.round, { warmerMold: 0, hottestCup: 165 })).toEqual(
      [],
    );
  });
});
