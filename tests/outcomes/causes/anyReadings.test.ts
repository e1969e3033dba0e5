import fc from 'fast-check';
import { expect, test } from 'vitest';
import { indexBook } from '../../../shared/book/bookIndex.ts';
import { DEFECT_KEYS } from '../../../shared/book/tables/pourLog.ts';
import { roundCauses } from '../../../shared/outcomes/causes/roundCauses.ts';
import { evenReal } from '../../evenReal.ts';
import { DEMO } from '../demoRound.ts';

/** Readings as far apart as the log's form lets them be, or blank; every order of the invented shop. */
const anyRow = fc
  .record({
    order: fc.constantFrom(...DEMO.orders.map(({ record }) => record)),
    moldTop: fc.option(fc.double({ min: 0.1, max: 300, noNaN: true }), { nil: undefined }),
    pours: fc.array(
      fc.option(fc.double({ min: 20.1, max: 300, noNaN: true }), { nil: undefined }),
      {
        minLength: 5,
        maxLength: 5,
      },
    ),
    gaps: fc.array(fc.option(evenReal(0, 43200), { nil: undefined }), {
      minLength: 4,
      maxLength: 4,
    }),
  })
  .map(({ order, moldTop, pours, gaps }) => ({
    run: 'R-1',
    order: order.order,
    mold: order.mold,
    pattern: order.pattern,
    version: order.version,
    moldTop,
    ...Object.fromEntries(pours.map((pour, layer) => [`pour${layer + 1}`, pour])),
    ...Object.fromEntries(gaps.map((gap, joint) => [`gap${joint + 1}${joint + 2}`, gap])),
    poured: 12,
    good: 1,
    ...Object.fromEntries(DEFECT_KEYS.map((key) => [key, 1])),
  }));

test('any readings that the log takes get an answer in words, without NaN, infinity or undefined', () => {
  const index = indexBook(DEMO);
  fc.assert(
    fc.property(anyRow, (record) => {
      const found = roundCauses(index, { row: 2, record });
      expect(JSON.stringify(found)).not.toMatch(/NaN|Infinity|undefined|null/);
      expect(JSON.parse(JSON.stringify(found))).toEqual(found);
    }),
    { numRuns: 60 },
  );
});
