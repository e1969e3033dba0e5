import fc from 'fast-check';
import jstat from 'jstat';
import { describe, expect, test } from 'vitest';
import { compareYields } from '../../../shared/quality/yields/compareYields.ts';
import { fitYieldSpread } from '../../../shared/quality/yields/fitYieldSpread.ts';
import { shrunkenYield } from '../../../shared/quality/yields/shrunkenYield.ts';
import { FEWEST_GROUPS, yieldPrior } from '../../../shared/quality/yields/yieldPrior.ts';
import { errorText } from '../../heat/errorText.ts';
import { frozen } from '../frozen.ts';

const ASSUMED = Object.freeze({ mean: 0.9, weight: 10 });
const alike = (groups: number, good = 90, poured = 100) =>
  frozen(Array.from({ length: groups }, () => ({ good, poured })));

/** Yields 70 to 98 %, 200 pieces each: far more apart than chance puts them. */
const APART = frozen([140, 150, 160, 170, 180, 190, 196].map((good) => ({ good, poured: 200 })));

describe('yieldPrior', () => {
  test('below five groups is the shop’s assumption, however many pieces they hold', () => {
    expect(yieldPrior(alike(FEWEST_GROUPS - 1, 7000, 10_000), ASSUMED)).toEqual({
      ...ASSUMED,
      from: 'assumption',
      groups: 4,
      because: 'few groups',
    });
  });

  test.each([
    { good: 100, because: 'all good' },
    { good: 0, because: 'all bad' },
  ])('of groups that are $because is the shop’s assumption', ({ good, because }) => {
    expect(yieldPrior(alike(8, good), ASSUMED)).toMatchObject({ ...ASSUMED, because });
  });

  test('takes mean and weight of greatest likelihood once the record settles them', () => {
    const fit = fitYieldSpread(APART);
    expect(yieldPrior(APART, ASSUMED)).toEqual({
      from: 'record',
      groups: 7,
      weightBy: 'record',
      mean: fit.kind === 'differ' && fit.mean,
      weight: fit.kind === 'differ' && fit.weight,
    });
  });

  test('over-dispersion nil: the record’s mean, and the assumed weight raised to what the record does not rule out', () => {
    const groups = alike(10);
    const fit = fitYieldSpread(groups);
    const least = fit.kind === 'alike' ? (fit.weightFrom ?? 0) : 0;
    const prior = yieldPrior(groups, ASSUMED);
    expect(prior).toMatchObject({ from: 'record', weightBy: 'assumption within the record' });
    expect(prior.weight).toBe(least);
    expect(prior.mean).toBeNear(0.9, { relative: 1e-12 }); // arithmetic only
    expect(yieldPrior(groups, { mean: 0.9, weight: 1000 }).weight).toBe(1000);
  });

  test('a flat likelihood keeps the assumed weight', () => {
    // two pieces a group: next to nothing about how groups differ
    const groups = frozen([2, 1, 2, 2, 1, 2].map((good) => ({ good, poured: 2 })));
    expect(yieldPrior(groups, ASSUMED)).toMatchObject({
      from: 'record',
      weight: 10,
      weightBy: 'assumption within the record',
      mean: expect.toBeNear(10 / 12, { relative: 1e-12 }), // arithmetic only
    });
  });
});

describe('shrunkenYield', () => {
  test('a mold with four pieces does not swing', () => {
    const prior = yieldPrior(APART, ASSUMED);
    const none = shrunkenYield({ good: 0, poured: 0 }, prior, 0.95);
    const [bad, good] = [0, 4].map((count) =>
      shrunkenYield({ good: count, poured: 4 }, prior, 0.95),
    );
    expect(none.expected).toBeNear(prior.mean, { relative: 1e-12 }); // arithmetic only
    // by hand: four pieces against a weight of about 12 move it by a quarter of the way at most
    expect((good?.expected ?? 1) - none.expected).toBeLessThan(0.05);
    expect(none.expected - (bad?.expected ?? 0)).toBeLessThan(0.25);
  });

  test('lies between the group’s own share and the prior, and nearer its own with more pieces', () => {
    const share = fc.double({ min: 0.02, max: 0.98, noNaN: true });
    fc.assert(
      fc.property(
        share,
        share,
        fc.double({ min: 0.5, max: 200, noNaN: true }),
        (mean, part, weight) => {
          const at = (poured: number) => {
            const good = Math.round(part * poured);
            return {
              poured,
              good,
              rate: good / poured,
              ...shrunkenYield({ good, poured }, { mean, weight }, 0.9),
            };
          };
          const [few, many] = [at(20), at(2000)];
          for (const { rate, expected } of [few, many]) {
            expect(expected).toBeGreaterThanOrEqual(Math.min(rate, mean) - 1e-12);
            expect(expected).toBeLessThanOrEqual(Math.max(rate, mean) + 1e-12);
          }
          // equal tails hold the mean where neither side of the belief is a fraction of a piece
          for (const { poured, good, expected, low, high } of [few, many]) {
            const goodWeight = mean * weight + good;
            const badWeight = (1 - mean) * weight + poured - good;
            if (Math.min(goodWeight, badWeight) < 1) continue;
            expect(low).toBeLessThan(expected);
            expect(high).toBeGreaterThan(expected);
          }
          expect(Math.abs(many.expected - many.rate)).toBeLessThanOrEqual(weight / (2000 + weight));
          expect(many.high - many.low).toBeLessThan(0.06);
        },
      ),
    );
  });

  test('is the conjugate update: GELMAN, section 2.4, by hand', () => {
    // beta(9 + 16, 1 + 4): mean 25 / 30
    expect(shrunkenYield({ good: 16, poured: 20 }, ASSUMED, 0.9).expected).toBeNear(25 / 30, {
      relative: 1e-12, // arithmetic only
    });
    // 5 % of beta(25, 5) lie below the interval, 5 % above it
    const { low, high } = shrunkenYield({ good: 16, poured: 20 }, ASSUMED, 0.9);
    expect(jstat.jStat.beta.cdf(low, 25, 5)).toBeNear(0.05, { absolute: 5e-7 }); // JSTAT has six digits
    expect(jstat.jStat.beta.cdf(high, 25, 5)).toBeNear(0.95, { absolute: 5e-7 });
  });

  test.each([
    [() => shrunkenYield({ good: 5, poured: 4 }, ASSUMED, 0.9), 'good must be at most 4, got 5'],
    [
      () => shrunkenYield({ good: 1, poured: 4 }, ASSUMED, 1),
      'confidence must be less than 1, got 1',
    ],
  ])('refuses nonsense %#', (call, message) => {
    expect(errorText(call)).toBe(message);
  });
});

describe('compareYields', () => {
  const groups = frozen([
    { group: 'one', good: 81, poured: 263 },
    { group: 'two', good: 0, poured: 20 },
    { group: 'three', good: 10, poured: 14 },
  ]);
  const { groups: compared, prior } = compareYields(groups, ASSUMED, 0.95);

  test('gives the published intervals: NEWCOMBE1998 Table I, D9 to D11; WILSONPACKAGE, D12', () => {
    const printed = { absolute: 5e-5 }; // four places
    expect(compared[0]?.wilson.low).toBeNear(0.2553, printed);
    expect(compared[0]?.wilson.high).toBeNear(0.3662, printed);
    expect(compared[0]?.exact.low).toBeNear(0.2527, printed);
    expect(compared[0]?.exact.high).toBeNear(0.3676, printed);
    expect(compared[1]?.wilson).toEqual({ low: 0, high: expect.toBeNear(0.1611, printed) });
    expect(compared[1]?.exact).toEqual({ low: 0, high: expect.toBeNear(0.1684, printed) });
    // the package takes z = 1.96: five digits are the same
    expect(compared[2]?.wilson.low).toBeNear(0.4535045882751561, { absolute: 1e-5 });
    expect(compared[2]?.wilson.high).toBeNear(0.882788120898909, { absolute: 1e-5 });
  });

  test('keeps the order, and says what it drew them toward', () => {
    expect(compared.map(({ group }) => group)).toEqual(['one', 'two', 'three']);
    expect(prior).toMatchObject({ from: 'assumption', because: 'few groups' });
  });
});
