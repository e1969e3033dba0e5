import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LID_LOSS_SHARE } from '../../../shared/heat/heatUp/heatingMold.ts';
import {
  type CourseWanted,
  type HeatUpCourse,
  heatUpCourse,
} from '../../../shared/heat/heatUp/heatUpCourse.ts';
import type { HeatUpSetup } from '../../../shared/heat/heatUp/plateRun.ts';
import { errorText } from '../errorText.ts';
import { moldHeatUp } from '../moldHeatUp.ts';

const INCH = 0.0254;
const HELD = { kind: 'held', setting: 132 } as const;
const GRIDDLE = {
  kind: 'heated',
  setting: 132,
  watts: 1500,
  heatCapacity: 3000,
  lossConductance: 1.5,
  deadBand: 0,
} as const;
const WANTED: CourseWanted = { target: 100, duration: 3600, interval: 60 };

function mold(inches: number, more: object = {}) {
  return { length: 6 * INCH, width: 4 * INCH, height: inches * INCH, ...more };
}

function course(plate: HeatUpSetup['plate'], ...molds: HeatUpSetup['molds']): HeatUpCourse {
  return heatUpCourse({ plate, molds, roomTemperature: 22 }, WANTED);
}

function seconds({ times }: HeatUpCourse, index = 0): number {
  const time = times[index];
  return time?.kind === 'reached' ? time.seconds : Number.POSITIVE_INFINITY;
}

function plateau({ settled }: HeatUpCourse): number {
  return settled.tops[0] ?? Number.NaN;
}

describe('times against SCIPYHEATUP', () => {
  test.each([
    { what: 'a held plate', plate: HELD, molds: [mold(1)], expected: 963.409 },
    {
      what: 'four molds share 1500 W',
      plate: GRIDDLE,
      molds: [mold(1.25, { count: 4 })],
      expected: 1378.743,
    },
    {
      what: 'four molds share 500 W',
      plate: { ...GRIDDLE, watts: 500 },
      molds: [mold(1.25, { count: 4 })],
      expected: 2170.738,
    },
    {
      what: 'stacked halves, used metal',
      plate: { ...GRIDDLE, setting: 150 },
      molds: [mold(1.25, { jointConductance: 500, finish: 'used' })],
      expected: 1139.132,
    },
  ])('$what', ({ plate, molds, expected }) => {
    // Steps of ours are held to 1e-4 K.
    expect(seconds(course(plate, ...molds))).toBeNear(expected, { relative: 1e-5 });
  });

  test('an anodized mold in a cool room', () => {
    const setup = {
      plate: { kind: 'held', setting: 140 } as const,
      molds: [mold(1.5, { contactConductance: 170, finish: 'anodized' })],
      roomTemperature: 18,
    };
    expect(seconds(heatUpCourse(setup, WANTED))).toBeNear(754.664, { relative: 1e-5 });
  });
});

describe('shop fact 1: the study that the defaults come from (HEATSTUDY, table of conductances)', () => {
  const rows = [
    { conductance: 55, inches: 1, minutes: 33, end: 105 },
    { conductance: 55, inches: 1.5, minutes: 60, end: 102 },
    { conductance: 100, inches: 1, minutes: 14, end: 115 },
    { conductance: 100, inches: 1.5, minutes: 21, end: 113 },
    { conductance: 170, inches: 1, minutes: 7.6, end: 121 },
    { conductance: 170, inches: 1.5, minutes: 11, end: 120 },
    { conductance: 300, inches: 1, minutes: 4, end: 125 },
    { conductance: 300, inches: 1.5, minutes: 6, end: 125 },
    { conductance: 1000, inches: 1, minutes: 1.3, end: 130 },
    { conductance: 1000, inches: 1.5, minutes: 1.8, end: 130 },
  ];
  const at = (row: (typeof rows)[number], lossShare: number) =>
    course(
      { kind: 'held', setting: 270 / 1.8 - 32 / 1.8 },
      mold(row.inches, { contactConductance: row.conductance, lossShare }),
    );

  test.each(rows)('$inches in at $conductance W/m2K ends within 2.5 K of the study', (row) => {
    // The published correlations lose a tenth more than the study did.
    expect(plateau(at(row, 1))).toBeNear(row.end, { absolute: 2.5 });
    // With nine tenths of the loss only the study's whole degrees are left.
    expect(plateau(at(row, 0.9))).toBeNear(row.end, { absolute: 0.7 });
  });

  test.each(rows.filter(({ conductance }) => conductance >= 100))(
    '$inches in at $conductance W/m2K: late by up to 21 %, never early',
    (row) => {
      const ratio = seconds(at(row, 1)) / 60 / row.minutes;
      // The study prints two figures: up to 4 % on the shortest times.
      expect(ratio).toBeGreaterThan(0.96);
      expect(ratio).toBeLessThan(1.21);
    },
  );

  test('10 to 45 min on a thin griddle with default figures, cold plate or warm', () => {
    for (const plate of [HELD, GRIDDLE])
      for (const inches of [1, 1.25, 1.5]) {
        const minutes = seconds(course(plate, mold(inches))) / 60;
        expect(minutes).toBeGreaterThan(10);
        expect(minutes).toBeLessThan(45);
      }
  });

  test('documented miss: 1.5 in at 55 W/m2K settles just short of boiling, 1 in takes a third longer', () => {
    const [thin, thick] = [
      course(HELD, mold(1, { contactConductance: 55 })),
      course(HELD, mold(1.5, { contactConductance: 55 })),
    ];
    expect(thick.times[0]).toEqual({ kind: 'unreachable', because: 'plateau below target' });
    // The study: 33 min; so near its plateau a tenth of the loss is a third of the time.
    expect(seconds(thin) / 60).toBeNear(33, { relative: 0.36 });
  });
});

describe('the closed form against the accurate path', () => {
  const errors = (most: number) => {
    const ratios: number[] = [];
    for (const [finish, lossCoefficient] of [
      ['machined', 10.4],
      ['anodized', 17],
    ] as const)
      for (const conductance of [60, 100, 170, 500])
        for (const inches of [0.75, 1, 1.5, 2])
          for (const setting of [110, 132, 160])
            for (const target of [50, 70, 100, 115]) {
              const block = mold(inches, { contactConductance: conductance, finish });
              const setup = {
                plate: { kind: 'held', setting } as const,
                molds: [block],
                roomTemperature: 22,
              };
              const exact = heatUpCourse(setup, { target, duration: 60, interval: 60 });
              if ((target - 22) / (plateau(exact) - 22) > most) continue;
              const closed = {
                ...mold(inches),
                contactConductance: conductance,
                lossCoefficient,
                roomTemperature: 22,
              };
              const { time } = moldHeatUp({ mold: closed, plateSetting: setting }, target);
              ratios.push((time.kind === 'reached' ? time.seconds : Number.NaN) / seconds(exact));
            }
    return { least: Math.min(...ratios), most: Math.max(...ratios), count: ratios.length };
  };

  test('within 12 % while the target is at most 80 % of the rise', () => {
    const { least, most, count } = errors(0.8);
    expect(count).toBeGreaterThan(150);
    expect(least).toBeGreaterThan(0.97);
    expect(most).toBeLessThan(1.12);
  });

  test('within 17 % at 90 % of the rise, and no use past 95 %', () => {
    const { least, most } = errors(0.9);
    expect(least).toBeGreaterThan(0.93);
    expect(most).toBeLessThan(1.17);
    expect(errors(0.99).most).not.toBeLessThan(1.2);
  });
});

describe('heatUpCourse', () => {
  const setups = fc.record({
    conductance: fc.double({ min: 40, max: 1500, noNaN: true }),
    inches: fc.double({ min: 0.5, max: 1.5, noNaN: true }),
    setting: fc.double({ min: 60, max: 200, noNaN: true }),
    watts: fc.double({ min: 200, max: 3000, noNaN: true }),
    deadBand: fc.constantFrom(0, 4, 12),
  });
  const follow = (
    { conductance, inches, ...plate }: typeof setups extends fc.Arbitrary<infer S> ? S : never,
    more = {},
  ) =>
    heatUpCourse(
      {
        plate: { ...GRIDDLE, ...plate },
        molds: [mold(inches, { contactConductance: conductance, ...more })],
        roomTemperature: 22,
      },
      { target: 60, duration: 18_000, interval: 60 },
    );

  test('in the end it settles where gains and losses balance', () => {
    fc.assert(
      fc.property(setups, (setup) => {
        const { samples, settled } = follow(setup);
        const last = samples[samples.length - 1]?.tops[0] ?? Number.NaN;
        // Anywhere in the band; a weak heater's own time constant is up to 45 min, of five hours.
        expect(last).toBeNear(settled.tops[0] ?? Number.NaN, {
          absolute: 0.3 + setup.deadBand / 2,
        });
      }),
      { numRuns: 12 },
    );
  });

  test('a lid is quicker and hotter, a second mold never quicker', () => {
    fc.assert(
      fc.property(setups, (setup) => {
        const bare = follow({ ...setup, deadBand: 0 });
        const lid = follow({ ...setup, deadBand: 0 }, { lossShare: LID_LOSS_SHARE });
        const two = follow({ ...setup, deadBand: 0 }, { count: 2 });
        expect(plateau(lid)).toBeGreaterThan(plateau(bare));
        if (seconds(bare) < Number.POSITIVE_INFINITY)
          expect(seconds(lid)).toBeLessThan(seconds(bare));
        // Steps of ours are held to 1e-4 K.
        expect(seconds(two) * (1 + 1e-6)).toBeGreaterThanOrEqual(seconds(bare));
      }),
      { numRuns: 12 },
    );
  });

  test('a cold start adds one to two minutes on a strong griddle (HEATSTUDY)', () => {
    const delay = (seconds(course(GRIDDLE, mold(1))) - seconds(course(HELD, mold(1)))) / 60;
    expect(delay).toBeGreaterThan(1);
    expect(delay).toBeLessThan(3);
    // The study names 20 % duty for one to four molds.
    const { duty } = course(GRIDDLE, mold(1.25, { count: 4 })).settled;
    expect(duty).toBeNear(0.2, { relative: 0.1 });
  });

  test('too few watts: the plate stops short of its setting and the heater never rests', () => {
    const weak = course({ ...GRIDDLE, watts: 150 }, mold(1.25, { count: 4 }));
    expect(weak.settled.duty).toBe(1);
    expect(weak.settled.plate).toBeLessThan(132);
    expect(weak.times[0]).toEqual({ kind: 'unreachable', because: 'plateau below target' });
    const longer = heatUpCourse(
      { plate: { ...GRIDDLE, watts: 150 }, molds: [mold(1.25, { count: 4 })], roomTemperature: 22 },
      { target: 100, duration: 43_200, interval: 60 },
    );
    // Half a day: settled.
    const end = longer.samples[longer.samples.length - 1];
    expect(end?.plate ?? 0).toBeNear(weak.settled.plate, { absolute: 0.01 });
  });

  test('the plate stays inside its dead band once it was there', () => {
    const { samples } = course({ ...GRIDDLE, deadBand: 10 }, mold(1));
    const settled = samples.slice(10).map(({ plate }) => plate);
    // The edge is found on a cubic between two steps.
    expect(Math.max(...settled)).toBeLessThan(137.001);
    expect(Math.min(...settled)).toBeGreaterThan(126.999);
    expect(Math.max(...settled) - Math.min(...settled)).toBeGreaterThan(5);
  });

  test('a joint costs time and leaves the upper half cooler; a perfect one changes nothing', () => {
    const [block, good, poor] = [undefined, 1e4, 300].map((jointConductance) =>
      course(
        HELD,
        mold(1.5, jointConductance === undefined ? {} : { jointConductance, lossShare: 0.6 }),
      ),
    );
    const whole = course(HELD, mold(1.5, { lossShare: 0.6 }));
    if (!block || !good || !poor) throw new Error('three courses');
    // A joint of 0.0001 m2K/W beside a contact of 0.01.
    expect(seconds(good)).toBeNear(seconds(whole), { relative: 0.02 });
    expect(seconds(poor)).toBeGreaterThan(seconds(good) * 1.05);
    expect(plateau(poor)).toBeLessThan(plateau(good) - 1);
  });

  test('molds of two kinds on one plate each have their own time', () => {
    const both = course(GRIDDLE, mold(1), mold(1.5));
    expect(both.times).toHaveLength(2);
    expect(seconds(both, 0)).toBeLessThan(seconds(both, 1));
    expect(both.samples).toHaveLength(61);
    expect(both.samples[0]).toEqual({ seconds: 0, plate: 22, tops: [22, 22] });
  });

  test('a mold already there needs no time, even if it cools', () => {
    const { times } = course(
      { ...GRIDDLE, watts: 150 },
      mold(1.25, { count: 4, startTemperature: 105 }),
    );
    expect(times[0]).toEqual({ kind: 'reached', seconds: 0 });
  });

  test('a plateau a hair above the target: later than half a day', () => {
    const huge = {
      length: 0.3,
      width: 0.3,
      height: 1,
      contactConductance: 60,
      startTemperature: 22,
    };
    const { settled } = course(HELD, huge);
    const target = (settled.tops[0] ?? 0) - 1e-3;
    const { times } = heatUpCourse(
      { plate: HELD, molds: [huge], roomTemperature: 22 },
      { ...WANTED, target },
    );
    expect(times[0]).toEqual({ kind: 'unreachable', because: 'later than half a day' });
  });

  test('bad figures are named', () => {
    const bad = (plate: object, block: object = {}, room = 22) =>
      errorText(() =>
        heatUpCourse(
          { plate: { ...GRIDDLE, ...plate }, molds: [mold(1, block)], roomTemperature: room },
          WANTED,
        ),
      );
    expect(bad({ watts: 0 })).toBe('plate watts must be greater than 0 W, got 0 W');
    expect(bad({ setting: 20 })).toBe(
      'plate setting must be greater than room temperature (22 °C), got 20 °C',
    );
    expect(bad({ deadBand: -1 })).toBe('dead band must be at least 0 °C, got -1 °C');
    expect(bad({}, { height: 0 })).toBe('block height must be greater than 0 m, got 0 m');
    expect(bad({}, { count: 1.5 })).toBe('molds on the plate must be a whole number, got 1.5');
    expect(bad({}, { lossShare: 0 })).toBe('share of the bare loss must be greater than 0, got 0');
    expect(bad({}, { jointConductance: 0 })).toBe(
      'joint conductance must be greater than 0 W/m²·K, got 0 W/m²·K',
    );
    expect(bad({}, {}, 80)).toBe('room temperature must be at most 60 °C, got 80 °C');
    expect(errorText(() => course(HELD))).toBe('molds on the plate must be at least 1, got 0');
    expect(
      errorText(() =>
        heatUpCourse(
          { plate: HELD, molds: [mold(1)], roomTemperature: 22 },
          { ...WANTED, interval: 1 },
        ),
      ),
    ).toBe('time between samples must be at least 1.8 s, got 1 s');
  });
});
