import { expect, test } from 'vitest';
import { bandPath, linePath } from '../../../shared/pictures/chart/linePath.ts';

test('a line goes through its points in order, to a tenth of a pixel', () => {
  expect(
    linePath([
      [0, 10.04],
      [20.26, -3],
      [40, 5],
    ]),
  ).toBe('M0,10L20.3,-3L40,5');
});

test('a band runs along its upper line and back along the lower one', () => {
  const upper = [
    [0, 1],
    [10, 2],
  ] as const;
  const lower = [
    [0, 5],
    [10, 6],
  ] as const;
  expect(bandPath(upper, lower)).toBe('M0,1L10,2L10,6L0,5Z');
});

test('no point draws nothing', () => {
  expect(linePath([])).toBeUndefined();
  expect(bandPath([], [])).toBeUndefined();
});
