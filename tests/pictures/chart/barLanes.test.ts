import { expect, test } from 'vitest';
import { barLanes } from '../../../shared/pictures/chart/barLanes.ts';

const span = (item: readonly [number, number]) => item;

test('what overlaps stands below, what begins where another ends stands beside it', () => {
  const { placed, lanes } = barLanes<readonly [number, number]>(
    [
      [0, 10],
      [5, 8],
      [8, 12],
      [10, 11],
    ],
    span,
  );
  expect(placed.map(({ lane }) => lane)).toEqual([0, 1, 1, 0]);
  expect(lanes).toBe(2);
});

test('nothing takes no lane', () => {
  expect(barLanes([], span)).toEqual({ placed: [], lanes: 0 });
});
