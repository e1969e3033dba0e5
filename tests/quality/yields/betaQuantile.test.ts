import fc from 'fast-check';
import jstat from 'jstat';
import { describe, expect, test } from 'vitest';
import { betaChance, betaQuantile } from '../../../shared/quality/yields/betaQuantile.ts';
import { errorText } from '../../heat/errorText.ts';

const weight = fc.double({ min: 0.2, max: 400, noNaN: true });
const share = fc.double({ min: 0.001, max: 0.999, noNaN: true });

describe('betaChance', () => {
  test('agrees with JSTAT to its six digits', () => {
    fc.assert(
      fc.property(share, weight, weight, (x, a, b) => {
        // its fraction stops where a term changes it by less than 3e-7
        expect(betaChance(x, a, b)).toBeNear(jstat.jStat.beta.cdf(x, a, b), { absolute: 5e-7 });
      }),
    );
  });

  test.each([
    // closed forms: x^a with b = 1; the binomial tail P(4 or 5 of 5 at 0.6) of MILLERFREUND, p. 87, D1
    { x: 0.3, a: 2.5, b: 1, expected: 0.3 ** 2.5 },
    { x: 0.6, a: 4, b: 2, expected: 0.33696 },
    { x: 0.25, a: 0.5, b: 0.5, expected: 1 / 3 }, // arcsine law
  ])('of $x with $a and $b is $expected', ({ x, a, b, expected }) => {
    expect(betaChance(x, a, b)).toBeNear(expected, { absolute: 1e-13 }); // roundings only
  });

  test('mirrors, and rises from 0 to 1', () => {
    fc.assert(
      fc.property(share, weight, weight, (x, a, b) => {
        expect(betaChance(x, a, b) + betaChance(1 - x, b, a)).toBeNear(1, { absolute: 1e-11 }); // roundings
        expect(betaChance(Math.min(1, x + 0.001), a, b)).toBeGreaterThanOrEqual(
          betaChance(x, a, b) - 1e-13,
        );
      }),
    );
    expect([betaChance(0, 3, 4), betaChance(1, 3, 4)]).toEqual([0, 1]);
  });

  test('holds with weights of a million pieces, where the fraction takes a thousand terms', () => {
    // near the mean the beta is normal but for its skewness: first term of its Edgeworth series, by hand
    const [a, b] = [950_000, 50_000];
    const deviation = Math.sqrt((0.95 * 0.05) / (a + b + 1));
    const skewness = (2 * (b - a) * Math.sqrt(a + b + 1)) / ((a + b + 2) * Math.sqrt(a * b));
    const chanceOf = (z: number, normal: number) =>
      normal - (skewness / 6) * (z ** 2 - 1) * (Math.exp(-(z ** 2) / 2) / Math.sqrt(2 * Math.PI));
    // the next term is of the order of the square of the skewness, 7e-5
    const next = { absolute: 1e-5 };
    expect(betaChance(0.95 - 1.959964 * deviation, a, b)).toBeNear(
      chanceOf(-1.959964, 0.025),
      next,
    );
    expect(betaChance(0.95, a, b)).toBeNear(chanceOf(0, 0.5), next);
  });
});

describe('betaQuantile', () => {
  test('undoes betaChance', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 0.999, noNaN: true }),
        weight,
        weight,
        (chance, a, b) => {
          const x = betaQuantile(chance, a, b);
          fc.pre(x > 1e-6 && x < 1 - 1e-6); // beyond, weights of 0.2 make the chance too steep for the digits of x
          expect(betaChance(x, a, b)).toBeNear(chance, { absolute: 1e-9 }); // slopes up to some hundreds
        },
      ),
    );
  });

  test.each([
    [() => betaQuantile(0, 1, 1), 'chance must be greater than 0, got 0'],
    [() => betaQuantile(1, 1, 1), 'chance must be less than 1, got 1'],
    [() => betaQuantile(0.5, 0, 1), 'good weight must be greater than 0, got 0'],
    [() => betaQuantile(0.5, 1, Number.NaN), 'bad weight must be a number, got not a number'],
    [() => betaChance(1.5, 1, 1), 'share must be at most 1, got 1.5'],
  ])('refuses nonsense %#', (call, message) => {
    expect(errorText(call)).toBe(message);
  });
});
