import fc from 'fast-check';
import jstat from 'jstat';
import { expect, test } from 'vitest';
import { rankCorrelation, ranks } from '../../shared/uncertainty/rankCorrelation.ts';
import { errorText } from '../heat/errorText.ts';

test('ten pairs without ties: -29/165 (SPEARMANEXAMPLE)', () => {
  const one = [106, 100, 86, 101, 99, 103, 97, 113, 112, 110];
  const other = [7, 27, 2, 50, 28, 29, 20, 12, 6, 17];
  // The quotient is exact; rounding only.
  expect(rankCorrelation(ranks(one), ranks(other))).toBeNear(-29 / 165, { relative: 1e-12 });
});

test('ties share the mean of their places, infinities too', () => {
  const never = Number.POSITIVE_INFINITY;
  expect(ranks([20, never, 10, 20, never, 20])).toEqual([3, 5.5, 1, 3, 5.5, 3]);
  expect(ranks([])).toEqual([]);
});

test('agrees with an outside library on lists full of ties (JSTAT)', () => {
  const pairs = fc.array(fc.tuple(fc.integer({ min: 0, max: 6 }), fc.integer({ min: 0, max: 6 })), {
    minLength: 3,
    maxLength: 40,
  });
  fc.assert(
    fc.property(pairs, (rows) => {
      const one = rows.map(([first]) => first);
      const other = rows.map(([, second]) => second);
      fc.pre(new Set(one).size > 1 && new Set(other).size > 1);
      const outside = jstat.jStat.spearmancoeff(one, other);
      // Rounding of sums of at most 40 products.
      expect(rankCorrelation(ranks(one), ranks(other))).toBeNear(outside, { absolute: 1e-10 });
    }),
  );
});

test('is 1 for what rises together, -1 for what falls, and the same either way round', () => {
  const distinct = fc.uniqueArray(fc.integer({ min: -1000, max: 1000 }), { minLength: 3 });
  fc.assert(
    fc.property(distinct, (values) => {
      const rising = values.map((value) => Math.exp(value / 300));
      const falling = values.map((value) => -value);
      // Rounding only.
      expect(rankCorrelation(ranks(values), ranks(rising))).toBeNear(1, { absolute: 1e-12 });
      expect(rankCorrelation(ranks(values), ranks(falling))).toBeNear(-1, { absolute: 1e-12 });
      const shuffled = ranks(values.map((value) => (value * 7) % 13));
      expect(rankCorrelation(shuffled, ranks(values))).toBe(
        rankCorrelation(ranks(values), shuffled),
      );
    }),
  );
});

test('nothing correlates with what never changes', () => {
  expect(rankCorrelation(ranks([4, 4, 4]), ranks([1, 2, 3]))).toBe(0);
});

test('rankCorrelation refuses lists of two lengths', () => {
  expect(errorText(() => rankCorrelation([1, 2], [1]))).toBe(
    'number of ranks must be at least 2, got 1',
  );
});
