import fc from 'fast-check';
import { expect, test } from 'vitest';
import { normal } from '../../shared/uncertainty/normal.ts';
import { evenReal } from '../evenReal.ts';
import { errorText } from '../heat/errorText.ts';

test.each([
  { share: 0.5, z: 0 },
  { share: 0.95, z: 1.6448536269514722 },
  { share: 0.025, z: -1.959963984540054 },
  { share: 0.99, z: 2.3263478740408408 },
])('normal at $share lies $z standard errors off (NISTHANDBOOK, table of the normal)', (row) => {
  // The inverse error function of the library is good to some ten digits.
  expect(normal(row.share, { value: 100, error: 10 })).toBeNear(100 + 10 * row.z, {
    absolute: 1e-7,
  });
});

test('normal stays within three standard errors and above a tenth of the value', () => {
  fc.assert(
    fc.property(
      evenReal(0, 1),
      fc.double({ min: 0.01, max: 5000, noNaN: true }),
      fc.double({ min: 0.001, max: 3, noNaN: true }),
      (share, value, part) => {
        const drawn = normal(share, { value, error: part * value });
        expect(drawn).toBeGreaterThanOrEqual(Math.max(0.1, 1 - 3 * part) * value * (1 - 1e-12));
        expect(drawn).toBeLessThanOrEqual((1 + 3 * part) * value * (1 + 1e-12));
      },
    ),
  );
  expect(normal(0, { value: 100, error: 10 })).toBe(70);
  expect(normal(1, { value: 100, error: 10 })).toBe(130);
  expect(normal(0, { value: 100, error: 80 })).toBe(10);
});

test('normal names a figure out of range', () => {
  expect(errorText(() => normal(-0.1, { value: 1, error: 1 }))).toBe(
    'share must be at least 0, got -0.1',
  );
  expect(errorText(() => normal(0.1, { value: 0, error: 1 }))).toBe(
    'fitted value must be greater than 0, got 0',
  );
  expect(errorText(() => normal(0.1, { value: 1, error: 0 }))).toBe(
    'standard error must be greater than 0, got 0',
  );
});
