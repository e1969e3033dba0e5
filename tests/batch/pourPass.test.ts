import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  CHANGE_OF_CUP,
  type PourPass,
  passGap,
  passTime,
  pourOffset,
  pourPass,
  stopsIn,
} from '../../shared/batch/pourPass.ts';
import { errorText } from '../heat/errorText.ts';

const PASS: PourPass = { cavities: 16, pourSeconds: 8, cavitiesPerHeating: 6, stop: 30 };
const anyPass = fc.record({
  cavities: fc.integer({ min: 1, max: 40 }),
  pourSeconds: fc.integer({ min: 1, max: 30 }),
  cavitiesPerHeating: fc.integer({ min: 1, max: 50 }),
  stop: fc.integer({ min: 0, max: 120 }),
});

describe('a layer through the cavities of a round', () => {
  test('by hand: 16 cavities of 8 s, a stop of 30 s after 6 and after 12', () => {
    expect([0, 5, 6, 11, 12, 15].map((cavity) => pourOffset(PASS, cavity))).toEqual([
      0, 40, 78, 118, 156, 180,
    ]);
    expect(stopsIn(PASS)).toBe(2);
    expect(passTime(PASS)).toBe(188);
  });

  test('a cup that ends with the last cavity makes no stop after it', () => {
    expect(stopsIn({ ...PASS, cavities: 12 })).toBe(1);
    expect(passTime({ ...PASS, cavities: 6 })).toBe(48);
  });

  test('the next layer starts when this one is whole and the cup is changed, or when it is firm, whichever is later', () => {
    const gap = passGap(PASS, PASS, 60);
    expect(gap).toEqual({ start: 188 + CHANGE_OF_CUP, shortest: 198, longest: 198 });
    expect(passGap(PASS, PASS, 240)).toEqual({ start: 240, shortest: 240, longest: 240 });
  });

  test('stops at other cavities make waits differ, by hand', () => {
    // Two cavities; the lower layer stops between them, the upper one does not.
    const below = { cavities: 2, pourSeconds: 10, cavitiesPerHeating: 1, stop: 50 };
    const above = { ...below, cavitiesPerHeating: 2 };
    expect(passGap(below, above, 0)).toEqual({ start: 80, shortest: 30, longest: 80 });
    expect(passGap(below, above, 70)).toEqual({ start: 120, shortest: 70, longest: 120 });
  });

  test('no cavity is poured before it waited long enough, and none while the hand is elsewhere', () => {
    fc.assert(
      fc.property(anyPass, anyPass, fc.integer({ min: 0, max: 600 }), (below, other, earliest) => {
        const above = { ...other, cavities: below.cavities };
        const gap = passGap(below, above, earliest);
        const waits = Array.from(
          { length: below.cavities },
          (_, cavity) => gap.start + pourOffset(above, cavity) - pourOffset(below, cavity),
        );
        expect(Math.min(...waits)).toBe(gap.shortest);
        expect(Math.max(...waits)).toBe(gap.longest);
        expect(gap.shortest).toBeGreaterThanOrEqual(earliest);
        expect(gap.start).toBeGreaterThanOrEqual(passTime(below) + CHANGE_OF_CUP);
      }),
    );
  });

  test.each([
    [{ cavities: 0 }, 'cavities in a round must be at least 1, got 0'],
    [{ pourSeconds: 0 }, 'pour time per cavity must be greater than 0 s, got 0 s'],
    [{ cavitiesPerHeating: 1.5 }, 'cavities per heating must be a whole number, got 1.5'],
    [{ stop: -1 }, 'stop to heat the cup must be at least 0 s, got -1 s'],
  ])('refuses %o', (change, text) => {
    expect(errorText(() => pourPass({ ...PASS, ...change }))).toBe(text);
  });
});
