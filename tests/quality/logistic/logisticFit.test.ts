import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { logisticFit } from '../../../shared/quality/logistic/logisticFit.ts';
import {
  passChance,
  pointsAtCurve,
} from '../../../shared/quality/logistic/logisticLogLikelihood.ts';
import type { LogisticPoint } from '../../../shared/quality/logistic/logisticPoint.ts';
import { errorText } from '../../heat/errorText.ts';
import { fitted } from './fitted.ts';
import { LAUNCHES } from './launches.ts';

const outcomes = fc.array(
  fc
    .tuple(
      fc.integer({ min: 90, max: 130 }),
      fc.integer({ min: 0, max: 4 }),
      fc.integer({ min: 1, max: 4 }),
    )
    .map(([at, passed, more]): LogisticPoint => ({ at, passed, of: Math.max(passed, more) })),
  { minLength: 3, maxLength: 20 },
);

function apart(points: readonly LogisticPoint[]): boolean {
  return new Set(points.map(({ at }) => at)).size > 1;
}

/** Firth's score at the fit, for intercept and slope, by its definition; from the weighted mean, where digits are kept. */
function firthScore(points: readonly LogisticPoint[]): readonly [number, number] {
  const { intercept, slope } = fitted(points, 'firth');
  const states = pointsAtCurve(points, intercept, slope);
  const sum = (of: (state: (typeof states)[number]) => number) =>
    states.reduce((total, state) => total + of(state), 0);
  const whole = sum(({ weight }) => weight);
  const center = sum(({ weight, point }) => weight * point.at) / whole;
  const spread = sum(({ weight, point }) => weight * (point.at - center) ** 2);
  const off = ({ weight, chance, point: { at, passed, of } }: (typeof states)[number]) =>
    passed - of * chance + weight * (1 / whole + (at - center) ** 2 / spread) * (0.5 - chance);
  return [sum(off), sum((state) => off(state) * (state.point.at - center))];
}

describe('published cases', () => {
  test('DALAL1989, D22: intercept 15.0429 (7.3786), slope -0.2322 (0.1082), deviance 20.315', () => {
    const { intercept, slope, covariance, deviance } = fitted(LAUNCHES, 'likelihood');
    // half a unit of the last printed digit
    expect(intercept).toBeNear(15.0429, { absolute: 5e-5 });
    expect(slope).toBeNear(-0.2322, { absolute: 5e-5 });
    expect(Math.sqrt(covariance.intercept)).toBeNear(7.3786, { absolute: 5e-5 });
    expect(Math.sqrt(covariance.slope)).toBeNear(0.1082, { absolute: 5e-5 });
    expect(deviance).toBeNear(20.315, { absolute: 5e-4 });
    expect(passChance(intercept, slope, 31)).toBeNear(0.9996, { absolute: 5e-5 });
  });

  test('FIRTHEXAMPLE: a separated table gives -2.2804 (0.2324) and 5.9939 (1.4850) by Firth’s method', () => {
    const table = [
      { at: 1, passed: 20, of: 20 },
      { at: 0, passed: 20, of: 220 },
    ];
    const { intercept, slope, covariance } = fitted(table, 'firth');
    expect(intercept).toBeNear(-2.2804, { absolute: 5e-5 });
    // printed by a solver that stopped at 5.9939; a half added to each cell gives ln 401 = 5.99396 by hand
    expect(slope).toBeNear(5.9939, { absolute: 1e-4 });
    expect(slope).toBeNear(Math.log(401), { absolute: 1e-9 });
    expect(Math.sqrt(covariance.intercept)).toBeNear(0.2324, { absolute: 5e-5 });
    expect(Math.sqrt(covariance.slope)).toBeNear(1.485, { absolute: 5e-5 });
  });

  test('SCIPYLOGISTIC: Firth’s curve of the launches is 11.94952, -0.1860419', () => {
    const { intercept, slope } = fitted(LAUNCHES, 'firth');
    // the simplex stops within some 1e-8 of the top
    expect(intercept).toBeNear(11.949515, { relative: 1e-7 });
    expect(slope).toBeNear(-0.18604192, { relative: 1e-7 });
  });
});

describe('laws', () => {
  test('Firth’s curve is finite wherever figures differ, separated or of one kind only, and its score is zero', () => {
    fc.assert(
      fc.property(outcomes.filter(apart), (points) => {
        const { intercept, slope } = fitted(points, 'firth');
        expect(Number.isFinite(intercept) && Number.isFinite(slope)).toBe(true);
        // steps stop at 1e-11 standard deviations of the figure, some 10 units; Firth's shorten by a constant share
        for (const part of firthScore(points)) expect(part).toBeNear(0, { absolute: 1e-7 });
      }),
    );
  });

  test('the unit and zero of the figure do not matter, and pass and fail mirror', () => {
    fc.assert(
      fc.property(outcomes.filter(apart), (points) => {
        const { intercept, slope } = fitted(points, 'firth');
        const inF = fitted(
          points.map((point) => ({ ...point, at: point.at * 1.8 + 32 })),
          'firth',
        );
        // rounding of intercepts that are a difference of large numbers
        expect(inF.slope * 1.8).toBeNear(slope, { absolute: 1e-7 });
        expect(inF.intercept + 32 * inF.slope).toBeNear(intercept, { absolute: 1e-5 });
        const mirror = fitted(
          points.map(({ at, passed, of }) => ({ at, passed: of - passed, of })),
          'firth',
        );
        expect(mirror.slope).toBeNear(-slope, { absolute: 1e-7 });
      }),
    );
  });

  test('by likelihood the expected passes add up to the passes, and rows count like one row with their sum', () => {
    fc.assert(
      fc.property(outcomes, (points) => {
        const fit = logisticFit(points, 'likelihood');
        fc.pre(fit.kind === 'fitted');
        const passed = points.reduce((sum, point) => sum + point.passed, 0);
        const expected = points.reduce(
          (sum, { at, of }) => sum + of * passChance(fit.intercept, fit.slope, at),
          0,
        );
        expect(expected).toBeNear(passed, { absolute: 1e-6 });
        const twice = fitted([...points, ...points], 'likelihood');
        expect(twice.slope).toBeNear(fit.slope, { absolute: 1e-6 });
        expect(twice.covariance.slope).toBeNear(fit.covariance.slope / 2, { relative: 1e-6 });
      }),
    );
  });

  test('Firth’s curve is flatter than the likelihood’s on the launches and nears it as the record grows', () => {
    const plain = fitted(LAUNCHES, 'likelihood').slope;
    const gap = (times: number) =>
      fitted(
        LAUNCHES.map(({ at, passed }) => ({ at, passed: passed * times, of: times })),
        'firth',
      ).slope - plain;
    expect(gap(1)).toBeGreaterThan(0);
    // the bias goes with one over the size of the record
    expect(gap(100) / gap(10)).toBeNear(0.1, { absolute: 0.01 });
  });
});

describe('no fit', () => {
  const at = (...pairs: readonly (readonly [number, number])[]) =>
    pairs.map(([figure, passed]) => ({ at: figure, passed, of: 1 }));
  test.each([
    { points: at(), method: 'firth', because: 'nothing' },
    { points: at([110, 1], [110, 0]), method: 'firth', because: 'one figure' },
    { points: at([110, 1], [112, 1]), method: 'likelihood', because: 'all passed' },
    { points: at([110, 0], [112, 0]), method: 'likelihood', because: 'all failed' },
    { points: at([110, 0], [112, 1]), method: 'likelihood', because: 'apart' },
    { points: at([110, 1], [112, 0]), method: 'likelihood', because: 'apart' },
    { points: at([110, 0], [112, 0.5], [114, 1]), method: 'likelihood', because: 'apart' },
  ] as const)('$method of $points: $because', ({ points, method, because }) => {
    expect(logisticFit(points, method)).toEqual({ kind: 'no fit', because });
  });

  test('one half pass out of line is enough for a curve', () => {
    const points = at([110, 0], [111, 0.5], [112, 0.5], [114, 1]);
    expect(logisticFit(points, 'likelihood').kind).toBe('fitted');
  });

  test('counts that cannot be are refused', () => {
    const refused = (point: LogisticPoint) => errorText(() => logisticFit([point], 'firth'));
    expect(refused({ at: 1, passed: 2, of: 1 })).toBe('passed must be at most 1, got 2');
    expect(refused({ at: 1, passed: 0, of: 0 })).toBe('count must be greater than 0, got 0');
    expect(refused({ at: Number.NaN, passed: 0, of: 1 })).toBe(
      'figure must be a number, got not a number',
    );
  });
});
