import { expect, test } from 'vitest';
import { bandShape, lineShape } from '../../../shared/pictures/chart/lineShape.ts';

test('a line goes through its points in order, to a tenth of a pixel', () => {
  const [line] = lineShape(
    [
      [0, 10.04],
      [20.26, -3],
      [40, 5],
    ],
    { stroke: '#888' },
  );
  expect(line?.attributes).toEqual({ d: 'M0,10L20.3,-3L40,5', fill: 'none', stroke: '#888' });
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
  expect(bandShape(upper, lower)[0]?.attributes.d).toBe('M0,1L10,2L10,6L0,5Z');
});

test('no point draws nothing', () => {
  expect(lineShape([], {})).toEqual([]);
  expect(bandShape([], [])).toEqual([]);
});
