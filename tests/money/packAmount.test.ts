import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type BenchAmount,
  benchAmount,
  type PackUnit,
  packAmount,
} from '../../shared/money/packAmount.ts';

const GALLON = 231 * 0.0254 ** 3; // HB44, Appendix C
const POUND = 0.45359237;

describe('packAmount', () => {
  test.each<{
    given: BenchAmount;
    unit: PackUnit;
    density?: number;
    dropVolume?: number;
    expected: number;
  }>([
    { given: { kind: 'volume', volume: GALLON }, unit: 'gal', expected: 1 },
    { given: { kind: 'volume', volume: GALLON }, unit: 'fl oz', expected: 128 },
    // HB44, Appendix C: 1 US gallon is 3785.411784 mL.
    { given: { kind: 'volume', volume: GALLON }, unit: 'mL', expected: 3785.411784 },
    { given: { kind: 'mass', mass: POUND }, unit: 'lb', expected: 1 },
    { given: { kind: 'mass', mass: POUND }, unit: 'oz', expected: 16 },
    { given: { kind: 'mass', mass: POUND }, unit: 'g', expected: 453.59237 },
    // By hand: 1.04 g/mL x 3785.411784 mL.
    { given: { kind: 'mass', mass: 3.93682825536 }, unit: 'gal', density: 1040, expected: 1 },
    { given: { kind: 'volume', volume: 1e-4 }, unit: 'g', density: 1200, expected: 120 },
    // GNUUNITS: a drop is 1/20 mL.
    { given: { kind: 'drops', drops: 20 }, unit: 'mL', dropVolume: 5e-8, expected: 1 },
    {
      given: { kind: 'drops', drops: 20 },
      unit: 'g',
      dropVolume: 5e-8,
      density: 1100,
      expected: 1.1,
    },
    // The usual drop of 40 µL.
    { given: { kind: 'drops', drops: 25 }, unit: 'mL', expected: 1 },
    { given: { kind: 'pieces', pieces: 12 }, unit: 'each', expected: 12 },
  ])('$given is $expected $unit', ({ given, unit, density, dropVolume, expected }) => {
    const material = {
      material: 'Black',
      packUnit: unit,
      ...(density === undefined ? {} : { density }),
      ...(dropVolume === undefined ? {} : { dropVolume }),
    };
    expect(packAmount(given, material)).toEqual({
      kind: 'amount',
      amount: expect.toBeNear(expected, { relative: 1e-12 }), // binary rounding
      unit,
    });
  });

  test.each<{ given: BenchAmount; unit?: PackUnit; because: string }>([
    {
      given: { kind: 'mass', mass: 1 },
      because: 'pack unit of Black must be given in Materials',
    },
    {
      given: { kind: 'mass', mass: 1 },
      unit: 'gal',
      because:
        'density of Black must be given in Materials to turn its weight into a volume and back',
    },
    {
      given: { kind: 'drops', drops: 4 },
      unit: 'oz',
      because:
        'density of Black must be given in Materials to turn its weight into a volume and back',
    },
    {
      given: { kind: 'pieces', pieces: 4 },
      unit: 'oz',
      because: 'Black is bought by the oz: a number of pieces does not say how much it is',
    },
    {
      given: { kind: 'mass', mass: 1 },
      unit: 'each',
      because: 'Black is bought by the piece: a weight or volume does not say how many it is',
    },
  ])('says why $given has no amount in $unit', ({ given, unit, because }) => {
    const material = { material: 'Black', ...(unit === undefined ? {} : { packUnit: unit }) };
    expect(packAmount(given, material)).toEqual({ kind: 'no answer', because });
  });
});

describe('benchAmount', () => {
  test('brings every amount back', () => {
    const units = fc.constantFrom<PackUnit>('gal', 'fl oz', 'mL', 'lb', 'oz', 'g');
    const value = fc.double({ min: 1e-6, max: 1e3, noNaN: true });
    fc.assert(
      fc.property(
        units,
        value,
        fc.double({ min: 100, max: 9000, noNaN: true }),
        (packUnit, amount, density) => {
          const material = { material: 'Black', packUnit, density };
          for (const kind of ['mass', 'volume'] as const) {
            const bench = benchAmount(amount, kind, material);
            if (bench.kind === 'no answer') throw new Error(bench.because);
            expect(packAmount(bench, material)).toMatchObject({
              amount: expect.toBeNear(amount, { relative: 1e-12 }), // binary rounding
            });
          }
        },
      ),
    );
  });

  test('keeps pieces apart from weights', () => {
    const hook = { material: 'Hook', packUnit: 'each' } as const;
    expect(benchAmount(3, 'pieces', hook)).toEqual({ kind: 'pieces', pieces: 3 });
    expect(benchAmount(3, 'mass', hook)).toEqual({
      kind: 'no answer',
      because: 'Hook is bought by the piece: its number does not say its mass',
    });
    expect(benchAmount(3, 'pieces', { material: 'Salt', packUnit: 'lb' })).toEqual({
      kind: 'no answer',
      because: 'Salt is bought by the lb: its amount is no number of pieces',
    });
    expect(benchAmount(3, 'volume', { material: 'Salt', packUnit: 'lb' })).toEqual({
      kind: 'no answer',
      because:
        'density of Salt must be given in Materials to turn its weight into a volume and back',
    });
    expect(benchAmount(3, 'volume', { material: 'Salt' })).toEqual({
      kind: 'no answer',
      because: 'pack unit of Salt must be given in Materials',
    });
  });
});
