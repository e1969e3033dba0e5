import fc from 'fast-check';
import { expect, test } from 'vitest';
import { wholeDropBatch } from '../../shared/batch/wholeDropBatch.ts';
import { evenReal } from '../evenReal.ts';
import { errorText } from '../heat/errorText.ts';

test('a cup whose doses are whole within the tolerance stays as it is', () => {
  expect(wholeDropBatch([4, 2.1], 0.1)).toMatchObject({ batch: 1, drops: [4, 2] });
  expect(wholeDropBatch([], 0.1)).toEqual({ batch: 1, drops: [], errors: [] });
});

test('half a drop and one and a half want nearly twice the cup', () => {
  const { batch, drops, errors } = wholeDropBatch([0.5, 1.5], 0.1);
  // by hand: one drop at the edge of 10 % is 1 / 1.1 / 0.5 = 1.818 cups; 1.5 x 1.818 = 2.727 is 3 drops, 10 % over
  expect(batch).toBeNear(1.8182, { absolute: 1e-4 });
  expect(drops).toEqual([1, 3]);
  for (const error of errors) expect(error).toBeNear(0.1, { absolute: 1e-9 }); // on the edge, by its doc
});

test('every colorant is within the tolerance, and no smaller batch does it', () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: 0.1, max: 20, noNaN: true }), { minLength: 1, maxLength: 4 }),
      fc.double({ min: 0.03, max: 0.3, noNaN: true }),
      evenReal(0, 0.999),
      (doses, tolerance, part) => {
        const { batch, drops, errors } = wholeDropBatch(doses, tolerance);
        for (const error of errors) expect(Math.abs(error)).toBeLessThanOrEqual(tolerance);
        for (const count of drops) expect(Number.isInteger(count) && count >= 1).toBe(true);
        const smaller = 1 + (batch - 1) * part;
        fc.pre(smaller <= batch * (1 - 1e-9));
        const worst = Math.max(
          ...doses.map((dose) => {
            const scaled = dose * smaller;
            const near = [Math.floor(scaled), Math.ceil(scaled)].filter((count) => count >= 1);
            return Math.min(...near.map((count) => Math.abs(count / scaled - 1)));
          }),
        );
        expect(worst).toBeGreaterThan(tolerance);
      },
    ),
    { numRuns: 500 },
  );
});

test('wholeDropBatch refuses a dose of nothing', () => {
  expect(errorText(() => wholeDropBatch([1, 0], 0.1))).toBe('drops must be greater than 0, got 0');
  expect(errorText(() => wholeDropBatch([1], 0))).toBe(
    'dose tolerance must be greater than 0, got 0',
  );
});
