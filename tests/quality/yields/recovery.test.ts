import { describe, expect, test } from 'vitest';
import { betaQuantile } from '../../../shared/quality/yields/betaQuantile.ts';
import { fitYieldSpread } from '../../../shared/quality/yields/fitYieldSpread.ts';
import { shrunkenYield } from '../../../shared/quality/yields/shrunkenYield.ts';
import { yieldPrior } from '../../../shared/quality/yields/yieldPrior.ts';
import { pseudoRandom } from '../../uncertainty/pseudoRandom.ts';

const ASSUMED = { mean: 0.9, weight: 10 };
const SHOPS = 40;

/** Molds of an invented shop whose true yields are drawn from a beta distribution; 8 to about 400 pieces each. */
function shop(seed: number, molds: number, mean: number, weight: number) {
  const next = pseudoRandom(seed);
  return Array.from({ length: molds }, () => {
    const truth = betaQuantile(next(), mean * weight, (1 - mean) * weight);
    const poured = Math.round(8 * 50 ** next());
    const good = Array.from({ length: poured }, next).filter((one) => one < truth).length;
    return { truth, good, poured };
  });
}

const mean = (values: readonly number[]) =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

describe('empirical Bayes on simulated shops, seeds 1 to 40', () => {
  test.each([
    { at: 0.9, weight: 20 },
    { at: 0.8, weight: 8 },
    { at: 0.93, weight: 60 },
  ])('40 molds: finds a mean of $at and a weight of $weight', ({ at, weight }) => {
    const fits = Array.from({ length: SHOPS }, (_, index) =>
      fitYieldSpread(shop(index + 1, 40, at, weight)),
    );
    const differing = fits.flatMap((fit) => (fit.kind === 'differ' ? [fit] : []));
    expect(differing.length).toBeGreaterThanOrEqual(SHOPS - 2);
    // mean of 40 shops, each good to about sd(yield) / root 40, or 0.01 to 0.02
    expect(mean(differing.map((fit) => fit.mean))).toBeNear(at, { absolute: 0.01 });
    // the weight of greatest likelihood is skewed upward; its middle shop is within a quarter
    const sorted = differing.map((fit) => fit.weight).sort((one, other) => one - other);
    expect(sorted[Math.floor(sorted.length / 2)]).toBeNear(weight, { relative: 0.25 });
    const held = differing.filter(
      ({ weightFrom = 0, weightTo = Number.POSITIVE_INFINITY }) =>
        weightFrom <= weight && weight <= weightTo,
    );
    // 90 % by construction, in large shops; 40 draws have a deviation of 5 %
    expect(held.length / differing.length).toBeGreaterThanOrEqual(0.8);
  });

  test.each([
    { molds: 40, least: 0.93 },
    { molds: 8, least: 0.9 },
  ])(
    '$molds molds: 95 % intervals hold the true yield at least $least of the time, and the expected yield beats the mold’s own',
    ({ molds, least }) => {
      const found = Array.from({ length: SHOPS }, (_, index) => {
        const groups = shop(100 + index, molds, 0.9, 20);
        const prior = yieldPrior(groups, ASSUMED);
        return groups.map((group) => ({ ...group, ...shrunkenYield(group, prior, 0.95) }));
      }).flat();
      const held = found.filter(({ truth, low, high }) => low <= truth && truth <= high);
      expect(held.length / found.length).toBeGreaterThanOrEqual(least);
      const own = mean(found.map(({ truth, good, poured }) => (good / poured - truth) ** 2));
      const shrunk = mean(found.map(({ truth, expected }) => (expected - truth) ** 2));
      expect(shrunk).toBeLessThan(0.8 * own);
    },
  );

  test('molds that are all alike are seldom said to differ, and a spread as large as chance is ruled out for most shops', () => {
    const priors = Array.from({ length: SHOPS }, (_, index) => {
      const next = pseudoRandom(200 + index);
      const groups = Array.from({ length: 20 }, () => {
        const good = Array.from({ length: 100 }, next).filter((one) => one < 0.9).length;
        return { good, poured: 100 };
      });
      return yieldPrior(groups, ASSUMED);
    });
    // a 90 % interval whose end lies on the edge: 1 shop in 20 by construction, 2 of 40 give or take 1.4
    const settled = priors.filter((prior) => 'weightBy' in prior && prior.weightBy === 'record');
    expect(settled.length).toBeLessThanOrEqual(5);
    // a weight of 100 scatters yields by as much as 100 pieces do; the variance of 20 molds is known to a third, so
    // a shop in ten or so looks scattered by more than rules it out
    expect(priors.filter(({ weight }) => weight > 100).length).toBeGreaterThanOrEqual(32);
  });
});
