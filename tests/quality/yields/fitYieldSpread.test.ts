import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  betaBinomialLogLikelihood,
  logLikelihoodAlike,
} from '../../../shared/quality/yields/betaBinomialLogLikelihood.ts';
import { fitYieldSpread } from '../../../shared/quality/yields/fitYieldSpread.ts';
import { logRise } from '../../../shared/quality/yields/logRise.ts';
import { errorText } from '../../heat/errorText.ts';
import { frozen } from '../frozen.ts';

/** Families of twelve children by the number of boys, 0 to 12. GEISSLER1889, D15 */
const FAMILIES = [3, 24, 104, 286, 670, 1033, 1343, 1112, 829, 478, 181, 45, 7];
const SIBSHIPS = frozen(
  FAMILIES.flatMap((families, boys) =>
    Array.from({ length: families }, () => ({ good: boys, poured: 12 })),
  ),
);

describe('fitYieldSpread on the Saxony sibships', () => {
  const fit = fitYieldSpread(SIBSHIPS);
  if (fit.kind !== 'differ') throw new Error('the sibships differ by more than chance');
  const [alpha, beta] = [fit.mean * fit.weight, (1 - fit.mean) * fit.weight];

  test('finds the published alpha and beta: BETABINOMIALDOC, D15', () => {
    expect(alpha).toBeNear(34.1028, { absolute: 1e-4 }); // printed 34.1028 and 34.1029 by two editions
    expect(beta).toBeNear(31.5782, { absolute: 1e-4 });
  });

  test('reaches the likelihood of an independent computation, D15', () => {
    // ln of 12 over k for each family, which the fit leaves out
    const coefficients = FAMILIES.reduce(
      (sum, families, boys) =>
        sum + families * (logRise(1, 12) - logRise(1, boys) - logRise(1, 12 - boys)),
      0,
    );
    expect(-(fit.logLikelihood + coefficients)).toBeNear(12492.87136, { absolute: 1e-4 }); // printed to five places
  });

  test('gives the fitted counts: BETABINOMIALDOC, D15', () => {
    const counts = [
      2.3, 22.6, 104.8, 310.9, 655.7, 1036.2, 1257.9, 1182.1, 853.6, 461.9, 177.9, 43.8, 5.2,
    ];
    const total = FAMILIES.reduce((sum, families) => sum + families, 0);
    counts.forEach((expected, boys) => {
      const chance = Math.exp(
        logRise(1, 12) -
          logRise(1, boys) -
          logRise(1, 12 - boys) +
          logRise(alpha, boys) +
          logRise(beta, 12 - boys) -
          logRise(alpha + beta, 12),
      );
      expect(total * chance).toBeNear(expected, { absolute: 0.1 }); // printed to one place
    });
  });

  test('its interval of the weight leaves 1.353 of likelihood at each end', () => {
    const { weightFrom = 0, weightTo = 0 } = fit;
    expect(weightFrom).toBeLessThan(fit.weight);
    expect(weightTo).toBeGreaterThan(fit.weight);
    // the mean hardly moves along the profile of so many families
    for (const weight of [weightFrom, weightTo])
      expect(
        fit.logLikelihood - betaBinomialLogLikelihood(SIBSHIPS, { mean: fit.mean, weight }),
      ).toBeNear(1.3528, { absolute: 2e-3 });
  });
});

const anyGroups = fc.array(
  fc
    .record({
      poured: fc.integer({ min: 1, max: 300 }),
      part: fc.integer({ min: 0, max: 100 }),
    })
    .map(({ poured, part }) => ({ poured, good: Math.round((poured * part) / 100) })),
  { minLength: 3, maxLength: 12 },
);

describe('fitYieldSpread', () => {
  test('no mean and weight nearby is likelier, whatever was poured', () => {
    fc.assert(
      fc.property(anyGroups, (groups) => {
        const fit = fitYieldSpread(frozen(groups));
        fc.pre(fit.kind !== 'no fit');
        const height =
          fit.kind === 'alike' ? logLikelihoodAlike(groups, fit.mean) : fit.logLikelihood;
        const weight = fit.kind === 'alike' ? 1e6 : fit.weight;
        for (const times of [0.7, 1, 1.4])
          for (const shift of [-0.01, 0, 0.01]) {
            const mean = fit.mean + shift;
            if (mean <= 0 || mean >= 1 || weight * times < 0.1) continue;
            // roundings of sums of thousands
            expect(
              betaBinomialLogLikelihood(groups, { mean, weight: weight * times }),
            ).toBeLessThanOrEqual(height + 1e-6);
          }
      }),
      { numRuns: 60 },
    );
  });

  test('does not mind the order of the groups', () => {
    fc.assert(
      fc.property(anyGroups, (groups) => {
        const [fit, back] = [fitYieldSpread(groups), fitYieldSpread([...groups].reverse())];
        expect(back.kind).toBe(fit.kind);
        if (fit.kind === 'differ' && back.kind === 'differ')
          expect(back.weight).toBeNear(fit.weight, { relative: 1e-4 }); // a flat top, sums rounded otherwise
      }),
      { numRuns: 30 },
    );
  });

  test('bad for good gives the same weight and the mirrored mean', () => {
    const groups = [
      { good: 90, poured: 100 },
      { good: 60, poured: 100 },
      { good: 99, poured: 100 },
      { good: 75, poured: 100 },
    ];
    const fit = fitYieldSpread(groups);
    const mirror = fitYieldSpread(
      groups.map(({ good, poured }) => ({ good: poured - good, poured })),
    );
    if (fit.kind !== 'differ' || mirror.kind !== 'differ') throw new Error('the groups differ');
    expect(mirror.weight).toBeNear(fit.weight, { relative: 1e-8 }); // a root to its last digits
    expect(mirror.mean).toBeNear(1 - fit.mean, { absolute: 1e-8 });
  });

  test('groups that differ by no more than chance are alike, with the least weight that is not ruled out', () => {
    const fit = fitYieldSpread(Array.from({ length: 10 }, () => ({ good: 90, poured: 100 })));
    if (fit.kind !== 'alike') throw new Error('groups that are the same do not differ');
    expect(fit.mean).toBeNear(0.9, { relative: 1e-12 }); // arithmetic only
    expect(fit.weightFrom).toBeGreaterThan(100);
  });

  test('one group says no more than that yields are not all or nothing', () => {
    const fit = fitYieldSpread([{ good: 1, poured: 2 }]);
    // by hand: the likelihood is weight / (4 (weight + 1)), and falls by half of 2.705543 from its limit of 1/4
    const weightFrom = expect.toBeNear(1 / (Math.exp(2.705543 / 2) - 1), { relative: 1e-6 }); // root of a steep line
    expect(fit).toEqual({ kind: 'alike', mean: 0.5, weightFrom });
  });

  test('groups all good or all bad get the least weight looked at', () => {
    const fit = fitYieldSpread([
      { good: 0, poured: 10 },
      { good: 20, poured: 20 },
      { good: 9, poured: 9 },
    ]);
    expect(fit).toMatchObject({ kind: 'differ', weight: 0.1 });
  });

  test.each([
    [[], 'no pieces'],
    [[{ good: 5, poured: 5 }], 'all good'],
    [[{ good: 0, poured: 5 }], 'all bad'],
  ] as const)('%j has no fit: %s', (groups, because) => {
    expect(fitYieldSpread(groups)).toEqual({ kind: 'no fit', because });
  });

  test.each([
    [{ good: 6, poured: 5 }, 'good must be at most 5, got 6'],
    [{ good: 0, poured: 0 }, 'poured must be at least 1, got 0'],
    [{ good: 0.5, poured: 5 }, 'good must be a whole number, got 0.5'],
    [{ good: Number.NaN, poured: 5 }, 'good must be a number, got not a number'],
  ])('refuses %j', (group, message) => {
    expect(errorText(() => fitYieldSpread([group]))).toBe(message);
  });
});
