import fc from 'fast-check';
import { expect, test } from 'vitest';
import { invertMatrix } from '../../../shared/heat/fit/invertMatrix.ts';
import { evenReal } from '../../evenReal.ts';

test('a matrix times its inverse is the unit matrix', () => {
  const share = evenReal(-0.45, 0.45);
  fc.assert(
    fc.property(share, share, share, (a, b, c) => {
      const matrix = [
        [1, a, b],
        [a, 1, c],
        [b, c, 1],
      ];
      const inverse = invertMatrix(matrix) ?? [];
      matrix.forEach((row, i) => {
        matrix.forEach((_, j) => {
          const sum = row.reduce((total, value, k) => total + value * (inverse[k]?.[j] ?? 0), 0);
          // Rounding of a matrix that is far from singular.
          expect(sum).toBeNear(i === j ? 1 : 0, { absolute: 1e-12 });
        });
      });
    }),
  );
});

test('rows are exchanged where a zero stands on the diagonal', () => {
  const swap = [
    [0, 1],
    [1, 0],
  ];
  expect(invertMatrix(swap)).toEqual(swap);
});

test('rows that differ by rounding only have no inverse, nor has a matrix with a hole', () => {
  const almost = 1 - 1e-15;
  expect(
    invertMatrix([
      [1, almost],
      [almost, 1],
    ]),
  ).toBeUndefined();
  expect(
    invertMatrix([
      [Number.NaN, 0],
      [0, 1],
    ]),
  ).toBeUndefined();
});
