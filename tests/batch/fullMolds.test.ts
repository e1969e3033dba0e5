import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fullMolds } from '../../shared/batch/fullMolds.ts';
import { errorText } from '../heat/errorText.ts';

test.each([
  { pieces: 1, cavities: 6, fillings: 1, made: 6 },
  { pieces: 12, cavities: 6, fillings: 2, made: 12 },
  { pieces: 13, cavities: 6, fillings: 3, made: 18 },
])(
  '$pieces in $cavities cavities take $fillings fillings',
  ({ pieces, cavities, fillings, made }) => {
    expect(fullMolds(pieces, cavities)).toEqual({ fillings, pieces: made });
  },
);

test('fullMolds makes enough, and one filling fewer would not', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 1e6 }),
      fc.integer({ min: 1, max: 500 }),
      (pieces, cavities) => {
        const full = fullMolds(pieces, cavities);
        expect(full.pieces).toBeGreaterThanOrEqual(pieces);
        expect(full.pieces - cavities).toBeLessThan(pieces);
      },
    ),
  );
});

test('fullMolds refuses a mold without cavities', () => {
  expect(errorText(() => fullMolds(5, 0))).toBe('cavities must be at least 1, got 0');
});
