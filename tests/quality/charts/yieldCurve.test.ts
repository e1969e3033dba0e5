import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type ReadRound, yieldCurve } from '../../../shared/quality/charts/yieldCurve.ts';
import { logisticFit } from '../../../shared/quality/logistic/logisticFit.ts';
import { errorText } from '../../heat/errorText.ts';
import { LAUNCHES } from '../logistic/launches.ts';

function curveOf(rounds: readonly ReadRound[]) {
  const curve = yieldCurve(Object.freeze([...rounds]));
  if (curve.kind === 'no curve') throw new Error(curve.because);
  return curve;
}

const FLIGHTS: readonly ReadRound[] = LAUNCHES.map(({ at, passed }) => ({
  moldTop: at,
  poured: 1,
  good: passed,
}));

/** 12 rounds of 16 at even steps, the share rising with the reading. */
const RISING: readonly ReadRound[] = [4, 5, 5, 8, 9, 9, 12, 11, 13, 14, 15, 15].map(
  (good, index) => ({ moldTop: 70 + 3 * index, poured: 16, good }),
);

describe('yieldCurve', () => {
  test('DALAL1989: damage falls with the temperature; chances at 53 and 81 from the printed coefficients', () => {
    const { points, direction, method } = curveOf(FLIGHTS);
    const printed = (at: number) => 1 / (1 + Math.exp(-(15.0429 - 0.2322 * at)));
    expect([method, direction]).toEqual(['likelihood', 'hotter is worse']);
    // 5e-5 of the slope is 4e-3 of the logit at 81, a quarter of that at most of the chance
    expect(points[0]?.rate).toBeNear(printed(53), { absolute: 1e-3 });
    expect(points[points.length - 1]?.rate).toBeNear(printed(81), { absolute: 1e-3 });
  });

  test('the band is the delta method’s, by hand from the printed standard errors', () => {
    const { points, dispersion } = curveOf(FLIGHTS);
    const fit = logisticFit(LAUNCHES, 'likelihood');
    if (fit.kind !== 'fitted') throw new Error(fit.because);
    const { intercept, slope, covariance: v } = fit;
    const at = 81;
    const half =
      1.959964 * Math.sqrt(dispersion * (v.intercept + 2 * at * v.both + at ** 2 * v.slope));
    const logit = intercept + slope * at;
    const last = points[points.length - 1];
    // z to seven figures
    expect(last?.low).toBeNear(1 / (1 + Math.exp(half - logit)), { relative: 1e-5 });
    expect(last?.high).toBeNear(1 / (1 + Math.exp(-half - logit)), { relative: 1e-5 });
  });

  test('more good pieces from a hotter mold: rising, its band around it, from reading to reading', () => {
    const { points, direction } = curveOf(RISING);
    expect(direction).toBe('hotter is better');
    expect([points[0]?.moldTop, points[points.length - 1]?.moldTop]).toEqual([70, 103]);
    points.slice(1).forEach((point, index) => {
      expect(point.rate).toBeGreaterThan(points[index]?.rate ?? 1);
      expect(point.low).toBeLessThan(point.rate);
      expect(point.high).toBeGreaterThan(point.rate);
    });
  });

  test('ten times the pieces make the band narrower where rounds differ no more than pieces do', () => {
    const width = (rounds: readonly ReadRound[]) => {
      const { points } = curveOf(rounds);
      return Math.max(...points.map(({ low, high }) => high - low));
    };
    const more = RISING.flatMap((round) => Array.from({ length: 10 }, () => round));
    expect(width(more)).toBeLessThan(width(RISING) / 2);
  });

  test('rounds that fail whole widen the band: dispersion as computed by hand', () => {
    const rounds = [
      { moldTop: 100, poured: 20, good: 20 },
      { moldTop: 100, poured: 20, good: 0 },
      { moldTop: 101, poured: 20, good: 20 },
      { moldTop: 101, poured: 20, good: 0 },
    ];
    // p = 1/2 everywhere: each round 10^2 / 5 = 20, four of them over two degrees of freedom
    expect(curveOf(rounds).dispersion).toBeNear(40, { relative: 1e-6 });
  });

  test('a temperature that parts good from bad is answered by Firth’s method, with a finite band', () => {
    const rounds = [80, 85, 90, 100, 105, 110].map((moldTop) => ({
      moldTop,
      poured: 8,
      good: moldTop < 95 ? 0 : 8,
    }));
    const { method, points } = curveOf(rounds);
    expect(method).toBe('firth');
    for (const { low, rate, high } of points) {
      expect(low).toBeGreaterThan(0);
      expect(high).toBeLessThan(1);
      expect(low <= rate && rate <= high).toBe(true);
    }
  });

  test.each([
    { rounds: [], because: 'fewer than two rounds' },
    { rounds: [{ moldTop: 100, poured: 8, good: 4 }], because: 'fewer than two rounds' },
    {
      rounds: [
        { moldTop: 100, poured: 8, good: 4 },
        { moldTop: 100, poured: 8, good: 5 },
      ],
      because: 'one temperature',
    },
    {
      rounds: [
        { moldTop: 90, poured: 8, good: 8 },
        { moldTop: 100, poured: 8, good: 8 },
      ],
      because: 'all good',
    },
    {
      rounds: [
        { moldTop: 20.000001124664685, poured: 1, good: 1 },
        { moldTop: 20, poured: 2, good: 1 },
        { moldTop: 20.000000000000004, poured: 13, good: 7 },
      ],
      because: 'one temperature',
    },
    {
      rounds: [
        { moldTop: 90, poured: 8, good: 0 },
        { moldTop: 100, poured: 8, good: 0 },
      ],
      because: 'all bad',
    },
  ])('no curve: $because', ({ rounds, because }) => {
    expect(yieldCurve(rounds)).toEqual({ kind: 'no curve', because });
  });

  test('any rounds give chances from 0 to 1 inside their band, or say why not', () => {
    const round = fc
      .tuple(
        // as a probe tells them apart
        fc.integer({ min: 2000, max: 15_000 }).map((hundredths) => hundredths / 100),
        fc.nat({ max: 20 }),
        fc.nat({ max: 20 }),
      )
      .filter(([, good, bad]) => good + bad > 0)
      .map(([moldTop, good, bad]): ReadRound => ({ moldTop, good, poured: good + bad }));
    fc.assert(
      fc.property(fc.array(round, { maxLength: 12 }), (rounds) => {
        const curve = yieldCurve(rounds);
        fc.pre(curve.kind !== 'no curve');
        for (const { low, rate, high } of curve.points)
          expect(0 <= low && low <= rate && rate <= high && high <= 1).toBe(true);
      }),
    );
  });

  test('more good than poured is refused', () => {
    expect(errorText(() => yieldCurve([{ moldTop: 100, poured: 4, good: 5 }]))).toBe(
      'good must be at most 4, got 5',
    );
  });
});
