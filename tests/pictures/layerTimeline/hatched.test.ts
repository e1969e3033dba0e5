import fc from 'fast-check';
import { expect, test } from 'vitest';
import { hatched } from '../../../shared/pictures/layerTimeline/hatched.ts';

test('hatched: every line runs from edge to edge of its strip, and never beyond', () => {
  const coordinate = fc.integer({ min: 0, max: 600 });
  fc.assert(
    fc.property(coordinate, coordinate, fc.integer({ min: 0, max: 200 }), (left, lean, wide) => {
      const from = [
        [left, 10],
        [left + lean, 54],
      ] as const;
      const to = [
        [left + wide, 10],
        [left + lean + wide, 54],
      ] as const;
      const { d = '' } = hatched({ from, to }).attributes;
      // Coordinates are rounded to a tenth, and a slanted edge moves with that.
      const slack = 0.06 + (0.06 * lean) / 44;
      const edgeAt = (y: number) => left + (lean * (y - 10)) / 44;
      const isNear = (one: number, other: number) => Math.abs(one - other) <= slack;
      for (const [, ...found] of d.matchAll(/M([\d.]+),([\d.]+)L(-?[\d.]+),([\d.]+)/g)) {
        const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = found.map(Number);
        expect(x1 - edgeAt(y1)).toBeGreaterThanOrEqual(-slack);
        expect(x2 - edgeAt(y2)).toBeGreaterThanOrEqual(-slack);
        expect(x1 - edgeAt(y1)).toBeLessThanOrEqual(wide + slack);
        expect(x2 - edgeAt(y2)).toBeLessThanOrEqual(wide + slack);
        expect(isNear(y1, 10) || isNear(x1, edgeAt(y1) + wide)).toBe(true);
        expect(isNear(y2, 54) || isNear(x2, edgeAt(y2))).toBe(true);
      }
    }),
  );
});
