import * as fc from 'fast-check';
import { expect, test } from 'vitest';

test('a law that passes over most of its runs fails', () => {
  const most = fc.property(fc.nat({ max: 9 }), (drawn) => fc.pre(drawn === 0));
  expect(() => fc.assert(most)).toThrow('too many pre-condition failures');
  const few = fc.property(fc.nat({ max: 9 }), (drawn) => fc.pre(drawn > 0));
  expect(() => fc.assert(few)).not.toThrow();
});
