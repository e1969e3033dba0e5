import { describe, expect, test } from 'vitest';
import { recomputed, shareChart } from '../../../shared/outcomes/quality/shareChart.ts';

const AS_RUNS = { title: 'Bad pieces', system: 'US', points: 'runs' } as const;

function samples(count: number, bad: number) {
  return Array.from({ length: count }, (_, index) =>
    Object.freeze({ label: `R-${index + 1}`, poured: 20, bad }),
  );
}

const OUT = { label: 'R-out', poured: 20, bad: 16 };

describe('shareChart', () => {
  test('points carry label, share and limits, the signal its rule, its words and its place', () => {
    const chart = shareChart([...samples(4, 1), OUT], AS_RUNS);
    const upper = expect.toBeNear(0.2 + 3 * Math.sqrt(0.16 / 20), { relative: 1e-12 });
    expect(chart).toMatchObject({
      ...{ kind: 'share-chart', title: 'Bad pieces', system: 'US', each: 'run', center: 0.2 },
      isProvisional: true,
      signals: [
        {
          rule: 'beyond its limit',
          text: 'R-out: more bad than usual, above the limit of three standard deviations (luck alone: once in 1,000,000)',
          from: 4,
          to: 4,
        },
        { rule: 'four of five off center', from: 0, to: 3 },
      ],
    });
    expect(chart?.points[4]).toEqual({ label: 'R-out', value: 0.8, lower: 0, upper });
    expect(shareChart(samples(4, 1), { ...AS_RUNS, points: 'rounds' })?.each).toBe('round');
  });

  test('the newest 60 points are shown, and the center is theirs', () => {
    const chart = shareChart([OUT, ...samples(60, 1)], AS_RUNS);
    expect(chart?.points).toHaveLength(60);
    expect(chart?.points[0]?.label).toBe('R-1');
    expect(chart?.center).toBe(0.05);
  });

  test('limits may still move below 20 points, no longer from 20 on', () => {
    expect(shareChart(samples(19, 1), AS_RUNS)?.isProvisional).toBe(true);
    expect(shareChart(samples(20, 1), AS_RUNS)?.isProvisional).toBe(false);
  });

  test('no point and one point make no chart', () => {
    expect(shareChart([], AS_RUNS)).toBeUndefined();
    expect(shareChart([OUT], AS_RUNS)).toBeUndefined();
  });
});

describe('recomputed', () => {
  test('leaves the points beyond the first limits out of the new ones, and only once', () => {
    const chart = recomputed([...samples(4, 1), OUT]);
    expect(chart).toMatchObject({ kind: 'chart', center: 0.05, base: 4 });
  });

  test('without a point beyond a limit nothing changes', () => {
    expect(recomputed(samples(5, 1))).toMatchObject({ center: 0.05, base: 5, signals: [] });
  });

  test('one point makes no chart', () => {
    expect(recomputed([OUT])).toEqual({ kind: 'no chart', because: 'fewer than two points' });
  });
});
