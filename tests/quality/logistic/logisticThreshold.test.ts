import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { LogisticPoint } from '../../../shared/quality/logistic/logisticPoint.ts';
import { logisticThreshold } from '../../../shared/quality/logistic/logisticThreshold.ts';
import { profileThreshold } from '../../../shared/quality/logistic/profileThreshold.ts';
import { errorText } from '../../heat/errorText.ts';
import { fitted } from './fitted.ts';
import { LAUNCHES } from './launches.ts';

/** Square of the normal deviate of 90 %: 1.6448536... */
const Z2 = 2.705543454095404;

test('DALAL1989, D22: half of the launches are damaged at 64.79 °F', () => {
  const { value } = logisticThreshold(fitted(LAUNCHES, 'likelihood'), 0.9);
  // half a unit of the last printed digit
  expect(value).toBeNear(64.79, { absolute: 5e-3 });
});

test('SCIPYLOGISTIC: the penalized profile of the launches leaves 53.828 to 68.614 °F at 90 %', () => {
  const { value, low, high } = profileThreshold(LAUNCHES, fitted(LAUNCHES, 'firth'), 0.9);
  // golden sections to 1e-5 of a logarithm leave the profile's height good to 1e-9
  expect(value).toBeNear(64.2302305, { absolute: 1e-5 });
  expect(low).toBeNear(53.8281005, { absolute: 1e-5 });
  expect(high).toBeNear(68.6139532, { absolute: 1e-5 });
});

test('Fieller’s limits are where the curve’s logit is z of its standard errors off zero', () => {
  const curve = fitted(LAUNCHES, 'likelihood');
  const { low = 0, high = 0 } = logisticThreshold(curve, 0.9);
  for (const at of [low, high]) {
    const { intercept, slope, both } = curve.covariance;
    const spread = intercept + 2 * at * both + at ** 2 * slope;
    const logit = curve.intercept + curve.slope * at;
    // rounding; the deviate is good to 1e-12
    expect(logit ** 2 / spread).toBeNear(Z2, { relative: 1e-8 });
  }
});

test('a slope that does not differ from 0 sets no limit', () => {
  const points = [
    { at: 110, passed: 5, of: 10 },
    { at: 120, passed: 6, of: 10 },
  ];
  const curve = fitted(points, 'likelihood');
  const { low, high } = logisticThreshold(curve, 0.9);
  expect([low, high]).toEqual([undefined, undefined]);
  expect(profileThreshold(points, curve, 0.9).high).toBeUndefined();
});

test('limits hold the threshold, widen with confidence, and go with the unit', () => {
  const points = fc.array(
    fc.tuple(fc.integer({ min: 108, max: 122 }), fc.integer({ min: 0, max: 999 })).map(
      ([at, luck]): LogisticPoint => ({
        at,
        passed: luck / 1000 < 1 / (1 + Math.exp(-(at - 115) / 2)) ? 1 : 0,
        of: 1,
      }),
    ),
    { minLength: 20, maxLength: 40 },
  );
  fc.assert(
    fc.property(points, (given) => {
      fc.pre(new Set(given.map(({ at }) => at)).size > 3);
      fc.pre(new Set(given.map(({ passed }) => passed)).size > 1);
      const curve = fitted(given, 'firth');
      fc.pre(curve.slope > 0.02);
      const { value, low, high } = profileThreshold(given, curve, 0.9);
      const wider = profileThreshold(given, curve, 0.95);
      if (low !== undefined) expect(low).toBeLessThan(value);
      if (high !== undefined) expect(high).toBeGreaterThan(value);
      if (low !== undefined && wider.low !== undefined) expect(wider.low).toBeLessThan(low);
      if (high !== undefined && wider.high !== undefined) expect(wider.high).toBeGreaterThan(high);
      const inF = given.map((point) => ({ ...point, at: point.at * 1.8 + 32 }));
      const other = profileThreshold(inF, fitted(inF, 'firth'), 0.9);
      // rounding in the fit and the profile's height
      if (low !== undefined) expect(other.low).toBeNear(low * 1.8 + 32, { relative: 1e-6 });
    }),
    { numRuns: 25 },
  );
});

test('separated data have limits around the gap', () => {
  const points = [105, 107, 109, 111, 118, 119, 121, 123].map((at, index) => ({
    at,
    passed: index < 4 ? 0 : 1,
    of: 1,
  }));
  const { value, low = 0, high = 999 } = profileThreshold(points, fitted(points, 'firth'), 0.9);
  expect(value).toBeGreaterThan(111);
  expect(value).toBeLessThan(118);
  expect(low).toBeGreaterThan(105);
  expect(high).toBeLessThan(123);
});

test('a confidence beyond bounds is refused', () => {
  const curve = fitted(LAUNCHES, 'likelihood');
  expect(errorText(() => logisticThreshold(curve, 1))).toBe(
    'confidence must be less than 1, got 1',
  );
});
