import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { band } from '../../shared/uncertainty/band.ts';
import { quasiRandom } from '../../shared/uncertainty/quasiRandom.ts';
import { ranks } from '../../shared/uncertainty/rankCorrelation.ts';
import { evenReal } from '../evenReal.ts';

const NAMES = ['one', 'two', 'three', 'none'] as const;
type Name = (typeof NAMES)[number];
const NEVER = Number.POSITIVE_INFINITY;

/** Band of an answer made of four figures, each drawn evenly from 0 to 1. */
function bandOf(answer: (figures: readonly number[]) => number, draws = 128, seed = 1) {
  const points = quasiRandom(draws, NAMES.length, seed);
  const drawn = new Map<Name, readonly number[]>(
    NAMES.map((name, axis) => [name, ranks(points.map((point) => point[axis] ?? 0))]),
  );
  return band(points.map(answer), drawn);
}

describe('band', () => {
  test('of one even figure runs from 5 % to 95 % of it and names it', () => {
    const { low, high, widest } = bandOf(([one = 0]) => 100 + 40 * one);
    // n equal steps shifted by less than one: within 1/128 of the range.
    expect(low).toBeNear(102, { absolute: 40 / 128 });
    expect(high).toBeNear(138, { absolute: 40 / 128 });
    expect(widest).toBe('one');
  });

  test('names the figure that moves the answer most, rising or falling', () => {
    expect(bandOf(([one = 0, two = 0, three = 0]) => one - 3 * two + three).widest).toBe('two');
    expect(bandOf(([one = 0, two = 0, three = 0]) => one + two * 0.5 + 4 * three).widest).toBe(
      'three',
    );
  });

  test('never names a figure without influence', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 10_000 }),
        fc.array(evenReal(-5, 5), { minLength: 3, maxLength: 3 }),
        (seed, [a = 0, b = 0, c = 0]) => {
          const answer = ([one = 0, two = 0, three = 0]: readonly number[]) =>
            a * one + b * two ** 2 + c * one * three;
          expect(bandOf(answer, 128, seed).widest).not.toBe('none');
        },
      ),
    );
  });

  test('names the first of three figures that share the answer nearly evenly', () => {
    // 1.3 of the sum's root mean square over sqrt(1.3^2 + 2): a correlation of about 0.68
    const widest = bandOf(([one = 0, two = 0, three = 0]) => 1.3 * one + two - three).widest;
    expect(widest).toBe('one');
  });

  test('names nothing where no figure stands out of the noise', () => {
    // Turns back in the middle, as far up as down: no rank correlation at all.
    expect(bandOf(([one = 0]) => (one - 0.5) ** 2)).not.toHaveProperty('widest');
  });

  test('of answers all alike has no width and no name', () => {
    expect(bandOf(() => 7)).toEqual({ low: 7, high: 7 });
    // One draw in 26 is another: outside nine of ten, though its figure would stand out.
    expect(bandOf(([one = 0]) => (one > 0.962 ? 9 : 7))).toEqual({ low: 7, high: 7 });
  });

  test('leaves open ends out, and names what opens them', () => {
    const opens = bandOf(([one = 0]) => (one > 0.6 ? NEVER : 100 * one));
    expect(opens).toEqual({ low: expect.any(Number), widest: 'one' });
    expect(bandOf(() => NEVER)).toEqual({});
    const rarely = bandOf(([one = 0]) => (one > 0.99 ? NEVER : 100 * one));
    expect(rarely.high).toBeNear(95, { absolute: 1 }); // one step of 128 of the range
  });

  test('grows with the range, and shifts with the answer', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 100, noNaN: true }),
        evenReal(-1000, 1000),
        (width, start) => {
          const narrow = bandOf(([one = 0, two = 0]) => start + width * (one + two));
          const wide = bandOf(([one = 0, two = 0]) => start + 2 * width * (one + two));
          const range = (ends: { readonly low?: number; readonly high?: number }) =>
            (ends.high ?? Number.NaN) - (ends.low ?? Number.NaN);
          // Rounding beside a start of up to 1000.
          expect(range(wide)).toBeNear(2 * range(narrow), { absolute: 1e-9 });
        },
      ),
    );
  });
});
