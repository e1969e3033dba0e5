import { expect, test } from 'vitest';
import { linearScale } from '../../../shared/pictures/chart/linearScale.ts';

test('linearScale: a domain of one value stands in the middle', () => {
  expect(linearScale([3, 3], [0, 100])(3)).toBe(50);
  expect(linearScale([0, 10], [100, 0])(2.5)).toBe(75);
});
