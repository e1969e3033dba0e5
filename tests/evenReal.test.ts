import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { evenReal } from './evenReal.ts';

test('most numbers are no smaller than a tenth of the range, and none is outside of it', () => {
  const drawn = fc.sample(evenReal(-0.3, 5000), { numRuns: 1000, seed: 1 });
  expect(drawn.filter((one) => one >= 500).length).toBeGreaterThan(500);
  for (const one of drawn) {
    expect(one).toBeGreaterThanOrEqual(-0.3);
    expect(one).toBeLessThanOrEqual(5000);
  }
});
