import { expect, test } from 'vitest';
import { formatFixed, formatPlain } from '../../shared/units/formatPlain.ts';

test.each([
  [0.1 + 0.2, '0.3'],
  [1234567, '1234570'],
  [-3, '-3'],
  [0, '0'],
  [Number.NaN, 'not a number'],
  [Number.POSITIVE_INFINITY, 'infinity'],
  [Number.NEGATIVE_INFINITY, 'minus infinity'],
])('formatPlain writes %d as %s', (value, text) => {
  expect(formatPlain(value)).toBe(text);
});

test.each([
  [1.005, 1, '1.0'],
  [-0.001, 1, '0.0'],
  [-0.06, 1, '-0.1'],
  [12, 0, '12'],
])('formatFixed writes %d with %d places as %s', (value, places, text) => {
  expect(formatFixed(value, places)).toBe(text);
});
