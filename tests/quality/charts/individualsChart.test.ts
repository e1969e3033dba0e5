import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  D2,
  D4,
  type IndividualsChart,
  individualsChart,
} from '../../../shared/quality/charts/individualsChart.ts';
import { errorText } from '../../heat/errorText.ts';

/** NISTHANDBOOK, section 6.3.2.2: flow rates of ten batches; values from memory, they give the printed results. */
const FLOW = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];

function chartOf(values: readonly number[]): IndividualsChart {
  const chart = individualsChart(Object.freeze([...values]));
  if (chart.kind === 'no chart') throw new Error(chart.because);
  return chart;
}

describe('individualsChart', () => {
  test('NISTHANDBOOK 6.3.2.2: mean 50.81, mean range 1.8778, limits 45.8159 and 55.8041', () => {
    const chart = chartOf(FLOW);
    // half a unit of the last printed digit
    expect(chart.center).toBeNear(50.81, { absolute: 5e-3 });
    expect(chart.meanRange).toBeNear(1.8778, { absolute: 5e-5 });
    expect(chart.upper).toBeNear(55.8041, { absolute: 5e-5 });
    expect(chart.lower).toBeNear(45.8159, { absolute: 5e-5 });
    expect(chart.signals).toEqual([]);
    expect(chart.jumps).toEqual([]);
  });

  test('its constants are those of two normal values: 2 / sqrt(pi), and 1 + 3 sqrt(pi / 2 - 1)', () => {
    // rounded to three places, the second after division by the rounded first
    expect(D2).toBeNear(2 / Math.sqrt(Math.PI), { absolute: 5e-4 });
    expect(D4).toBeNear(1 + 3 * Math.sqrt(Math.PI / 2 - 1), { absolute: 1e-3 });
  });

  test('a piece far heavier than the rest is beyond its limit, and a jump both ways', () => {
    const even = Array.from({ length: 12 }, (_, index) => 0.31 + (index % 2) * 0.002);
    const chart = chartOf([...even, 0.36, ...even]);
    expect(chart.signals.filter(({ rule }) => rule === 'limit')).toMatchObject([
      { side: 'high', from: 12, to: 12 },
    ]);
    expect(chart.jumps).toEqual([12, 13]);
  });

  test('another unit and another zero change no signal', () => {
    const values = fc.array(fc.integer({ min: 250, max: 350 }), { minLength: 2, maxLength: 40 });
    fc.assert(
      fc.property(values, (grams) => {
        const [one, other] = [chartOf(grams), chartOf(grams.map((value) => value * 4 + 64))];
        expect(other.signals.map(({ rule, from, to }) => [rule, from, to])).toEqual(
          one.signals.map(({ rule, from, to }) => [rule, from, to]),
        );
        expect(other.upper).toBeNear(one.upper * 4 + 64, { relative: 1e-9 });
      }),
    );
  });

  test('pieces all alike: limits at the mean, no signal', () => {
    const chart = chartOf([2, 2, 2, 2, 2, 2, 2, 2, 2, 2]);
    expect(chart).toMatchObject({ lower: 2, upper: 2, signals: [], jumps: [] });
  });

  test.each([{ values: [] }, { values: [0.3] }])('$values makes no chart', ({ values }) => {
    expect(individualsChart(values)).toEqual({
      kind: 'no chart',
      because: 'fewer than two points',
    });
  });

  test('a value that is none is refused', () => {
    expect(errorText(() => individualsChart([1, Number.POSITIVE_INFINITY]))).toBe(
      'value must be a number, got infinity',
    );
  });
});
