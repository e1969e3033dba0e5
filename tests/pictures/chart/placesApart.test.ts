import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { placesApart } from '../../../shared/pictures/chart/placesApart.ts';
import { evenReal } from '../../evenReal.ts';

describe('placesApart', () => {
  test('leaves places that are far enough apart', () => {
    expect(placesApart([40, 10], 12, [0, 100])).toEqual([40, 10]);
  });

  test('moves what is too near, in order, and keeps it between the ends', () => {
    expect(placesApart([96, 94, 95], 10, [0, 100])).toEqual([100, 80, 90]);
  });

  test('keeps gap, order and ends for any places', () => {
    const places = fc.array(evenReal(0, 300), { maxLength: 8 });
    fc.assert(
      fc.property(places, (wanted) => {
        const placed = placesApart(Object.freeze(wanted), 16, [0, 300]);
        const sorted = [...placed].sort((one, other) => one - other);
        for (const [rank, place] of sorted.entries()) {
          expect(place).toBeGreaterThanOrEqual(-1e-9);
          expect(place).toBeLessThanOrEqual(300 + 1e-9);
          if (rank > 0) expect(place - (sorted[rank - 1] ?? 0)).toBeGreaterThanOrEqual(16 - 1e-9);
        }
      }),
    );
  });

  test('stands evenly where there is no room for the gap', () => {
    expect(placesApart([5, 5, 5], 50, [0, 60])).toEqual([0, 30, 60]);
  });
});
