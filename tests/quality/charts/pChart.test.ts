import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type PChart, pChart, type Sample } from '../../../shared/quality/charts/pChart.ts';
import { evenReal } from '../../evenReal.ts';
import { errorText } from '../../heat/errorText.ts';

/** NISTHANDBOOK, section 6.3.3.2: defective chips on 30 wafers of 50, in order. */
const WAFERS: readonly Sample[] = [
  12, 15, 8, 10, 4, 7, 16, 9, 14, 10, 5, 6, 17, 12, 22, 8, 10, 5, 13, 11, 20, 18, 24, 15, 9, 12, 7,
  13, 9, 6,
].map((bad) => ({ poured: 50, bad }));

/** NPLESSON: defective of 200 in 50 lots. */
const LOTS: readonly Sample[] = [
  8, 7, 11, 3, 6, 11, 4, 4, 5, 8, 8, 6, 7, 6, 10, 7, 9, 5, 6, 8, 8, 10, 4, 11, 4, 11, 6, 6, 9, 5, 4,
  7, 5, 7, 8, 5, 10, 9, 7, 9, 4, 9, 4, 7, 11, 8, 10, 8, 7, 5,
].map((bad) => ({ poured: 200, bad }));

const samples = fc.array(
  fc
    .tuple(fc.integer({ min: 1, max: 60 }), evenReal(0, 1))
    .map(([poured, share]): Sample => ({ poured, bad: Math.round(poured * share) })),
  { minLength: 2, maxLength: 40 },
);

function chartOf(of: readonly Sample[], leaveOut: readonly number[] = []): PChart {
  const chart = pChart(Object.freeze([...of]), leaveOut);
  if (chart.kind === 'no chart') throw new Error(chart.because);
  return chart;
}

function beyond(chart: PChart): readonly number[] {
  return chart.signals.filter(({ rule }) => rule === 'limit').map(({ from }) => from + 1);
}

describe('published charts', () => {
  test('NISTHANDBOOK 6.3.3.2: center 0.2313, limits 0.0524 and 0.4102, wafers 15 and 23 out', () => {
    const chart = chartOf(WAFERS);
    // half a unit of the last printed digit
    expect(chart.center).toBeNear(0.2313, { absolute: 5e-5 });
    expect(chart.points[0]?.lower).toBeNear(0.0524, { absolute: 5e-5 });
    expect(chart.points[0]?.upper).toBeNear(0.4102, { absolute: 5e-5 });
    expect(beyond(chart)).toEqual([15, 23]);
  });

  test('NISTHANDBOOK 6.3.3.2: without wafers 15 and 23 0.2150, 0.0407 and 0.3893; 21 is out then', () => {
    const chart = chartOf(WAFERS, [14, 22]);
    expect(chart.center).toBeNear(0.215, { absolute: 5e-5 });
    expect(chart.points[0]?.lower).toBeNear(0.0407, { absolute: 5e-5 });
    expect(chart.points[0]?.upper).toBeNear(0.3893, { absolute: 5e-5 });
    expect(beyond(chart)).toEqual([15, 21, 23]);
    expect(chart.points).toHaveLength(30);
    expect(chart.base).toBe(28);
  });

  test('NPLESSON: 50 lots of 200 have center 7.14, upper limit 15.01, lower limit 0, no point out', () => {
    const chart = chartOf(LOTS);
    expect(chart.center * 200).toBeNear(7.14, { absolute: 5e-3 });
    expect((chart.points[0]?.upper ?? 0) * 200).toBeNear(15.01, { absolute: 5e-3 });
    expect(chart.points[0]?.lower).toBe(0);
    expect(beyond(chart)).toEqual([]);
  });
});

describe('limits', () => {
  test('stand further apart where fewer pieces were poured, around one center line', () => {
    fc.assert(
      fc.property(samples, (of) => {
        const { points, center } = chartOf(of);
        const sorted = [...points].sort((one, other) => other.poured - one.poured);
        sorted.slice(1).forEach((point, index) => {
          expect(point.upper).toBeGreaterThanOrEqual(sorted[index]?.upper ?? 1);
          expect(point.lower).toBeLessThanOrEqual(sorted[index]?.lower ?? 0);
        });
        for (const { lower, upper } of points) {
          expect(lower).toBeLessThanOrEqual(center);
          expect(upper).toBeGreaterThanOrEqual(center);
          expect(lower).toBeGreaterThanOrEqual(0);
          expect(upper).toBeLessThanOrEqual(1);
        }
      }),
    );
  });

  test('a run at the center line changes neither the center nor the other limits', () => {
    const before = chartOf(WAFERS);
    const after = chartOf([...WAFERS, { poured: 1500, bad: 347 }]);
    // the sums double both, so that only rounding is left
    expect(after.center).toBeNear(before.center, { relative: 1e-12 });
    expect(after.points[0]?.upper).toBeNear(before.points[0]?.upper ?? 0, { relative: 1e-12 });
    expect(beyond(after)).toEqual(beyond(before));
  });

  test('good and bad changed for each other mirror chart and signals', () => {
    fc.assert(
      fc.property(samples, (of) => {
        const chart = chartOf(of);
        const other = chartOf(of.map(({ poured, bad }) => ({ poured, bad: poured - bad })));
        expect(other.center).toBeNear(1 - chart.center, { absolute: 1e-12 });
        const placed = ({ signals }: PChart) =>
          signals.map(({ rule, from, to }) => `${rule} ${from} ${to}`).sort();
        expect(placed(other)).toEqual(placed(chart));
      }),
    );
  });
});

describe('few pieces', () => {
  const quiet: readonly Sample[] = Array.from({ length: 30 }, () => ({ poured: 50, bad: 3 }));

  test('2 of 4 bad where 6 % are usual are beyond the limit, yet luck does that once in 50: no signal', () => {
    const chart = chartOf([...quiet, { poured: 4, bad: 2 }]);
    const last = chart.points[30];
    expect(last?.share).toBeGreaterThan(last?.upper ?? 1);
    expect(beyond(chart)).toEqual([]);
  });

  test('3 of 4 bad are a signal, with the chance of it by hand', () => {
    const chart = chartOf([...quiet, { poured: 4, bad: 3 }]);
    const p = 93 / 1504;
    expect(beyond(chart)).toEqual([31]);
    // 4 p^3 (1 - p) + p^4
    expect(chart.signals[0]?.chance).toBeNear(4 * p ** 3 * (1 - p) + p ** 4, { relative: 1e-9 });
  });

  test('eight rounds of 4 without a bad piece are no news where 6 % are usual', () => {
    const none: readonly Sample[] = Array.from({ length: 8 }, () => ({ poured: 4, bad: 0 }));
    const chart = chartOf([...quiet, ...none]);
    expect(chart.signals.filter(({ rule }) => rule === 'eightInRow')).toEqual([]);
  });
});

describe('too little, too even, wrong', () => {
  test.each([{ of: [] }, { of: [{ poured: 16, bad: 1 }] }])(
    '$of.length points make no chart',
    ({ of }) => {
      expect(pChart(of)).toEqual({ kind: 'no chart', because: 'fewer than two points' });
    },
  );

  test('with all points but one left out there is no chart', () => {
    expect(pChart(WAFERS.slice(0, 3), [0, 2])).toEqual({
      kind: 'no chart',
      because: 'fewer than two points',
    });
  });

  test.each([0, 5])('%i bad of 5 in every round: limits at the center line, no signal', (bad) => {
    const chart = chartOf(Array.from({ length: 12 }, () => ({ poured: 5, bad })));
    expect(chart.signals).toEqual([]);
    expect(chart.points[3]).toMatchObject({ lower: bad / 5, upper: bad / 5 });
  });

  test.each([
    { sample: { poured: 0, bad: 0 }, text: 'poured must be at least 1, got 0' },
    { sample: { poured: 4, bad: 5 }, text: 'bad must be at most 4, got 5' },
    { sample: { poured: 4, bad: -1 }, text: 'bad must be at least 0, got -1' },
    { sample: { poured: 4.5, bad: 1 }, text: 'poured must be a whole number, got 4.5' },
    { sample: { poured: Number.NaN, bad: 1 }, text: 'poured must be a number, got not a number' },
  ])('$text', ({ sample, text }) => {
    expect(errorText(() => pChart([{ poured: 10, bad: 1 }, sample]))).toBe(text);
  });
});
