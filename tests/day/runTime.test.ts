import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { roundsNeeded } from '../../shared/batch/roundsNeeded.ts';
import { runTime } from '../../shared/day/runTime.ts';
import { errorText } from '../heat/errorText.ts';

const RUN = { rounds: 3, heatUp: 30, pouring: 10, cooling: 60, sets: 1 };

describe('runTime', () => {
  test('the plate sets the pace when there are sets enough, the molds when there are not', () => {
    expect(runTime(RUN)).toBe(300); // 3 x 100
    expect(runTime({ ...RUN, sets: 2 })).toBe(200); // on at 0, 40, 100
    expect(runTime({ ...RUN, sets: 3 })).toBe(180); // on at 0, 40, 80
  });

  test('one more set never makes it longer, one more round never shorter', () => {
    const anyRun = fc.record({
      rounds: fc.integer({ min: 1, max: 30 }),
      heatUp: fc.nat(100),
      pouring: fc.nat(100),
      cooling: fc.nat(100),
      sets: fc.integer({ min: 1, max: 5 }),
    });
    fc.assert(
      fc.property(anyRun, (run) => {
        expect(runTime({ ...run, sets: run.sets + 1 })).toBeLessThanOrEqual(runTime(run));
        expect(runTime({ ...run, rounds: run.rounds + 1 })).toBeGreaterThanOrEqual(runTime(run));
        const alone = run.rounds * (run.heatUp + run.pouring + run.cooling);
        expect(runTime(run)).toBeLessThanOrEqual(alone);
        expect(runTime(run)).toBeGreaterThanOrEqual(
          run.rounds * (run.heatUp + run.pouring) + run.cooling,
        );
      }),
    );
  });

  test.each([
    [{ rounds: 0 }, 'rounds must be at least 1, got 0'],
    [{ sets: 1.5 }, 'mold sets must be a whole number, got 1.5'],
    [{ cooling: -1 }, 'cooling must be at least 0 s, got -1 s'],
  ])('%o is refused', (change, text) => {
    expect(errorText(() => runTime({ ...RUN, ...change }))).toBe(text);
  });
});

describe('roundsNeeded', () => {
  test('all rounds but the last are full', () => {
    expect(roundsNeeded({ pieces: 100, cavities: 8, molds: 2 })).toEqual({ rounds: 7, last: 4 });
    expect(roundsNeeded({ pieces: 96, cavities: 8, molds: 2 })).toEqual({ rounds: 6, last: 16 });
    expect(roundsNeeded({ pieces: 1, cavities: 8, molds: 1 })).toEqual({ rounds: 1, last: 1 });
  });

  test('a count that is not whole is refused', () => {
    const call = () => roundsNeeded({ pieces: 10, cavities: 8, molds: 0 });
    expect(errorText(call)).toBe('molds in use must be at least 1, got 0');
  });
});
