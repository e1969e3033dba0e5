import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CurveFit, fitCurve } from '../../../shared/heat/fit/fitCurve.ts';
import { evenReal } from '../../evenReal.ts';
import { errorText } from '../errorText.ts';
import { BOD, CHWIRUT2, MISRA1A } from './strdData.ts';

function fitted(fit: CurveFit) {
  if (fit.kind !== 'fitted') throw new Error(fit.because);
  return fit;
}

/** Rows of y, x against a curve y(x). */
function fitRows(
  rows: readonly (readonly [number, number])[],
  start: readonly number[],
  curve: (parameters: readonly number[], x: number) => number,
): CurveFit {
  const readings = rows.map(([y]) => y);
  return fitCurve({ readings, start, curve: (p) => rows.map(([, x]) => curve(p, x)) });
}

const rise = ([b1 = 0, b2 = 0]: readonly number[], x: number) => b1 * (1 - Math.exp(-b2 * x));
const decay = ([b1 = 0, b2 = 0, b3 = 0]: readonly number[], x: number) =>
  Math.exp(-b1 * x) / (b2 + b3 * x);

describe('certified fits', () => {
  test.each([
    { start: [500, 1e-4], source: 'NISTSTRD, Misra1a, first start' },
    { start: [250, 5e-4], source: 'NISTSTRD, Misra1a, second start' },
  ])('$source', ({ start }) => {
    const fit = fitted(fitRows(MISRA1A, start, rise));
    // Certified to 11 figures; central differences leave 8 in the parameters and 6 in their errors.
    expect(fit.parameters[0] ?? 0).toBeNear(238.94212918, { relative: 1e-8 });
    expect(fit.parameters[1] ?? 0).toBeNear(5.5015643181e-4, { relative: 1e-8 });
    expect(fit.standardErrors[0] ?? 0).toBeNear(2.7070075241, { relative: 1e-6 });
    expect(fit.standardErrors[1] ?? 0).toBeNear(7.2668688436e-6, { relative: 1e-6 });
    expect(fit.sumOfSquares).toBeNear(0.12455138894, { relative: 1e-9 });
    expect(fit.residualDeviation).toBeNear(0.1018787633, { relative: 1e-9 });
  });

  test.each([
    { start: [0.1, 0.01, 0.02], source: 'NISTSTRD, Chwirut2, first start' },
    { start: [0.15, 0.008, 0.01], source: 'NISTSTRD, Chwirut2, second start' },
  ])('$source', ({ start }) => {
    const fit = fitted(fitRows(CHWIRUT2, start, decay));
    // As above.
    [0.16657666537, 5.1653291286e-3, 1.2150007096e-2].forEach((value, index) => {
      expect(fit.parameters[index] ?? 0).toBeNear(value, { relative: 1e-7 });
    });
    [3.830328681e-2, 6.6621605126e-4, 1.5304234767e-3].forEach((value, index) => {
      expect(fit.standardErrors[index] ?? 0).toBeNear(value, { relative: 1e-6 });
    });
    expect(fit.sumOfSquares).toBeNear(513.04802941, { relative: 1e-9 });
  });

  test('oxygen demand (BATESWATTS, A1.4, as R 4.2.2 fits it)', () => {
    const curve = ([a = 0, lrc = 0]: readonly number[], x: number) =>
      a * (1 - Math.exp(-Math.exp(lrc) * x));
    const fit = fitted(fitRows(BOD, [20, -0.7], curve));
    // Four decimals printed.
    expect(fit.parameters[0] ?? 0).toBeNear(19.1426, { absolute: 5e-5 });
    expect(fit.parameters[1] ?? 0).toBeNear(-0.6328, { absolute: 5e-5 });
    expect(fit.standardErrors[0] ?? 0).toBeNear(2.4959, { absolute: 5e-5 });
    expect(fit.standardErrors[1] ?? 0).toBeNear(0.3824, { absolute: 5e-5 });
    expect(fit.residualDeviation).toBeNear(2.549, { absolute: 5e-4 });
  });
});

describe('fitCurve', () => {
  test('a straight line agrees with the textbook formulas', () => {
    const xs = [1, 2, 3, 4, 5, 6];
    const number = evenReal(-50, 50);
    fc.assert(
      fc.property(fc.array(number, { minLength: 6, maxLength: 6 }), (readings) => {
        const curve = ([a = 0, b = 0]: readonly number[]) => xs.map((x) => a + b * x);
        const fit = fitted(fitCurve({ curve, readings, start: [0, 0] }));
        const mean = readings.reduce((sum, y) => sum + y, 0) / 6;
        const slope = readings.reduce((sum, y, i) => sum + ((xs[i] ?? 0) - 3.5) * y, 0) / 17.5;
        // Near the bottom a sum of squares keeps half its digits.
        expect(fit.parameters[1] ?? 0).toBeNear(slope, { absolute: 1e-5 });
        expect(fit.parameters[0] ?? 0).toBeNear(mean - 3.5 * slope, { absolute: 1e-5 });
        const error = fit.residualDeviation / Math.sqrt(17.5);
        expect(fit.standardErrors[1] ?? 0).toBeNear(error, { absolute: 1e-5 });
        // -mean x / sqrt(mean x^2), x from 1 to 6.
        expect(fit.correlation[0]?.[1] ?? 0).toBeNear(-3.5 / Math.sqrt(91 / 6), { absolute: 1e-6 });
      }),
    );
  });

  test('ends where steps no longer change the sum of squares', () => {
    const readings = [0, -49.99999999999999, 0, 0, -49.99999999999993, 0];
    const curve = ([a = 0, b = 0]: readonly number[]) => readings.map((_, x) => a + b * (x + 1));
    const fit = fitted(fitCurve({ curve, readings, start: [0, 0] }));
    expect(fit.parameters[0] ?? 0).toBeNear(-100 / 6, { absolute: 1e-5 }); // the mean, without a slope
  });

  test('two parameters that act alike, or one that does nothing, are found out', () => {
    const readings = [1, 2, 3.5, 4];
    const alike = ([a = 0, b = 0]: readonly number[]) => readings.map((_, x) => (a + b) * x);
    const idle = ([a = 0]: readonly number[]) => readings.map((_, x) => a * x);
    for (const curve of [alike, idle])
      expect(fitCurve({ curve, readings, start: [1, 1] })).toEqual({
        kind: 'no fit',
        because: 'parameters cannot be told apart',
      });
  });

  test('a first guess without a curve, and a curve that falls forever', () => {
    const readings = [1, 2, 3];
    const none = () => [Number.NaN, 1, 2];
    expect(fitCurve({ curve: none, readings, start: [1] })).toEqual({
      kind: 'no fit',
      because: 'no curve at the first guess',
    });
    const endless = ([a = 0]: readonly number[]) => readings.map(() => Math.exp(-a));
    const fit = fitCurve({ curve: endless, readings: [0, 0, 0], start: [1] });
    expect(fit).toEqual({ kind: 'no fit', because: 'no end in sight' });
  });

  test('too few readings, or one that is no number, are named', () => {
    const curve = () => [1, 2];
    expect(errorText(() => fitCurve({ curve, readings: [1, 2], start: [1, 1] }))).toBe(
      'readings must be at least 3, got 2',
    );
    expect(errorText(() => fitCurve({ curve, readings: [1, Number.NaN], start: [1] }))).toBe(
      'reading must be a number, got not a number',
    );
    expect(errorText(() => fitCurve({ curve, readings: [1, 2, 3], start: [1] }))).toBe(
      'values of the curve must be at least 3, got 2',
    );
  });
});
