import { describe, expect, test } from 'vitest';
import { lastWeighed, weightChart } from '../../../shared/outcomes/quality/weightChart.ts';
import { roundsOf } from '../rounds.ts';

const STICK = { mold: 'stick', system: 'metric' } as const;

const near = (value: number) => expect.toBeNear(value, { relative: 1e-9 }); // sums of binary fractions

describe('weightChart', () => {
  test('five pieces of 10, 12, 11, 13 and 12 g: center 11.6, mean range 1.5, limits 3 · 1.5 / 1.128 away', () => {
    const rounds = roundsOf(
      { weights: [0.01, 0.012] },
      { mold: 'Worm', weights: [0.5] },
      { weights: [0.011, 0.013, 0.012], label: 'R-3 round 1' },
    );
    const chart = weightChart(rounds, STICK);
    const half = (3 * 0.0015) / 1.128;
    const point = (label: string, value: number) => ({
      ...{ label, value },
      lower: near(0.0116 - half),
      upper: near(0.0116 + half),
    });
    expect(chart).toEqual({
      ...{ kind: 'weight-chart', title: 'Piece weight, stick', system: 'metric', each: 'piece' },
      center: near(0.0116),
      points: [
        point('R-1 round 1', 0.01),
        point('R-1 round 1', 0.012),
        point('R-3 round 1', 0.011),
        point('R-3 round 1', 0.013),
        point('R-3 round 1', 0.012),
      ],
      signals: [],
      isProvisional: true,
      ranges: {
        values: [0.002, 0.001, 0.002, 0.001].map(near),
        mean: near(0.0015),
        limit: near(3.267 * 0.0015),
      },
    });
  });

  test('a piece far from its neighbor is a jump at its own round', () => {
    const rounds = roundsOf({ weights: [0.01, 0.01, 0.01, 0.01, 0.01] }, { weights: [0.02] });
    // ranges 0, 0, 0, 0, 10 g: mean 2 g, limit 6.5 g
    expect(weightChart(rounds, STICK)?.signals).toContainEqual({
      rule: 'a jump',
      text: 'R-2 round 1: jumped from the piece before, its range above 3.267 times the mean range',
      from: 5,
      to: 5,
    });
  });

  test('a drift is said in weights: eight lighter than usual in a row', () => {
    const heavy = Array.from({ length: 8 }, (_, index) => 0.012 + (index % 2) * 0.002);
    const light = heavy.map((weight) => weight - 0.0025);
    const chart = weightChart(roundsOf({ weights: heavy }, { weights: light }), STICK);
    expect(chart?.signals).toContainEqual({
      rule: 'eight in a row on one side',
      text: 'from R-2 round 1 to R-2 round 1: lighter than usual, eight or more in a row below the center line (luck alone: once in 260)',
      from: 8,
      to: 15,
    });
  });

  test('a weight has no limit below 0', () => {
    const chart = weightChart(roundsOf({ weights: [0.001, 0.02] }), STICK);
    expect(chart?.points.map(({ lower }) => lower)).toEqual([0, 0]);
  });

  test('the newest 60 pieces are shown', () => {
    const weights = Array.from({ length: 61 }, (_, index) => (index + 1) / 1000);
    const chart = weightChart(roundsOf({ weights }), STICK);
    expect(chart?.points).toHaveLength(60);
    expect(chart?.points[0]?.value).toBe(0.002);
    expect(chart?.isProvisional).toBe(false);
  });

  test('without a round or with one weighed piece of the mold there is none', () => {
    expect(weightChart([], STICK)).toBeUndefined();
    const rounds = roundsOf({ weights: [0.01] }, { mold: 'Worm', weights: [0.01, 0.01] });
    expect(weightChart(rounds, STICK)).toBeUndefined();
  });
});

describe('lastWeighed', () => {
  test('is the mold of the last round that was weighed', () => {
    const rounds = roundsOf(
      { weights: [0.01, 0.01] },
      { mold: 'Worm', weights: [0.01, 0.01] },
      { mold: 'Frog' },
      {}, // the mold of the first round again, not weighed
    );
    expect(lastWeighed(rounds)).toBe('Worm');
  });

  test('passes over a mold with one weighed piece, which would leave the chart blank', () => {
    const rounds = roundsOf(
      { weights: [0.01] },
      { mold: 'STICK', weights: [0.01] },
      { mold: 'Worm', weights: [0.01] },
    );
    expect(lastWeighed(rounds)).toBe('STICK');
  });

  test('is nobody’s where nothing was weighed', () => {
    expect(lastWeighed([])).toBeUndefined();
    expect(lastWeighed(roundsOf({}))).toBeUndefined();
  });
});
