import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Shop } from '../../../shared/book/settings/settings.ts';
import { heatUpCourse } from '../../../shared/heat/heatUp/heatUpCourse.ts';
import type { MoldFacts } from '../../../shared/plan/facts/findMold.ts';
import type { PlateFacts } from '../../../shared/plan/facts/findPlate.ts';
import { type HeatFigures, usualFigures } from '../../../shared/plan/heat/heatFigures.ts';
import { type PlateHeatWanted, plateHeat } from '../../../shared/plan/heat/plateHeat.ts';
import { plateSetup } from '../../../shared/plan/heat/plateSetup.ts';
import { toEngine } from '../../../shared/units/toEngine.ts';
import { benchMold, benchPlate, benchShop } from './heatBench.ts';

const SETTING = toEngine(270, 'degF');
const INCH = 0.0254;
const COLD = { warmUp: 480 };

interface Case {
  readonly mold?: Partial<MoldFacts>;
  readonly plate?: Partial<PlateFacts>;
  readonly shop?: Partial<Shop>;
  readonly figures?: Partial<HeatFigures>;
  readonly wanted?: Partial<PlateHeatWanted>;
}

/** A run that starts at boiling unless told otherwise. */
function heat({ mold, plate, shop, figures, wanted }: Case = {}) {
  const place = benchPlate(plate);
  const room = benchShop({ topTarget: 0, ...shop });
  const usual = { ...usualFigures(place, room), ...figures };
  const set = { setting: SETTING, count: 1, effort: 'exact' as const, figures: usual, ...wanted };
  return plateHeat(benchMold(mold), place, room, set);
}

function seconds(given?: Case): number {
  return heat(given).heatUp ?? Number.POSITIVE_INFINITY;
}

describe('plateHeat against the study that the defaults come from (HEATSTUDY)', () => {
  test.each([
    { inches: 1, minutes: 14, end: 115 },
    { inches: 1.5, minutes: 21, end: 113 },
  ])('$inches in on a warm plate at 270 °F', ({ inches, minutes, end }) => {
    const mold = { blockHeight: inches * INCH };
    const { plateau } = heat({ mold });
    // The published correlations lose a tenth more than the study did.
    expect(plateau).toBeNear(end, { absolute: 2.5 });
    expect(heat({ mold, figures: { lossShare: 0.9 } }).plateau).toBeNear(end, { absolute: 0.7 });
    const ratio = seconds({ mold }) / 60 / minutes;
    // Late, as `heatUpCourse` is; the study prints two figures.
    expect(ratio).toBeGreaterThan(1);
    expect(ratio).toBeLessThan(1.21);
  });
});

describe('plateHeat against heatUpCourse', () => {
  const finely = (given: Case, deadBand: 'none' | 'followed') => {
    const place = benchPlate(given.plate);
    const room = benchShop({ topTarget: 0, ...given.shop });
    const figures = usualFigures(place, room);
    const set = { setting: SETTING, count: 1, figures, ...given.wanted };
    const { plate, ...setup } = plateSetup(benchMold(given.mold), place, room, set);
    const course = heatUpCourse(
      {
        ...setup,
        plate:
          plate.kind === 'held'
            ? plate
            : {
                ...plate,
                deadBand: deadBand === 'none' ? 0 : plate.deadBand,
                swing: 'followed' as const,
              },
      },
      { target: 99.974, duration: 60, interval: 60 },
    );
    const [time] = course.times;
    return time?.kind === 'reached' ? time.seconds : Number.POSITIVE_INFINITY;
  };

  test.each<Case>([
    {},
    { plate: COLD, wanted: { count: 2 } },
    { plate: { ...COLD, lid: 'lid', deadBand: 0 }, mold: { finish: 'anodized' } },
  ])('the same minutes as the fine course: %j', (given) => {
    const plate = { ...given.plate, deadBand: 0 };
    // Steps of 0.001 K against 0.0001 K; boiling at sea level is 99.974 °C (IAPWS97).
    expect(seconds({ ...given, plate })).toBeNear(finely({ ...given, plate }, 'none'), {
      relative: 2e-4,
    });
  });

  test.each([12, 20, 30])('a swing of %d K is followed', (deadBand) => {
    const given = { plate: { ...COLD, deadBand }, wanted: { count: 2 } };
    // Steps of 0.001 K against 0.0001 K, on a slow end.
    expect(seconds(given)).toBeNear(finely(given, 'followed'), { relative: 5e-4 });
  });

  test('a swing faster than a mold can feel is as good as none', () => {
    const given = { plate: { ...COLD, deadBand: 4 } };
    // On for 4 K of some 6 kJ/K at 1500 W, 16 s.
    expect(seconds(given)).toBeNear(finely(given, 'followed'), { relative: 0.01 });
  });

  test('quick figures stay within half a per cent of exact ones', () => {
    for (const deadBand of [0, 20])
      for (const setting of [125, 132, 160])
        for (const count of [1, 3])
          for (const height of [1, 1.5]) {
            const mold = { blockHeight: height * INCH };
            const given = { mold, plate: { ...COLD, deadBand }, wanted: { setting, count } };
            const quick = { ...given, wanted: { ...given.wanted, effort: 'quick' as const } };
            // Errors of a tenth of a kelvin near a slow end.
            expect(seconds(quick)).toBeNear(seconds(given), { relative: 5e-3 });
            expect(heat(quick).plateau).toBe(heat(given).plateau);
          }
  });
});

describe('the plate of plateHeat', () => {
  test('warms up bare in the minutes of Plates', () => {
    const mold = { blockLength: 1e-3, blockWidth: 1e-3 };
    const { samples } = heat({
      mold,
      plate: { ...COLD, highestSetting: 204 },
      wanted: { setting: 200, moments: [480] },
    });
    // A speck of a mold; warm-ups are timed to 270 °F, 132 °C. Steps of 0.001 K.
    expect(samples[0]?.plate).toBeNear(132, { absolute: 0.05 });
  });

  test('warms up in ten seconds at the least', () => {
    const sudden = heat({ plate: { warmUp: 1e-300, deadBand: 0 } });
    expect(sudden.heatUp).toBe(heat({ plate: { warmUp: 10, deadBand: 0 } }).heatUp);
  });

  test('what Plates leaves out is that of a household griddle: 10 kW/m2', () => {
    const unknown = { ...COLD, usableLength: undefined, usableWidth: undefined, watts: undefined };
    const given = { ...COLD, usableLength: 0.4, usableWidth: 0.35, watts: 1400 };
    // A square of 0.14 m2 beside 0.4 x 0.35 m.
    expect(seconds({ plate: unknown })).toBeNear(seconds({ plate: given }), { relative: 1e-3 });
    const watts = { ...unknown, watts: 1400 };
    expect(seconds({ plate: watts })).toBeNear(seconds({ plate: unknown }), { relative: 1e-9 }); // rounding
  });

  test('is as hot as its dial says, plus the offset', () => {
    const off = heat({ figures: { dialOffset: -12 } });
    const lower = heat({ wanted: { setting: SETTING - 12 } });
    expect(off.heatUp).toBeNear(lower.heatUp ?? Number.NaN, { relative: 1e-12 }); // rounding of a sum
  });

  test('a weak heater stalls: the target is never read, and the top stays at its plateau', () => {
    const weak = heat({ plate: { ...COLD, watts: 150 }, wanted: { count: 4 } });
    expect(weak).not.toHaveProperty('heatUp');
    expect(weak.plateau).toBeLessThan(99);
    expect(weak.climb).toEqual([{ time: 0, temperature: weak.plateau }]);
    expect(weak.samples[weak.samples.length - 1]?.seconds).toBe(7200);
  });
});

describe('laws of plateHeat', () => {
  const cases = fc.record({
    contactConductance: fc.double({ min: 60, max: 600, noNaN: true }),
    setting: fc.double({ min: 105, max: 200, noNaN: true }),
    watts: fc.double({ min: 500, max: 3000, noNaN: true }),
    inches: fc.double({ min: 0.5, max: 1.5, noNaN: true }),
  });
  type Draw = typeof cases extends fc.Arbitrary<infer Value> ? Value : never;
  const caseOf = ({ contactConductance, setting, inches, ...plate }: Draw): Case => ({
    plate: { ...COLD, ...plate, deadBand: 0 },
    mold: { blockHeight: inches * INCH },
    figures: { contactConductance },
    wanted: { setting, count: 2 },
  });
  /** Steps of 0.001 K; within a kelvin of the plateau they are worth minutes, and a swing falls either way. */
  const HAIR = 1 + 5e-3;

  test.each<{ what: string; change: (draw: Draw) => Case }>([
    {
      what: 'more contact',
      change: (draw) => caseOf({ ...draw, contactConductance: draw.contactConductance * 1.3 }),
    },
    { what: 'a higher setting', change: (draw) => caseOf({ ...draw, setting: draw.setting + 10 }) },
    {
      what: 'fewer molds',
      change: (draw) => ({
        ...caseOf(draw),
        wanted: { setting: draw.setting, count: 1 },
      }),
    },
    {
      what: 'a lid',
      change: (draw) => ({ ...caseOf(draw), plate: { ...caseOf(draw).plate, lid: 'lid' } }),
    },
    {
      what: 'less loss',
      change: (draw) => ({
        ...caseOf(draw),
        figures: { contactConductance: draw.contactConductance, lossShare: 0.8 },
      }),
    },
    { what: 'a thinner mold', change: (draw) => caseOf({ ...draw, inches: draw.inches * 0.8 }) },
  ])('$what never takes longer', ({ change }) => {
    fc.assert(
      fc.property(cases, (draw) => {
        const [before, after] = [heat(caseOf(draw)), heat(change(draw))];
        fc.pre(before.plateau > 101 || after.heatUp === undefined);
        const most = before.heatUp ?? Number.POSITIVE_INFINITY;
        expect(after.heatUp ?? Number.POSITIVE_INFINITY).toBeLessThanOrEqual(most * HAIR);
      }),
      { numRuns: 40 },
    );
  });

  test('a lid shortens the heat-up, two molds take longer than one', () => {
    const plate = COLD;
    expect(seconds({ plate: { ...plate, lid: 'lid' } })).toBeLessThan(0.95 * seconds({ plate }));
    expect(seconds({ plate, wanted: { count: 4 } })).toBeGreaterThan(1.02 * seconds({ plate }));
  });

  test('up the mountains water boils at less, and the mold is there sooner', () => {
    expect(seconds({ shop: { elevation: 2000 } })).toBeLessThan(seconds());
    // Thin air carries less heat away: convection goes with the root of the pressure, which is 0.78 of sea level's.
    const gain = heat({ shop: { elevation: 2000 } }).plateau - heat().plateau;
    expect(gain).toBeGreaterThan(1);
    expect(gain).toBeLessThan(3);
  });
});

describe('the climb of plateHeat', () => {
  test('starts at the target when the top reads it, and goes on toward the plateau', () => {
    const { climb, plateau } = heat({ plate: COLD, shop: { topTarget: 3 } });
    expect(climb).toHaveLength(46);
    expect(climb.map(({ time }) => time)).toEqual(climb.map((_, index) => index * 60));
    // Boiling at sea level by IAPWS97.
    expect(climb[0]?.temperature).toBeNear(99.974 + 3, { absolute: 1e-3 });
    for (const [index, { temperature }] of climb.entries())
      if (index > 0) expect(temperature).toBeGreaterThan(climb[index - 1]?.temperature ?? 0);
    expect(climb[45]?.temperature).toBeNear(plateau, { absolute: 0.5 }); // 45 min on, four time constants
  });

  test('holds the mean of the swing, wherever in it the top reads its target', () => {
    for (const deadBand of [12, 16, 20, 24, 30])
      for (const height of [1, 1.5]) {
        const mold = { blockHeight: height * INCH };
        const swung = heat({ mold, plate: { ...COLD, deadBand } });
        const steady = heat({ mold, plate: { ...COLD, deadBand: 0 } });
        // Still cooling from its first overshoot at most: 15 K of plate, a tenth of it left in the top.
        swung.climb.forEach(({ temperature }, index) => {
          expect(temperature).toBeNear(steady.climb[index]?.temperature ?? 0, { absolute: 1.5 });
        });
        const [end, other] = [swung.climb[45], steady.climb[45]];
        expect(end?.temperature).toBeNear(other?.temperature ?? 0, { absolute: 0.1 });
      }
  });

  test('falls where only the lid brought the top to its target', () => {
    const plate = { ...COLD, lid: 'lid' } as const;
    const { climb, lidOff, plateau, heatUp } = heat({ plate, wanted: { setting: 112 } });
    expect(heatUp).toBeGreaterThan(0);
    expect(lidOff).toBeLessThan(98);
    expect(plateau).toBeGreaterThan(100);
    expect(climb[45]?.temperature).toBeNear(lidOff ?? Number.NaN, { absolute: 0.3 }); // three time constants
    expect(heat({ plate: COLD })).not.toHaveProperty('lidOff');
  });
});

describe('the samples of plateHeat', () => {
  test('go from switch-on to a bit beyond the first pour', () => {
    const { samples, heatUp = Number.NaN } = heat({ plate: COLD });
    expect(samples).toHaveLength(41);
    expect(samples[0]).toEqual({ seconds: 0, plate: 22, top: 22 });
    // The shop waits 5 min, and 10 min more are shown.
    expect(samples[40]?.seconds).toBeNear(heatUp + 900, { relative: 1e-12 });
    expect(samples[40]?.top).toBeGreaterThan(100);
  });

  test('at given moments stand the same temperatures, whether the target is read early, late or never', () => {
    const moments = [0, 300, 1200, 5000, 9000];
    for (const contactConductance of [30, 60, 100, 2000]) {
      const given = { plate: COLD, figures: { contactConductance } };
      const asked = heat({ ...given, wanted: { moments } }).samples;
      expect(asked.map((sample) => sample.seconds)).toEqual(moments);
      const high = heat({ ...given, shop: { topTarget: 40 }, wanted: { moments } }).samples;
      asked.forEach(({ top, plate }, index) => {
        // Steps of 0.001 K, cut at other places.
        expect(top).toBeNear(high[index]?.top ?? Number.NaN, { absolute: 0.1 });
        expect(plate).toBeNear(high[index]?.plate ?? Number.NaN, { absolute: 0.1 });
      });
    }
  });
});

test('whatever a book may hold, every figure is finite and comes at once', () => {
  const extreme = (least: number, most: number) =>
    fc.oneof(fc.constantFrom(least, most), fc.double({ min: least, max: most, noNaN: true }));
  const book = fc.record({
    contact: extreme(1e-3, 20_000),
    height: extreme(1e-4, 1),
    side: extreme(1e-3, 3),
    watts: extreme(1e-3, 1e7),
    warmUp: extreme(0, 7200),
    deadBand: extreme(0, 60),
    setting: extreme(1, 400),
    offset: extreme(-60, 60),
    room: extreme(-10, 50),
    count: fc.constantFrom(1, 500),
    size: extreme(0.01, 10),
    lid: fc.constantFrom('none' as const, 'lid' as const),
  });
  let slowest = 0;
  fc.assert(
    fc.property(book, (it) => {
      const began = performance.now();
      const {
        heatUp = 0,
        plateau,
        climb,
        samples,
      } = heat({
        mold: { blockHeight: it.height, blockLength: it.side, blockWidth: it.side },
        plate: {
          watts: it.watts,
          warmUp: it.warmUp,
          deadBand: it.deadBand,
          usableLength: it.size,
          usableWidth: it.size,
          highestSetting: it.setting,
          lid: it.lid,
        },
        shop: { roomTemperature: it.room },
        figures: { contactConductance: it.contact, dialOffset: it.offset },
        wanted: { setting: it.setting, count: it.count, effort: 'quick' },
      });
      slowest = Math.max(slowest, performance.now() - began);
      const figures = [heatUp, plateau, ...climb.map(({ temperature }) => temperature)];
      for (const { plate, top } of samples) figures.push(plate, top);
      expect(figures.every(Number.isFinite)).toBe(true);
    }),
    { numRuns: 300 },
  );
  // A busy machine; 0.3 ms is usual.
  expect(slowest).toBeLessThan(1000);
});
