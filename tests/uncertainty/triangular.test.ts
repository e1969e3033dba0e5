import fc from 'fast-check';
import jstat from 'jstat';
import { expect, test } from 'vitest';
import { triangular } from '../../shared/uncertainty/triangular.ts';
import { evenReal } from '../evenReal.ts';
import { errorText } from '../heat/errorText.ts';

const triangles = fc
  .tuple(evenReal(-300, 3000), fc.double({ min: 0.01, max: 2000, noNaN: true }), evenReal(0, 1))
  .map(([low, width, part]) => ({ low, mode: low + part * width, high: low + width }));

test('triangular agrees with an outside library (JSTAT)', () => {
  fc.assert(
    fc.property(triangles, evenReal(0, 1), (triangle, share) => {
      const { low, mode, high } = triangle;
      const outside = jstat.jStat.triangular.inv(share, low, high, mode);
      // The library takes a root of a ratio; both lose digits only where the range is small beside the value.
      expect(triangular(share, triangle)).toBeNear(outside, {
        absolute: 1e-6 * (high - low) + 1e-9,
      });
    }),
  );
});

test('triangular has the mean and deviation of its formula', () => {
  fc.assert(
    fc.property(triangles, (triangle) => {
      const { low, mode, high } = triangle;
      const steps = 20_000;
      const values = Array.from({ length: steps }, (_, index) =>
        triangular((index + 0.5) / steps, triangle),
      );
      const mean = values.reduce((sum, value) => sum + value, 0) / steps;
      const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / steps;
      const product = low * mode + low * high + mode * high;
      // Midpoint rule; the square root at the ends costs the most.
      expect(mean).toBeNear((low + mode + high) / 3, { absolute: 1e-5 * (high - low) + 1e-9 });
      const expected = (low ** 2 + mode ** 2 + high ** 2 - product) / 18;
      expect(variance).toBeNear(expected, { absolute: 1e-4 * (high - low) ** 2 + 1e-6 });
    }),
    { numRuns: 20 },
  );
});

test('triangular runs from low through the mode to high, never falling', () => {
  fc.assert(
    fc.property(triangles, evenReal(0, 1), evenReal(0, 1), (triangle, one, other) => {
      const { low, mode, high } = triangle;
      // no tolerance: the ends are met exactly
      expect(triangular(0, triangle)).toBeNear(low, { absolute: 0 });
      expect(triangular(1, triangle)).toBeNear(high, { absolute: 0 });
      // Rounding of the share and of a square root near nothing.
      const atMode = triangular((mode - low) / (high - low), triangle);
      expect(atMode).toBeNear(mode, { absolute: 1e-6 * (high - low) });
      const [first, second] = one < other ? [one, other] : [other, one];
      // Rounding where the two sides meet.
      const rise = triangular(second, triangle) - triangular(first, triangle);
      expect(rise).toBeGreaterThanOrEqual(-1e-9);
    }),
  );
});

test('triangular of no range is its one value', () => {
  expect(triangular(0.3, { low: 7, mode: 7, high: 7 })).toBe(7);
});

test('triangular by hand: from 0 to 4 with mode 1', () => {
  // Density 2 x / 4 to 1, so 1/4 of the chance below the mode; 1/16 below 1/2; above, 4 - sqrt(share x 12).
  const triangle = { low: 0, mode: 1, high: 4 };
  expect(triangular(1 / 16, triangle)).toBe(0.5);
  expect(triangular(1 / 4, triangle)).toBe(1);
  expect(triangular(1 - 1 / 12, triangle)).toBeNear(3, { absolute: 1e-12 }); // rounding only
});

test('triangular names what is out of order', () => {
  expect(errorText(() => triangular(1.5, { low: 0, mode: 1, high: 2 }))).toBe(
    'share must be at most 1, got 1.5',
  );
  expect(errorText(() => triangular(0.5, { low: 3, mode: 1, high: 2 }))).toBe(
    'high must be at least 3, got 2',
  );
  expect(errorText(() => triangular(0.5, { low: 0, mode: 3, high: 2 }))).toBe(
    'mode must be at most high (2), got 3',
  );
  expect(errorText(() => triangular(0.5, { low: 0, mode: -1, high: 2 }))).toBe(
    'mode must be at least low (0), got -1',
  );
});
