import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { yieldRate } from '../../shared/quality/yieldRate.ts';
import { evenReal } from '../evenReal.ts';
import { errorText } from '../heat/errorText.ts';

describe('yieldRate', () => {
  test.each([
    {
      given: [81, 263, 0.95],
      low: 0.2553,
      high: 0.3662,
      within: 5e-5,
      source: 'NEWCOMBE1998, Table I, D9, printed to 4 places',
    },
    {
      given: [0, 20, 0.95],
      low: 0,
      high: 0.1611,
      within: 5e-5,
      source: 'NEWCOMBE1998, Table I, D11',
    },
    {
      given: [10, 14, 0.95],
      low: 0.4535092,
      high: 0.8827862,
      within: 5e-8,
      source: 'D12 at z = 1.959964, recomputed',
    },
    {
      given: [10, 14, 0.9500042097],
      low: 0.4535045882751561,
      high: 0.882788120898909,
      within: 1e-9,
      source: 'WILSONPACKAGE, D12: its z is 1.96 exactly, a confidence of 0.9500042097',
    },
  ] as const)(
    '$given lies between $low and $high',
    ({ given: [good, poured, confidence], low, high, within }) => {
      const rate = yieldRate(good, poured, confidence);
      expect(rate.low).toBeNear(low, { absolute: within });
      expect(rate.high).toBeNear(high, { absolute: within });
    },
  );

  test('holds the rate, mirrors good and bad, and narrows with the record', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2000 }), evenReal(0, 1), (poured, part) => {
        const good = Math.round(poured * part);
        const { rate, low, high } = yieldRate(good, poured, 0.9);
        const mirror = yieldRate(poured - good, poured, 0.9);
        expect(low).toBeLessThanOrEqual(rate);
        expect(high).toBeGreaterThanOrEqual(rate);
        expect(low).toBeNear(1 - mirror.high, { absolute: 1e-12 });
        const longer = yieldRate(good * 4, poured * 4, 0.9);
        expect(longer.high - longer.low).toBeLessThan(high - low);
      }),
    );
  });

  test.each([
    { given: [5, 4, 0.9], because: 'good must be at most 4, got 5' },
    { given: [0, 0, 0.9], because: 'poured must be at least 1, got 0' },
    { given: [1, 2, 1], because: 'confidence must be less than 1, got 1' },
  ] as const)('refuses $given', ({ given: [good, poured, confidence], because }) => {
    expect(errorText(() => yieldRate(good, poured, confidence))).toBe(because);
  });
});
