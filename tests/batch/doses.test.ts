import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nearestSpoon } from '../../shared/batch/nearestSpoon.ts';
import { type Recipe, scaledDose } from '../../shared/batch/scaledDose.ts';
import { wholeDrops } from '../../shared/batch/wholeDrops.ts';
import { toEngine } from '../../shared/units/toEngine.ts';
import { errorText } from '../heat/errorText.ts';

const BLACK: Recipe = Object.freeze({
  amount: 4,
  unit: 'drop',
  per: toEngine(8, 'floz'),
  dropVolume: 4e-8,
  density: 1200,
  spoonDensity: 400,
});

describe('scaledDose', () => {
  test('four drops in 8 fl oz are two in 4 fl oz', () => {
    // common practice, no source: the recipe; the halving is proportion
    const dose = scaledDose(BLACK, toEngine(4, 'floz'));
    expect(dose.amount).toBeNear(2, { relative: 1e-12 });
    expect(dose.drops).toBeNear(2, { relative: 1e-12 });
    expect(dose.mass).toBeNear(2 * 4e-8 * 1200, { relative: 1e-12 });
  });

  test.each([
    { unit: 'g', mass: 0.001 },
    { unit: 'mL', mass: 0.0012 },
    { unit: 'tsp', mass: 4.92892159375e-6 * 400 },
  ] as const)('one $unit of the reference amount weighs $mass kg', ({ unit, mass }) => {
    expect(scaledDose({ ...BLACK, amount: 1, unit }, BLACK.per).mass).toBeNear(mass, {
      relative: 1e-12,
    });
  });

  test('doses are in proportion to the base', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-5, max: 1e-2, noNaN: true }),
        fc.constantFrom('drop', 'mL', 'g', 'tsp'),
        (volume, unit) => {
          const one = scaledDose({ ...BLACK, unit }, volume);
          const two = scaledDose({ ...BLACK, unit }, 2 * volume);
          expect(two.mass).toBeNear(2 * one.mass, { relative: 1e-12 });
        },
      ),
    );
  });

  test('refuses an amount of nothing', () => {
    expect(errorText(() => scaledDose({ ...BLACK, amount: 0 }, 1e-4))).toBe(
      'amount must be greater than 0, got 0',
    );
  });
});

describe('wholeDrops', () => {
  const rule = { tolerance: 0.1, leastDrops: 8 };

  test('rounds within the tolerance', () => {
    expect(wholeDrops({ drops: 5.2, ...rule })).toEqual({
      kind: 'drops',
      drops: 5,
      error: expect.toBeNear(5 / 5.2 - 1, { relative: 1e-12 }),
    });
  });

  test('a quarter drop asks for four times the batch, or a cut of 1 in 32 and eight drops of it', () => {
    expect(wholeDrops({ drops: 0.25, ...rule })).toEqual({
      kind: 'not whole',
      batch: 4,
      batchDrops: 1,
      cut: 32,
      cutDrops: 8,
      cutError: 0,
    });
  });

  test('one and a half drops are not whole', () => {
    expect(wholeDrops({ drops: 1.5, ...rule })).toMatchObject({
      kind: 'not whole',
      batchDrops: 2,
      cut: 6,
      cutDrops: 9,
    });
  });

  test('never rounds to no drop, never past the tolerance; a cut gives at least the fewest drops', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 300, noNaN: true }), (drops) => {
        const result = wholeDrops({ drops, ...rule });
        if (result.kind === 'drops') {
          expect(result.drops).toBeGreaterThanOrEqual(1);
          expect(Math.abs(result.error)).toBeLessThanOrEqual(0.1);
          return;
        }
        expect(drops * result.batch).toBeNear(result.batchDrops, { relative: 1e-9 });
        expect(result.cutDrops).toBeGreaterThanOrEqual(8);
        expect(Math.abs(result.cutError)).toBeLessThanOrEqual(0.1);
      }),
    );
  });
});

test('wholeDrops: a cut keeps a tight tolerance too, and really thins', () => {
  // 8.5 drops are 6 % off either way: cut 1 in 2, 17 drops; 5.3 drops at 1 %: 1 in 3 gives 15.9, 0.6 % off
  expect(wholeDrops({ drops: 8.5, tolerance: 0.02, leastDrops: 8 })).toMatchObject({
    cut: 2,
    cutDrops: 17,
    cutError: 0,
  });
  expect(wholeDrops({ drops: 5.3, tolerance: 0.01, leastDrops: 8 })).toMatchObject({
    cut: 3,
    cutDrops: 16,
  });
  fc.assert(
    fc.property(
      fc.double({ min: 0.01, max: 100, noNaN: true }),
      fc.double({ min: 0.005, max: 0.5, noNaN: true }),
      (drops, tolerance) => {
        const result = wholeDrops({ drops, tolerance, leastDrops: 8 });
        fc.pre(result.kind !== 'drops');
        expect(result.cut).toBeGreaterThan(1);
        expect(Math.abs(result.cutError)).toBeLessThanOrEqual(tolerance);
      },
    ),
  );
});

test('wholeDrops refuses a tolerance past one half', () => {
  expect(errorText(() => wholeDrops({ drops: 1, tolerance: 0.6, leastDrops: 8 }))).toBe(
    'dose tolerance must be at most 0.5, got 0.6',
  );
});

describe('nearestSpoon', () => {
  test.each([
    { teaspoons: 1, expected: { scoops: 1, part: 1 } },
    { teaspoons: 0.26, expected: { scoops: 1, part: 4 } },
    { teaspoons: 0.74, expected: { scoops: 3, part: 4 } },
    { teaspoons: 2, expected: { scoops: 2, part: 1 } },
    { teaspoons: 1 / 64, expected: { scoops: 1, part: 64 } },
  ])('$teaspoons tsp is $expected', ({ teaspoons, expected }) => {
    expect(nearestSpoon(toEngine(teaspoons, 'tsp') * 400, 400)).toMatchObject(expected);
  });

  test('states its error', () => {
    expect(nearestSpoon(toEngine(0.001, 'tsp') * 400, 400).error).toBeNear(1000 / 64 - 1, {
      relative: 1e-9,
    });
  });

  test('between 1/64 and 3 teaspoons no spoon is off by more than half', () => {
    fc.assert(
      fc.property(fc.double({ min: 1 / 64, max: 3, noNaN: true }), (teaspoons) => {
        // one scoop to two scoops is the widest step: 1 against 4/3 at its middle
        expect(
          Math.abs(nearestSpoon(toEngine(teaspoons, 'tsp') * 400, 400).error),
        ).toBeLessThanOrEqual(1 / 3 + 1e-9);
      }),
    );
  });
});
