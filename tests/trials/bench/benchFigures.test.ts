import { describe, expect, test } from 'vitest';
import { findTrials } from '../../../shared/trials/findTrials.ts';
import { trialBookOf } from '../trialCells.ts';

const PUCK = {
  trial: 'B-1',
  kind: 'puck',
  material: 'Soft',
  seconds: 39.5,
  tiltEvery: 5,
  layerThickness: 3,
  moldTop: 60,
  cupTemperature: 165,
} as const;
const HEATING = {
  trial: 'B-2',
  kind: 'microwave',
  weight: 240,
  startTemperature: 22,
  endTemperature: 67,
  seconds: 49,
} as const;
const DROPS = { trial: 'B-3', kind: 'drops', material: 'Black', weight: 2.4, drops: 50 } as const;

function found(...benchTrials: readonly Readonly<Record<string, string | number>>[]) {
  return findTrials(trialBookOf({ benchTrials }));
}

describe('bench trials', () => {
  test('a 3 mm puck on a mold at 60 °C that stops around 37 s sets at 92 °C (HEATSTUDY)', () => {
    const { proposals, problems } = found(PUCK);
    expect(problems).toEqual([]);
    expect(proposals).toMatchObject([
      {
        figure: 'setTemperature',
        of: 'Soft',
        present: { value: 92, from: 'default' },
        // The study gives whole seconds, at 1.5 K a second.
        result: {
          kind: 'fitted',
          count: 1,
          figure: { value: expect.toBeNear(92, { absolute: 1 }) },
        },
        trials: [{ trial: 'B-1' }],
      },
    ]);
  });

  test('240 g by 45 K in 49 s with 1000 W is a share of 0.45 (HEATSTUDY)', () => {
    expect(found(HEATING).proposals).toMatchObject([
      {
        figure: 'microwaveEfficiency',
        of: '',
        present: { value: 0.45, from: 'default' },
        // The study's 158 s for 145 K, to whole seconds of a third of them.
        result: { figure: { value: expect.toBeNear(0.45, { relative: 0.03 }) } },
      },
    ]);
  });

  test('50 drops of 2.4 g at 1.2 g/mL are 40 µL each, by hand', () => {
    expect(found(DROPS).proposals).toMatchObject([
      {
        figure: 'dropVolume',
        of: 'Black',
        present: { value: 4e-8, from: 'default' },
        result: { figure: { value: expect.toBeNear(4e-8, { relative: 1e-12 }) } }, // last digits
      },
    ]);
  });

  test('a bottle with no density counts as the plan counts it', () => {
    const { proposals } = found({ ...DROPS, material: 'Plain', weight: 2.2 });
    // 1.1 g/mL is the default of colorants: 40 µL again.
    expect(proposals).toMatchObject([
      { result: { figure: { value: expect.toBeNear(4e-8, { relative: 1e-12 }) } } }, // last digits
    ]);
  });

  test('several of one thing are pooled, those of another are not', () => {
    const { proposals } = found(DROPS, { ...DROPS, weight: 2.5 }, PUCK, {
      ...DROPS,
      material: 'Plain',
    });
    expect(proposals.map(({ of, result }) => [of, 'count' in result && result.count])).toEqual([
      ['Black', 2],
      ['Soft', 1],
      ['Plain', 1],
    ]);
    expect(proposals[0]).toMatchObject({
      // Nearly alike in error: close to their mean, 40.83 µL.
      result: { figure: { value: expect.toBeNear(4.0833e-8, { relative: 2e-3 }) } },
    });
  });

  test.each([
    {
      row: { ...PUCK, layerThickness: '' },
      heading: 'Layer thickness',
      text: 'layer thickness must be given, got nothing',
    },
    {
      row: { ...PUCK, moldTop: 170 },
      heading: 'Kind',
      text: 'pour temperature must be greater than mold temperature (170 °C), got 158 °C',
    },
    {
      row: { ...HEATING, endTemperature: 20 },
      heading: 'Kind',
      text: 'end temperature must be greater than start temperature (22 °C), got 20 °C',
    },
    {
      row: { ...HEATING, seconds: 10 },
      heading: 'Kind',
      text: 'microwave efficiency must be at most 1, got 2.2572',
    },
    {
      row: { ...DROPS, drops: 49.5 },
      heading: 'Drops',
      text: 'drops must be a whole number, got 49.5',
    },
    { row: { ...DROPS, kind: '' }, heading: 'Kind', text: 'kind must be given, got nothing' },
    {
      row: { ...DROPS, material: '<b>' },
      heading: 'Material',
      text: 'material must be listed in Materials, got "<b>"',
    },
  ])('are named where they cannot be used: $text', ({ row, heading, text }) => {
    expect(found(row)).toEqual({
      system: 'metric',
      proposals: [],
      problems: [{ sheet: 'Bench trials', row: 2, heading, text }],
    });
  });

  test('a figure that its cell would refuse is not for use', () => {
    expect(found({ ...DROPS, weight: 30 }).proposals).toMatchObject([
      {
        isInUse: false,
        result: {
          kind: 'beyond',
          text: 'drop volume must be at most 200 µL, got 500 µL',
        },
      },
    ]);
  });
});
