import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Sample } from '../../../shared/quality/charts/pChart.ts';
import { shareTrend } from '../../../shared/quality/charts/shareTrend.ts';
import { errorText } from '../../heat/errorText.ts';

/** AGRESTI: malformed of all births at 0, 0.5, 1.5, 4 and 7 drinks a day; half drinks stand for periods. */
const BIRTHS: readonly (readonly [time: number, bad: number, poured: number])[] = [
  [0, 48, 17114],
  [1, 38, 14502],
  [3, 5, 793],
  [8, 1, 127],
  [14, 1, 38],
];

function byTime(rows: typeof BIRTHS): readonly Sample[] {
  return Array.from({ length: 15 }, (_, time) => {
    const [, bad = 0, poured = 0] = rows.find(([at]) => at === time) ?? [];
    return { poured, bad };
  });
}

describe('shareTrend', () => {
  test('AGRESTI: the square of z is 6.57', () => {
    const trend = shareTrend(byTime(BIRTHS));
    // printed to two places; the book divides by one birth fewer of 32,574
    expect((trend?.z ?? 0) ** 2).toBeNear(6.57, { absolute: 6e-3 });
    expect(trend?.verdict).toBe('worse');
  });

  test('time turned around turns the trend around', () => {
    const trend = shareTrend([...byTime(BIRTHS)].reverse());
    expect(trend?.verdict).toBe('better');
    expect(trend?.z).toBeNear(-(shareTrend(byTime(BIRTHS))?.z ?? 0), { relative: 1e-9 });
  });

  test('the same share in every period is no trend', () => {
    expect(shareTrend([10, 20, 30].map((poured) => ({ poured, bad: poured / 10 })))).toEqual({
      z: 0,
      verdict: 'no clear change',
    });
  });

  test('any periods give a finite figure or none', () => {
    const periods = fc.array(
      fc
        .tuple(fc.nat({ max: 50 }), fc.nat({ max: 50 }))
        .map(([good, bad]): Sample => ({ poured: good + bad, bad })),
      { maxLength: 10 },
    );
    fc.assert(
      fc.property(periods, (given) => {
        const trend = shareTrend(given);
        expect(trend === undefined || Number.isFinite(trend.z)).toBe(true);
      }),
    );
  });

  test.each([
    { of: [] },
    {
      of: [
        { poured: 9, bad: 1 },
        { poured: 9, bad: 2 },
      ],
    },
    {
      of: [
        { poured: 9, bad: 1 },
        { poured: 0, bad: 0 },
        { poured: 9, bad: 2 },
      ],
    },
    {
      of: [
        { poured: 9, bad: 0 },
        { poured: 9, bad: 0 },
        { poured: 9, bad: 0 },
      ],
    },
    {
      of: [
        { poured: 9, bad: 9 },
        { poured: 9, bad: 9 },
        { poured: 9, bad: 9 },
      ],
    },
  ])('$of says nothing of a trend', ({ of }) => {
    expect(shareTrend(of)).toBeUndefined();
  });

  test('more bad than poured is refused', () => {
    expect(errorText(() => shareTrend([{ poured: 1, bad: 2 }]))).toBe(
      'bad must be at most 1, got 2',
    );
  });
});
