import * as fc from 'fast-check';

const STEPS = 2 ** 30;

/**
 * Reals from low to high, mostly spread evenly. `fc.double` draws by bits: from a range that reaches 0 nearly all of its numbers
 * are far smaller than any that a shop meets. One in four is drawn so still, for what tiny numbers do.
 */
export function evenReal(low: number, high: number): fc.Arbitrary<number> {
  const even = fc
    .integer({ min: 0, max: STEPS })
    .map((step) => Math.min(high, low + ((high - low) * step) / STEPS));
  const byBits = fc.double({ min: low, max: high, noNaN: true });
  return fc.oneof({ arbitrary: even, weight: 3 }, { arbitrary: byBits, weight: 1 });
}
