import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pooledFigure } from '../../../shared/heat/fit/pooledFigure.ts';
import { errorText } from '../errorText.ts';

const figures = fc.array(
  fc.record({
    value: fc.double({ min: 0.1, max: 10, noNaN: true }),
    standardError: fc.double({ min: 0.01, max: 1, noNaN: true }),
  }),
  { minLength: 1, maxLength: 6 },
);

describe('pooledFigure', () => {
  test('one measurement stays as it is', () => {
    const { value, standardError } = pooledFigure([{ value: 0.45, standardError: 0.02 }]);
    expect(value).toBeNear(0.45, { relative: 1e-12 }); // last digits
    expect(standardError).toBeNear(0.02, { relative: 1e-12 });
  });

  test('10 ± 1 and 13 ± 2 are 10.6, with the scatter as their error, by hand', () => {
    const pooled = pooledFigure([
      { value: 10, standardError: 1 },
      { value: 13, standardError: 2 },
    ]);
    // Weights 1 and 1/4: 13.25 / 1.25. Squares 0.36 + 5.76 over 2 measurements and 1 freedom: sqrt(3.06).
    expect(pooled.value).toBeNear(10.6, { relative: 1e-12 });
    expect(pooled.standardError).toBeNear(Math.sqrt(3.06), { relative: 1e-12 });
  });

  test('measurements that agree share their errors: 2 ± 1 four times is 2 ± 0.5', () => {
    const pooled = pooledFigure(Array.from({ length: 4 }, () => ({ value: 2, standardError: 1 })));
    expect(pooled).toEqual({ value: 2, standardError: 0.5 });
  });

  test('lies within what was measured and does not depend on the order (law)', () => {
    fc.assert(
      fc.property(figures, (some) => {
        const { value, standardError } = pooledFigure(some);
        const values = some.map((one) => one.value);
        // Binary rounding of sums.
        expect(value).toBeGreaterThanOrEqual(Math.min(...values) * (1 - 1e-9));
        expect(value).toBeLessThanOrEqual(Math.max(...values) * (1 + 1e-9));
        const other = pooledFigure([...some].reverse());
        expect(other.value).toBeNear(value, { relative: 1e-9 });
        expect(other.standardError).toBeNear(standardError, { relative: 1e-9 });
      }),
    );
  });

  test('bad figures are named', () => {
    expect(errorText(() => pooledFigure([]))).toBe('measurements must be at least 1, got 0');
    expect(errorText(() => pooledFigure([{ value: 1, standardError: 0 }]))).toBe(
      'standard error must be greater than 0, got 0',
    );
  });
});
