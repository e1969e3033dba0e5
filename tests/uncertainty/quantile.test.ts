import fc from 'fast-check';
import jstat from 'jstat';
import { expect, test } from 'vitest';
import { quantile } from '../../shared/uncertainty/quantile.ts';
import { evenReal } from '../evenReal.ts';
import { errorText } from '../heat/errorText.ts';

const answers = fc.array(evenReal(-1e4, 1e4), {
  minLength: 2,
  maxLength: 60,
});

test('quantile agrees with an outside library (JSTAT, both parameters 1/2)', () => {
  fc.assert(
    fc.property(answers, evenReal(0, 1), (values, share) => {
      const [outside = Number.NaN] = jstat.jStat.quantiles(values, [share], 0.5, 0.5);
      // Rounding of an interpolation among values up to 1e4.
      expect(quantile(values, share)).toBeNear(outside, { absolute: 1e-8 });
    }),
  );
});

test('quantile by hand: 5 % of ten answers is the first, 15 % half way to the next', () => {
  const ten = [10, 9, 8, 7, 6, 5, 4, 3, 2, 1];
  expect(quantile(ten, 0.05)).toBe(1);
  expect(quantile(ten, 0.1)).toBeNear(1.5, { absolute: 1e-12 }); // rounding only
  expect(quantile(ten, 1)).toBe(10);
});

test('quantile of open-ended answers is open only where they are', () => {
  const never = Number.POSITIVE_INFINITY;
  expect(quantile([3, never, 1, 2], 0.5)).toBe(2.5);
  expect(quantile([3, never, 1, 2], 0.7)).toBe(never);
  expect(quantile([never, never], 0.05)).toBe(never);
  // the third of four stands for 62.5 % exactly
  expect(quantile([3, never, 1, 2], 0.625)).toBe(3);
});

test('quantile does not depend on the order and leaves the answers as they are', () => {
  fc.assert(
    fc.property(answers, evenReal(0, 1), (values, share) => {
      const frozen = Object.freeze([...values]);
      expect(quantile(frozen, share)).toBe(quantile([...values].reverse(), share));
    }),
  );
});

test('quantile names a share out of range and an empty list', () => {
  expect(errorText(() => quantile([1], 2))).toBe('share must be at most 1, got 2');
  expect(errorText(() => quantile([], 0.5))).toBe('number of answers must be at least 1, got 0');
});
