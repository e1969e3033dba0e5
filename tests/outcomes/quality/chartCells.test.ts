import { describe, expect, test } from 'vitest';
import { type ChartLimits, chartCells } from '../../../shared/outcomes/quality/chartCells.ts';

const HEADINGS = ['Point', 'Poured', 'Bad', 'Share bad', 'Center', 'Lower', 'Upper', 'Signal'];

function samples(...bad: readonly (readonly [poured: number, bad: number])[]) {
  return bad.map(([poured, count], index) =>
    Object.freeze({ label: `R-${index + 1}`, poured, bad: count }),
  );
}

function cells(of: ReturnType<typeof samples>, limits: ChartLimits = 'all points') {
  return chartCells(Object.freeze(of), { limits, points: 'rounds' });
}

const near = (value: number) => expect.toBeNear(value, { relative: 1e-12 });

/** 4 times 1 bad of 20, then 16 of 20: 20 bad of 100 in all. */
const ONE_OUT = samples([20, 1], [20, 1], [20, 1], [20, 1], [20, 16]);

describe('chartCells', () => {
  test('a row a point under the headings: share, center 0.2, limits 0.2 -+ 3 sqrt(0.2 · 0.8 / 20)', () => {
    const upper = near(0.2 + 3 * Math.sqrt(0.16 / 20));
    const calm = (name: string, signal = '') => [name, 20, 1, 0.05, 0.2, 0, upper, signal];
    // 1 of 20 where 4 are usual lies 1.7 deviations below; luck gives 2 or fewer in 0.2061, four times in a row once in 554
    const below =
      'from R-1 to R-4: fewer bad than usual, four of five in a row more than one standard deviation below the center line (luck alone: once in 550)';
    expect(cells(ONE_OUT)).toEqual([
      HEADINGS,
      ...['R-1', 'R-2', 'R-3'].map((name) => calm(name)),
      calm('R-4', below),
      [
        ...['R-5', 20, 16, 0.8, 0.2, 0, upper],
        'R-5: more bad than usual, above the limit of three standard deviations (luck alone: once in 1,000,000)',
      ],
    ]);
  });

  test('without the point beyond a limit center 0.05, limits 0.05 -+ 3 sqrt(0.05 · 0.95 / 20); the point stays', () => {
    const rows = cells(ONE_OUT, 'without points beyond a limit').slice(1);
    expect(rows).toHaveLength(5);
    for (const [, , , , center, lower, upper] of rows) {
      expect(center).toBe(0.05);
      expect(lower).toBe(0);
      expect(upper).toBeNear(0.05 + 3 * Math.sqrt(0.0475 / 20), { relative: 1e-12 });
    }
    expect(rows[4]?.slice(0, 4)).toEqual(['R-5', 20, 16, 0.8]);
  });

  test('limits are as wide as the pieces of their own point', () => {
    const [, few, many] = cells(samples([10, 2], [1000, 200]));
    expect(few?.slice(4, 7)).toEqual([
      0.2,
      0, // 0.2 - 0.38
      near(0.2 + 3 * Math.sqrt(0.16 / 10)),
    ]);
    expect(many?.slice(5, 7)).toEqual([
      near(0.2 - 3 * Math.sqrt(0.16 / 1000)),
      near(0.2 + 3 * Math.sqrt(0.16 / 1000)),
    ]);
  });

  test('how rare luck is comes from the binomial, in two digits: 5 or more of 10 at 1 in 20', () => {
    const calm = Array.from({ length: 9 }, () => [10, 0] as const);
    const chance = [252, 210, 120, 45, 10, 1].reduce(
      (sum, ways, more) => sum + ways * 0.05 ** (5 + more) * 0.95 ** (5 - more),
      0,
    );
    expect(1 / chance).toBeNear(16_000, { absolute: 500 }); // two digits
    const rows = cells(samples(...calm, [10, 5]));
    expect(rows[10]?.[7]).toBe(
      'R-10: more bad than usual, above the limit of three standard deviations (luck alone: once in 16,000)',
    );
    // nine without a bad piece in a row: of ten pieces at 1 in 20 luck alone does that too often to be news
    for (const row of rows.slice(1, 10)) expect(row[7]).toBe('');
  });

  test('signals that end at one point stand beside it, one after the other', () => {
    const calm = Array.from({ length: 20 }, () => [100, 10] as const);
    const rows = cells(samples(...calm, [100, 30], [100, 30]));
    const words = String(rows[22]?.[7]);
    expect(words.split('; ').map((text) => text.replace(/ \(luck alone.*/, ''))).toEqual([
      'R-22: more bad than usual, above the limit of three standard deviations',
      'from R-21 to R-22: more bad than usual, two of three in a row more than two standard deviations above the center line',
    ]);
  });

  test.each(['rounds', 'runs'] as const)(
    'no point and one point say that it needs two %s',
    (points) => {
      for (const of of [samples(), samples([16, 1])])
        for (const limits of ['all points', 'without points beyond a limit'] as const)
          expect(chartCells(of, { limits, points })).toEqual([
            HEADINGS,
            [`needs two ${points}`, '', '', '', '', '', '', ''],
          ]);
    },
  );
});
