import { describe, expect, test } from 'vitest';
import { weekYields } from '../../../shared/outcomes/quality/weekYields.ts';
import { roundsOf } from '../rounds.ts';

/** A Tuesday. */
const DAY = '2026-12-01';

const week = (from: string, rounds: number, poured: number, good: number) =>
  expect.objectContaining({ from, rounds, poured, good });

describe('weekYields', () => {
  test('a week runs from Monday to Sunday, the week asked for comes last', () => {
    const rounds = roundsOf(
      { day: '2026-11-23', good: 9 },
      { day: '2026-11-29', good: 8 },
      { day: '2026-11-30', good: 7 },
      { day: '2026-12-01', good: 6 },
    );
    const { weeks } = weekYields(rounds, DAY);
    expect(weeks).toEqual([week('2026-11-23', 2, 20, 17), week('2026-11-30', 2, 20, 13)]);
    const sunday = weekYields(rounds, '2026-12-06').weeks;
    expect(sunday).toEqual(weeks);
  });

  test('a round of tomorrow, one without a day and one from nine weeks ago count in no week', () => {
    const rounds = roundsOf(
      { day: '2026-12-02' },
      {},
      { day: '2026-10-11' },
      { day: '2026-10-12', good: 4 },
    );
    const found = weekYields(rounds, DAY);
    expect(found.weeks).toHaveLength(8);
    expect(found.weeks[0]).toMatchObject({ from: '2026-10-12', rounds: 1, good: 4 });
    expect(found.weeks.reduce((sum, { poured }) => sum + poured, 0)).toBe(10);
    expect(found.rounds).toEqual([rounds[3]]);
  });

  test('weeks go on over the end of a year', () => {
    const rounds = roundsOf({ day: '2026-12-31' }, { day: '2027-01-03' }, { day: '2027-01-04' });
    expect(weekYields(rounds, '2027-01-04').weeks).toEqual([
      week('2026-12-28', 2, 20, 20),
      week('2027-01-04', 1, 10, 10),
    ]);
  });

  test('a week without a round keeps its place and has no interval', () => {
    const rounds = roundsOf({ day: '2026-11-16' });
    expect(weekYields(rounds, DAY).weeks.slice(1)).toEqual([
      { from: '2026-11-23', rounds: 0, poured: 0, good: 0 },
      { from: '2026-11-30', rounds: 0, poured: 0, good: 0 },
    ]);
  });

  test('an empty log shows this week alone, with nothing in it', () => {
    expect(weekYields([], DAY)).toEqual({
      weeks: [{ from: '2026-11-30', rounds: 0, poured: 0, good: 0 }],
      rounds: [],
    });
  });

  test('NEWCOMBE1998, method 3: 15 good of 148 lie between 0.0624 and 0.1605', () => {
    const rounds = roundsOf(
      { day: '2026-11-30', poured: 100, good: 10 },
      { day: '2026-12-01', poured: 48, good: 5 },
    );
    const interval = weekYields(rounds, DAY).weeks[0]?.interval;
    // half a unit of the last printed digit
    expect(interval?.low).toBeNear(0.0624, { absolute: 5e-5 });
    expect(interval?.high).toBeNear(0.1605, { absolute: 5e-5 });
  });
});

describe('trend of the weeks', () => {
  const weeks = (...bad: readonly number[]) =>
    roundsOf(
      ...['2026-11-16', '2026-11-23', '2026-11-30']
        .slice(-bad.length)
        .map((day, index) => ({ day, good: 10 - (bad[index] ?? 0) })),
    );

  test('0, 2 and 7 bad of 10 are worse: z = 7 / sqrt(0.3 · 0.7 · 20)', () => {
    const { trend } = weekYields(weeks(0, 2, 7), DAY);
    expect(trend?.verdict).toBe('worse');
    expect(trend?.z).toBeNear(7 / Math.sqrt(4.2), { relative: 1e-12 });
    expect(weekYields(weeks(7, 2, 0), DAY).trend?.verdict).toBe('better');
    expect(weekYields(weeks(2, 3, 3), DAY).trend?.verdict).toBe('no clear change');
  });

  test('two weeks, and weeks without a bad piece, have none', () => {
    expect(weekYields(weeks(0, 7), DAY)).not.toHaveProperty('trend');
    expect(weekYields(weeks(0, 0, 0), DAY)).not.toHaveProperty('trend');
  });

  test('a week without a round takes its time: after a gap the same pieces give a flatter line', () => {
    const gap = roundsOf(
      { day: '2026-11-09', good: 10 },
      { day: '2026-11-23', good: 8 },
      { day: '2026-11-30', good: 3 },
    );
    // times 0, 2, 3 of mean 5/3; sum t (bad - 3) = 0 + 2 (-1) + 3 · 4; spread 10 (25 + 1 + 16) / 9
    const z = 10 / Math.sqrt(0.21 * (420 / 9));
    expect(weekYields(gap, DAY).trend?.z).toBeNear(z, { relative: 1e-12 });
  });
});
