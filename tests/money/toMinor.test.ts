import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CURRENCIES, CURRENCY_CODES } from '../../shared/book/currencies.ts';
import {
  ceilToStep,
  fromMinor,
  LARGEST_MINOR,
  shareMinor,
  splitMinor,
  toMinor,
} from '../../shared/money/toMinor.ts';
import { evenReal } from '../evenReal.ts';
import { errorText } from '../heat/errorText.ts';

const sum = (numbers: readonly number[]) => numbers.reduce((all, one) => all + one, 0);
const anyMinor = fc.integer({ min: -LARGEST_MINOR, max: LARGEST_MINOR });
const anyCurrency = fc.constantFrom(...CURRENCY_CODES);

/** Half away from zero on the digits of a decimal text, in whole numbers of any size. */
function roundedText(whole: bigint, fraction: string, digits: number): bigint {
  const padded = fraction.padEnd(digits + 1, '0');
  const kept = BigInt(padded.slice(0, digits) || '0');
  const up = Number(padded[digits]) >= 5 ? 1n : 0n;
  return whole * 10n ** BigInt(digits) + kept + up;
}

describe('toMinor', () => {
  test.each([
    [1.005, 'USD', 101],
    [1.004999, 'USD', 100],
    [-1.005, 'USD', -101],
    [0.285, 'USD', 29],
    [3 * 0.335, 'USD', 101],
    [0.7 * 1.15, 'USD', 81], // 0.805 less the last binary digit
    [8.345, 'USD', 835],
    [-0.004, 'USD', 0],
    [1e-7, 'USD', 0],
    [1234.5, 'JPY', 1235],
    [1.0005, 'KWD', 1001],
    [1e11, 'USD', 1e13],
  ] as const)('%d %s is %d smallest units', (amount, currency, minor) => {
    expect(toMinor(amount, currency)).toBe(minor);
  });

  test('rounds any decimal of up to fifteen digits as its text rounds', () => {
    fc.assert(
      fc.property(
        fc.bigInt({ min: 0n, max: 99_999_999n }),
        fc.stringMatching(/^\d{1,7}$/),
        anyCurrency,
        fc.constantFrom('', '-'),
        (whole, fraction, currency, sign) => {
          const expected = roundedText(whole, fraction, CURRENCIES[currency].digits);
          const minor = toMinor(Number(`${sign}${whole}.${fraction}`), currency);
          expect(BigInt(minor)).toBe(sign === '-' ? -expected : expected);
          expect(Object.is(minor, -0)).toBe(false);
        },
      ),
    );
  });

  test('undoes fromMinor for every whole number of smallest units', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e13, max: 1e13 }), (minor) => {
        expect(toMinor(fromMinor(minor, 'USD'), 'USD')).toBe(minor);
        expect(toMinor(fromMinor(minor, 'KWD'), 'KWD')).toBe(minor);
        const whole = Math.trunc(minor / 1000) + 0; // never -0
        expect(toMinor(fromMinor(whole, 'JPY'), 'JPY')).toBe(whole);
      }),
    );
  });

  test.each([
    [Number.NaN, 'shipping must be a number, got not a number'],
    [Number.POSITIVE_INFINITY, 'shipping must be a number, got infinity'],
    [2e11, 'shipping must be at most 100000000000, got 200000000000'],
    [-2e11, 'shipping must be at least -100000000000, got -200000000000'],
  ])('refuses %d', (amount, sentence) => {
    expect(errorText(() => toMinor(amount, 'USD', 'shipping'))).toBe(sentence);
  });
});

describe('splitMinor', () => {
  test.each([
    [100, [1, 1, 1], [34, 33, 33]],
    [-100, [1, 1, 1], [-34, -33, -33]],
    [5, [0, 3, 0, 2], [0, 3, 0, 2]],
    [1, [0.1, 0.2], [0, 1]],
    [2, [1, 1, 1, 1], [1, 1, 0, 0]],
    [0, [0, 0], [0, 0]],
    [0, [], []],
  ] as const)('%d by %j is %j', (total, weights, parts) => {
    expect(splitMinor(total, weights)).toEqual(parts);
  });

  test('parts add up exactly, lie within one unit of their share, and nothing goes to a weight of 0', () => {
    const anyWeight = fc.oneof(
      fc.double({ min: 0, max: 1.7e308, noNaN: true }),
      evenReal(0, 1),
      fc.integer({ min: 0, max: 5 }),
    );
    fc.assert(
      fc.property(
        anyMinor,
        fc.array(anyWeight, { minLength: 1, maxLength: 40 }).filter((all) => Math.max(...all) > 0),
        (total, weights) => {
          const parts = splitMinor(total, Object.freeze(weights));
          expect(parts).toHaveLength(weights.length);
          expect(parts.reduce((all, part) => all + BigInt(part), 0n)).toBe(BigInt(total));
          const largest = Math.max(...weights);
          const scaled = weights.map((weight) => weight / largest);
          parts.forEach((part, index) => {
            const exact = (total * (scaled[index] ?? 0)) / sum(scaled);
            expect(Math.abs(part - exact)).toBeLessThan(1.1); // a tenth for doubles near 1e14
            if (weights[index] === 0) expect(part).toBe(0);
            expect(Object.is(part, -0)).toBe(false);
          });
        },
      ),
      { numRuns: 1000 },
    );
  });

  test('equal weights part by at most one unit', () => {
    fc.assert(
      fc.property(anyMinor, fc.integer({ min: 1, max: 30 }), (total, count) => {
        const parts = splitMinor(total, Array<number>(count).fill(0.1));
        expect(Math.max(...parts) - Math.min(...parts)).toBeLessThanOrEqual(1);
      }),
    );
  });

  test.each([
    [10, [0, 0], 'sum of the weights must be greater than 0, got 0'],
    [10, [], 'sum of the weights must be greater than 0, got 0'],
    [10, [1, -1], 'weight must be at least 0, got -1'],
    [10, [Number.NaN], 'weight must be a number, got not a number'],
    [0.5, [1], 'amount to split must be a whole number, got 0.5'],
    [1e15, [1], 'amount to split must be at most 100000000000000, got 1000000000000000'],
  ] as const)('refuses %d by %j', (total, weights, sentence) => {
    expect(errorText(() => splitMinor(total, weights))).toBe(sentence);
  });
});

describe('shareMinor and ceilToStep', () => {
  test.each([
    [1000, 0.0725, 73],
    [-1000, 0.0725, -73],
    [150, 0.35, 53],
    [70, 1.15, 81],
    [335, 0.3, 101],
    [7, 0, 0],
  ])('a share of %d by %d is %d', (minor, share, expected) => {
    expect(shareMinor(minor, share)).toBe(expected);
  });

  test.each([
    [(55 / 0.55) * 1.1, 5, 110],
    [110.001, 5, 115],
    [0.2, 5, 5],
    [0, 5, 0],
    [1, 1, 1],
  ])('%d is lifted by steps of %d to %d', (minor, step, expected) => {
    expect(ceilToStep(minor, step)).toBe(expected);
  });

  test('a lifted amount is a multiple of the step, never below it and less than a step above', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-6, max: 1e7, noNaN: true }),
        fc.integer({ min: 1, max: 5000 }),
        (minor, step) => {
          const lifted = ceilToStep(minor, step);
          expect(lifted % step).toBe(0);
          expect(lifted).toBeGreaterThanOrEqual(minor * (1 - 1e-11)); // the noise that is forgiven
          expect(lifted - minor).toBeLessThan(step);
        },
      ),
    );
  });
});
