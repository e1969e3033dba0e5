import fc from 'fast-check';
import { expect, test } from 'vitest';
import { chanceOfEnough } from '../../shared/batch/piecesToPour.ts';
import { exactInterval } from '../../shared/quality/exactInterval.ts';
import { evenReal } from '../evenReal.ts';
import { errorText } from '../heat/errorText.ts';

test.each([
  {
    good: 4,
    poured: 20,
    confidence: 0.9,
    low: 0.071354,
    high: 0.401028,
    within: 5e-7,
    source: 'NISTHANDBOOK, section 7.2.4.2, D8; digits from memory',
  },
  {
    good: 81,
    poured: 263,
    confidence: 0.95,
    low: 0.2527,
    high: 0.3676,
    within: 5e-5,
    source: 'NEWCOMBE1998, Table I, D10',
  },
  {
    good: 0,
    poured: 20,
    confidence: 0.95,
    low: 0,
    high: 0.1684,
    within: 5e-5,
    source: 'NEWCOMBE1998, Table I, D11',
  },
])(
  '$good of $poured at $confidence: $source',
  ({ good, poured, confidence, low, high, within }) => {
    const interval = exactInterval(good, poured, confidence);
    // half a unit of the last printed digit
    expect(interval.low).toBeNear(low, { absolute: within });
    expect(interval.high).toBeNear(high, { absolute: within });
  },
);

test('exactInterval leaves half of the rest on each side, mirrors, and grows with confidence', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 300 }),
      evenReal(0, 1),
      fc.double({ min: 0.5, max: 0.98, noNaN: true }),
      (poured, part, confidence) => {
        const good = Math.round(poured * part);
        const { low, high } = exactInterval(good, poured, confidence);
        const mirror = exactInterval(poured - good, poured, confidence);
        expect(low).toBeNear(1 - mirror.high, { absolute: 1e-12 });
        if (good > 0)
          // fifty halvings, times a slope of up to a few hundred
          expect(chanceOfEnough(good, poured, { kind: 'fixed', yield: low })).toBeNear(
            (1 - confidence) / 2,
            { absolute: 1e-11 },
          );
        const wider = exactInterval(good, poured, confidence + 0.01);
        expect(wider.low).toBeLessThanOrEqual(low);
        expect(wider.high).toBeGreaterThanOrEqual(high);
      },
    ),
    { numRuns: 50 },
  );
});

test('exactInterval refuses more good ones than poured', () => {
  expect(errorText(() => exactInterval(5, 4, 0.9))).toBe('good must be at most 4, got 5');
});
