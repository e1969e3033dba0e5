import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { minutesOfWork, workTimes } from '../../shared/batch/minutesOfWork.ts';
import { describe as sentenceOf } from '../../shared/errors/describe.ts';
import type { InputError } from '../../shared/errors/InputError.ts';

const RUN = {
  setUpTime: 1200,
  colorTime: 240,
  cups: 6,
  pourSeconds: 12,
  pieces: 50,
  layers: 3,
  cookingTime: 1800,
  finishTime: 24,
} as const;

describe('minutesOfWork', () => {
  test('adds set-up, coloring, pouring, half the cooking and finishing', () => {
    // by hand: 20 + 6 x 4 + 12 x 50 x 3 / 60 + 0.5 x 30 + 50 x 0.4 = 20 + 24 + 30 + 15 + 20
    expect(minutesOfWork(RUN)).toBeNear(109, { relative: 1e-12 }); // arithmetic only
  });

  test('workTimes are its parts, each by hand, and add up to it', () => {
    const times = workTimes(RUN);
    // 20 min; 6 cups of 4 min; half of 30 min; 12 s x 50 x 3; 24 s x 50
    expect(times).toEqual({
      setUp: 1200,
      coloring: 1440,
      heating: 900,
      pouring: 1800,
      finishing: 1200,
    });
    const sum = Object.values(times).reduce((all, one) => all + one, 0);
    expect(sum / 60).toBe(minutesOfWork(RUN));
  });

  test('a piece more never takes less work, and costs its pours and its finishing', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), (pieces) => {
        const more = minutesOfWork({ ...RUN, pieces: pieces + 1 });
        const step = (12 * 3 + 24) / 60;
        expect(more - minutesOfWork({ ...RUN, pieces })).toBeNear(step, { absolute: 1e-9 }); // difference of numbers up to 5000
      }),
    );
  });

  test('refuses half a cup in words', () => {
    const refused = () => minutesOfWork({ ...RUN, cups: 1.5 });
    expect(refused).toThrow(RangeError);
    try {
      refused();
    } catch (error) {
      expect(sentenceOf(error as InputError)).toBe('cups must be a whole number, got 1.5'); // just seen to be thrown
    }
  });
});
