import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fitRuns, type RunsToFit } from '../../shared/day/fitRuns.ts';
import { errorText } from '../heat/errorText.ts';

const HOUR = 3600;
const DAY: RunsToFit = {
  times: [4 * HOUR, 4 * HOUR],
  dueDays: [1, 1],
  hours: 8 * HOUR,
  days: 1,
  atOnce: 1,
};

describe('fitRuns', () => {
  test('a day filled to the last second fits, a second more does not', () => {
    expect(fitRuns(DAY).map(({ kind }) => kind)).toEqual(['placed', 'placed']);
    expect(fitRuns({ ...DAY, times: [4 * HOUR, 4 * HOUR + 1] })).toEqual([
      { kind: 'placed', day: 1, start: 0, daysLate: 0 },
      { kind: 'no room' },
    ]);
  });

  test('no run is carried over a night, and days of 24 hours are no exception', () => {
    const long = { ...DAY, times: [20 * HOUR, 20 * HOUR], hours: 24 * HOUR, days: 2 };
    const fits = fitRuns({ ...long, dueDays: [2, 2] });
    const days = fits.map((fit) => (fit.kind === 'placed' ? [fit.day, fit.start] : []));
    expect(days.sort()).toEqual([
      [1, 0],
      [2, 0],
    ]);
  });

  test('late is counted in days, and the earlier due goes first', () => {
    const two = { ...DAY, times: [8 * HOUR, 8 * HOUR, 8 * HOUR], dueDays: [3, 1, 1], days: 3 };
    const fits = fitRuns(two);
    expect(fits[0]).toEqual({ kind: 'placed', day: 3, start: 0, daysLate: 0 });
    expect(fits.map((fit) => (fit.kind === 'placed' ? fit.daysLate : -1)).sort()).toEqual([
      0, 0, 1,
    ]);
  });

  test('nothing fits: nothing is placed', () => {
    expect(fitRuns({ ...DAY, times: [9 * HOUR, 9 * HOUR] })).toEqual([
      { kind: 'no room' },
      { kind: 'no room' },
    ]);
  });

  test('never more at once than there are places, never out of hours', () => {
    const anyRuns = fc.record({
      runs: fc.array(
        fc.record({ time: fc.integer({ min: 1, max: 40 }), due: fc.integer({ min: 1, max: 3 }) }),
        { minLength: 1, maxLength: 8 },
      ),
      hours: fc.integer({ min: 20, max: 50 }),
      atOnce: fc.integer({ min: 1, max: 3 }),
    });
    fc.assert(
      fc.property(anyRuns, ({ runs, hours, atOnce }) => {
        const times = runs.map(({ time }) => time);
        const fits = fitRuns({
          times,
          dueDays: runs.map(({ due }) => due),
          hours,
          days: 3,
          atOnce,
        });
        const placed = fits.flatMap((fit, place) =>
          fit.kind === 'placed' ? [{ ...fit, end: fit.start + (times[place] ?? 0) }] : [],
        );
        for (const one of placed) {
          expect(one.end).toBeLessThanOrEqual(hours);
          const beside = placed.filter(
            (other) => other.day === one.day && other.start <= one.start && one.start < other.end,
          );
          expect(beside.length).toBeLessThanOrEqual(atOnce);
        }
      }),
      { numRuns: 60 },
    );
  });

  test.each([
    [{ hours: 0 }, 'hours a day must be greater than 0 s, got 0 s'],
    [{ days: 0 }, 'days must be at least 1, got 0'],
    [{ atOnce: 0 }, 'runs at once must be at least 1, got 0'],
  ])('%o is refused', (change, text) => {
    expect(errorText(() => fitRuns({ ...DAY, ...change }))).toBe(text);
  });
});
