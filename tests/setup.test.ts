import * as fc from 'fast-check';
import { expect, test } from 'vitest';

/** A law that speaks only of some of ten numbers, and passes over the others. */
function lawOf(speaksOf: (drawn: number) => boolean, passOver: (isMeant: boolean) => void) {
  return fc.property(fc.nat({ max: 9 }), (drawn) => {
    passOver(speaksOf(drawn));
    if (speaksOf(drawn)) expect(drawn).toBeLessThan(10);
  });
}

const isNone = (drawn: number) => drawn === 0;
const isMost = (drawn: number) => drawn > 0;
const endEarly = () => {};

test('a law that passes over few of its runs holds', () => {
  fc.assert(lawOf(isMost, fc.pre));
  fc.assert(lawOf(isMost, endEarly));
});

test('a law that passes over most of its runs by a precondition fails', () => {
  expect(() => fc.assert(lawOf(isNone, fc.pre))).toThrow('too many pre-condition failures');
  fc.assert(lawOf(isMost, endEarly), { numRuns: 1000 }); // its runs make up for those passed over above
});

test.fails('a law of which most runs end before they expect anything fails', () => {
  fc.assert(lawOf(isNone, endEarly));
});
