import fc from 'fast-check';
import { expect, test } from 'vitest';
import { drawnValue } from '../../shared/uncertainty/drawnValue.ts';
import { normal } from '../../shared/uncertainty/normal.ts';
import { triangular } from '../../shared/uncertainty/triangular.ts';
import { errorText } from '../heat/errorText.ts';

// Thousandths, so that what is left of one loses no digits.
const shares = fc.integer({ min: 0, max: 1000 }).map((share) => share / 1000);

test('drawnValue of a range is triangular, of a fit normal', () => {
  fc.assert(
    fc.property(shares, (share) => {
      const range = { low: 82, mode: 92, high: 105 };
      expect(drawnValue(share, { kind: 'range', ...range })).toBe(triangular(share, range));
      const fit = { value: 110, error: 12 };
      expect(drawnValue(share, { kind: 'fitted', ...fit })).toBe(normal(share, fit));
    }),
  );
});

test('drawnValue by factors treats half and double alike', () => {
  fc.assert(
    fc.property(shares, fc.double({ min: 1.1, max: 10, noNaN: true }), (share, factor) => {
      const spread = { kind: 'factors', low: 100 / factor, mode: 100, high: 100 * factor } as const;
      const product = drawnValue(share, spread) * drawnValue(1 - share, spread);
      // Rounding of a logarithm and its inverse.
      expect(product).toBeNear(100 ** 2, { relative: 1e-9 });
    }),
  );
  // Rounding again.
  const contact = { kind: 'factors', low: 300, mode: 500, high: 2000 } as const;
  expect(drawnValue(0, contact)).toBeNear(300, { relative: 1e-12 });
  expect(drawnValue(1, contact)).toBeNear(2000, { relative: 1e-12 });
});

test('drawnValue refuses a factor that is not above 0', () => {
  const spread = { kind: 'factors', low: 0, mode: 1, high: 2 } as const;
  expect(errorText(() => drawnValue(0.5, spread))).toBe('low must be greater than 0, got 0');
});
