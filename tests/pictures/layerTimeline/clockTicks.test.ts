import { describe, expect, test } from 'vitest';
import { clockTicks } from '../../../shared/pictures/layerTimeline/clockTicks.ts';

describe('clockTicks', () => {
  test.each([
    { end: 100, most: 6, expected: [0, 30, 60, 90] },
    { end: 250, most: 10, expected: [0, 30, 60, 90, 120, 150, 180, 210, 240] },
    { end: 1000, most: 5, expected: [0, 300, 600, 900] },
  ])('over $end s people count $expected', ({ end, most, expected }) => {
    expect(clockTicks(end, most)).toEqual(expected);
  });
});
