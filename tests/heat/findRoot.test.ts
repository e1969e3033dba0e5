import fc from 'fast-check';
import { expect, test } from 'vitest';
import { findRoot } from '../../shared/heat/findRoot.ts';

test('findRoot finds a cube root to the last digits, rising or falling', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.001, max: 7.9, noNaN: true }), (cube) => {
      // A few units of the last digit of the root.
      expect(findRoot((x) => x ** 3 - cube, -2, 2)).toBeNear(Math.cbrt(cube), { relative: 1e-14 });
      expect(findRoot((x) => -cube - x ** 3, -2, 2)).toBeNear(-Math.cbrt(cube), {
        relative: 1e-14,
      });
    }),
  );
});

test('findRoot takes the start of a long flat tail in few steps', () => {
  let calls = 0;
  const root = findRoot(
    (x) => {
      calls += 1;
      return Math.exp(-x) - 0.9;
    },
    0,
    1000,
  );
  // A few units of the last digit of the root.
  expect(root).toBeNear(-Math.log(0.9), { relative: 1e-14 });
  expect(calls).toBeLessThan(40);
});

test('findRoot keeps to its bracket when the function jumps over zero', () => {
  const root = findRoot((x) => (x < 0.3 ? 5 : -1), 0, 1);
  // The place of the jump.
  expect(root).toBeNear(0.3, { relative: 1e-14 });
});
