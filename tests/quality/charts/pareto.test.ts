import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pareto } from '../../../shared/quality/charts/pareto.ts';
import { errorText } from '../../heat/errorText.ts';

const kinds = fc.array(
  fc.record({ name: fc.string(), count: fc.nat({ max: 500 }), isRest: fc.boolean() }),
  { maxLength: 12 },
);

describe('pareto', () => {
  test('the largest first, shares by hand, ties as given, kinds that never came left out', () => {
    expect(
      pareto([
        { name: 'Cold crack', count: 2 },
        { name: 'Peeled layer', count: 5 },
        { name: 'Dimple', count: 0 },
        { name: 'Flash', count: 2 },
        { name: 'Bleed', count: 1 },
      ]),
    ).toEqual([
      { name: 'Peeled layer', count: 5, share: 0.5, cumulated: 0.5 },
      { name: 'Cold crack', count: 2, share: 0.2, cumulated: 0.7 },
      { name: 'Flash', count: 2, share: 0.2, cumulated: 0.9 },
      { name: 'Bleed', count: 1, share: 0.1, cumulated: 1 },
    ]);
  });

  test('what is not told apart stands last, however large', () => {
    const names = pareto([
      { name: 'Other', count: 9, isRest: true },
      { name: 'Flash', count: 1 },
    ]).map(({ name }) => name);
    expect(names).toEqual(['Flash', 'Other']);
  });

  test('counts are kept, shares sum to 1, sums rise to 1', () => {
    fc.assert(
      fc.property(kinds, (given) => {
        const bars = pareto(Object.freeze([...given]));
        const all = given.reduce((sum, { count }) => sum + count, 0);
        expect(bars.reduce((sum, { count }) => sum + count, 0)).toBe(all);
        if (all === 0) {
          expect(bars).toEqual([]);
          return;
        }
        expect(bars[bars.length - 1]?.cumulated).toBe(1);
        // rounding of a dozen sums
        expect(bars.reduce((sum, { share }) => sum + share, 0)).toBeNear(1, { absolute: 1e-12 });
      }),
    );
  });

  test.each([
    { count: -1, text: 'count must be at least 0, got -1' },
    { count: 1.5, text: 'count must be a whole number, got 1.5' },
  ])('$text', ({ count, text }) => {
    expect(errorText(() => pareto([{ name: 'Flash', count }]))).toBe(text);
  });
});
