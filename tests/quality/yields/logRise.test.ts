import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { logGamma, logRise, slopeOfRise } from '../../../shared/quality/yields/logRise.ts';

const start = fc.double({ min: 1e-3, max: 1e6, noNaN: true });
const count = fc.integer({ min: 0, max: 400 });

describe('logRise', () => {
  test('is the sum of the logarithms of its factors', () => {
    fc.assert(
      fc.property(start, count, (a, steps) => {
        let sum = 0;
        for (let step = 0; step < steps; step++) sum += Math.log(a + step);
        // the series is cut at 1e-13; 400 roundings of terms up to 14
        expect(logRise(a, steps)).toBeNear(sum, { absolute: 1e-9 });
      }),
    );
  });

  test('two stretches make one', () => {
    fc.assert(
      fc.property(start, count, count, (a, first, second) => {
        const both = logRise(a, first) + logRise(a + first, second);
        expect(logRise(a, first + second)).toBeNear(both, { absolute: 1e-9 }); // roundings
      }),
    );
  });
});

test('slopeOfRise is the sum of the reciprocals, and keeps its digits where a is large', () => {
  fc.assert(
    fc.property(start, count, (a, steps) => {
      let sum = 0;
      for (let step = 0; step < steps; step++) sum += 1 / (a + step);
      expect(slopeOfRise(a, steps)).toBeNear(sum, { absolute: 1e-12 * (1 + sum) }); // the series is cut at 1e-13
    }),
  );
  // ten terms of about 1e-9: a difference of two digammas near 20 would keep seven digits
  expect(slopeOfRise(1e9, 10)).toBeNear(1e-8, { relative: 1e-7 });
});

test.each([
  // factorials, and the square root of pi, in closed form
  { x: 1, expected: 0 },
  { x: 5, expected: Math.log(24) },
  { x: 0.5, expected: Math.log(Math.PI) / 2 },
  { x: 20, expected: Math.log(121_645_100_408_832_000) },
])('logGamma($x) is exact', ({ x, expected }) => {
  expect(logGamma(x)).toBeNear(expected, { absolute: 1e-12 }); // the series is cut at 1e-13
});
