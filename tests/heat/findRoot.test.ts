import fc from 'fast-check';
import { expect, test } from 'vitest';
import { findRoot } from '../../shared/heat/findRoot.ts';

test('findRoot finds a cube root to the last digits, rising or falling', () => {
  fc.assert(
    fc.property(fc.double({ min: -7.9, max: 7.9, noNaN: true }), (cube) => {
      // 1e-15 of a bracket of four, and the flat spot of the cube at 0.
      expect(findRoot((x) => x ** 3 - cube, -2, 2) ** 3).toBeNear(cube, { absolute: 1e-12 });
      expect(findRoot((x) => cube - x ** 3, -2, 2) ** 3).toBeNear(cube, { absolute: 1e-12 });
    }),
  );
});
