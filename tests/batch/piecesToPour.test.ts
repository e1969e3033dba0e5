import fc from 'fast-check';
import jstat from 'jstat';
import { describe, expect, test } from 'vitest';
import { chanceOfEnough, piecesToPour } from '../../shared/batch/piecesToPour.ts';
import { meanYield, yieldBelief } from '../../shared/batch/yieldBelief.ts';
import { errorText } from '../heat/errorText.ts';

const { jStat } = jstat;

function fixed(rate: number) {
  return { kind: 'fixed', yield: rate } as const;
}

describe('chanceOfEnough', () => {
  test.each([
    { given: [4, 5, 0.6], expected: 0.33696, source: 'MILLERFREUND, p. 87, D1' },
    { given: [4, 16, 0.05], expected: 0.007, source: 'MILLERFREUND, p. 87, D2' },
    { given: [1, 10, 0.3], expected: 1 - 0.0282475, source: 'MILLERFREUND, Table 1, D3' },
    { given: [3, 10, 0.3], expected: 1 - 0.3828, source: 'MILLERFREUND, Table 1, D3' },
    { given: [5, 10, 0.3], expected: 1 - 0.8497, source: 'MILLERFREUND, Table 1, D3' },
    { given: [5, 20, 0.1], expected: 0.0432, source: 'MILLERFREUND, p. 88, D23' },
    { given: [3, 20, 0.2], expected: 1 - 0.2061, source: 'standard tables, D24' },
    { given: [9, 20, 0.2], expected: 1 - 0.99, source: 'standard tables, D24' },
    { given: [7, 15, 0.4], expected: 1 - 0.6098, source: 'standard tables, D24' },
    { given: [2, 10, 0.3], expected: 1 - 0.1493, source: 'MILLERFREUND, Table 1, D3' },
    { given: [4, 10, 0.3], expected: 1 - 0.6496, source: 'MILLERFREUND, Table 1, D3' },
    { given: [6, 20, 0.2], expected: 1 - 0.8042, source: 'standard tables, D24' },
    { given: [5, 15, 0.4], expected: 1 - 0.2173, source: 'standard tables, D24' },
    {
      given: [78, 80, 0.99],
      expected: 0.9534,
      source: 'acceptance plan n 80, c 2 at 1 % bad, D28',
    },
    {
      given: [13, 13, 0.99],
      expected: 0.8775,
      source: 'acceptance plan n 13, c 0 at 1 % bad, D28',
    },
    {
      given: [49, 50, 0.99],
      expected: 0.9106,
      source: 'acceptance plan n 50, c 1 at 1 % bad, D17',
    },
    { given: [1, 80, 0.01], expected: 1 - 0.4475, source: 'binomial, recomputed 0.99^80 = 0.4475' },
  ] as const)(
    'at a fixed yield $given is $expected',
    ({ given: [goal, pieces, rate], expected }) => {
      // the tables print four places
      expect(chanceOfEnough(goal, pieces, fixed(rate))).toBeNear(expected, { absolute: 6e-5 });
    },
  );

  test.each([
    { trials: 16, rate: 0.05, cdf: 0.957, at: 2, source: 'MILLERFREUND, p. 87, D2' },
    { trials: 5, rate: 0.6, cdf: 1 - 0.337, at: 3, source: 'MILLERFREUND, p. 87, D1' },
  ])('at most $at of $trials: $source', ({ trials, rate, cdf, at }) => {
    // printed to three places
    expect(1 - chanceOfEnough(at + 1, trials, fixed(rate))).toBeNear(cdf, { absolute: 5e-4 });
  });

  test('the acceptance plan n 52, c 3 of the handbook follows', () => {
    // NIST/SEMATECH e-Handbook 6.2.3.2, D7, printed to three places and off by one in two of them
    const printed = [0.998, 0.98, 0.93, 0.846, 0.738, 0.62, 0.502, 0.394, 0.3, 0.223, 0.162, 0.115];
    printed.forEach((chance, index) => {
      const bad = (index + 1) / 100;
      expect(chanceOfEnough(49, 52, fixed(1 - bad))).toBeNear(chance, { absolute: 6e-4 });
    });
  });

  test('with a learned yield it is the beta-binomial tail that jstat integrates', () => {
    const belief = yieldBelief({ mean: 0.9, weight: 10, good: 41, poured: 48 });
    const steps = 20_000;
    let sum = 0;
    for (let step = 0; step < steps; step++) {
      const rate = (step + 0.5) / steps;
      sum +=
        ((1 - jStat.binomial.cdf(39, 48, rate)) *
          jStat.beta.pdf(rate, belief.goodWeight, belief.badWeight)) /
        steps;
    }
    // midpoint rule with 20,000 steps
    expect(chanceOfEnough(40, 48, belief)).toBeNear(sum, { relative: 1e-5 });
  });

  test('the fitted counts of boys among twelve children follow (Saxony sibships)', () => {
    // D15: Lindsey & Altham 1998, alpha and beta of the fit; fitted counts as printed, from memory
    const belief = { kind: 'beta', goodWeight: 34.10288, badWeight: 31.57825 } as const;
    const printed = [
      2.3, 22.6, 104.8, 310.9, 655.7, 1036.2, 1257.9, 1182.1, 853.6, 461.9, 177.9, 43.8, 5.2,
    ];
    printed.forEach((families, boys) => {
      const chance =
        chanceOfEnough(boys, 12, belief) - (boys === 12 ? 0 : chanceOfEnough(boys + 1, 12, belief));
      expect(chance * 6115).toBeNear(families, { absolute: 0.1 });
    });
  });
});

describe('piecesToPour', () => {
  test('the first good piece on trial 3, the third on trial 7', () => {
    // STAT414, lesson 11.6, D5: 0.128 and 0.049
    expect(chanceOfEnough(1, 3, fixed(0.2)) - chanceOfEnough(1, 2, fixed(0.2))).toBeNear(0.128, {
      absolute: 5e-4,
    });
    expect(chanceOfEnough(3, 7, fixed(0.2)) - chanceOfEnough(3, 6, fixed(0.2))).toBeNear(0.049, {
      absolute: 5e-4,
    });
  });

  test.each([
    { goal: 80, rate: 0.9, confidence: 0.9 },
    { goal: 1, rate: 0.5, confidence: 0.99 },
    { goal: 500, rate: 0.97, confidence: 0.95 },
  ])(
    '$goal at $rate is the smallest that jstat’s binomial accepts',
    ({ goal, rate, confidence }) => {
      const result = piecesToPour(goal, fixed(rate), confidence);
      if (result.kind !== 'pieces') throw new Error(result.because);
      const chance = (pieces: number) => 1 - jStat.binomial.cdf(goal - 1, pieces, rate);
      expect(chance(result.pieces)).toBeGreaterThanOrEqual(confidence);
      expect(chance(result.pieces - 1)).toBeLessThan(confidence);
      expect(result.attained).toBeNear(chance(result.pieces), { relative: 1e-9 });
      expect(result.expectedGood).toBeNear(result.pieces * rate, { relative: 1e-12 });
    },
  );

  test.each([
    // 1 - 0.9^n >= 0.9 from n = 22, by hand: 0.9^21 = 0.1094, 0.9^22 = 0.0985
    { goal: 1, rate: 0.1, confidence: 0.9, pieces: 22 },
    // ties: the chance is exactly the confidence
    { goal: 1, rate: 0.9, confidence: 0.9, pieces: 1 },
    { goal: 2, rate: 0.7, confidence: 0.49, pieces: 2 },
    { goal: 3, rate: 0.5, confidence: 0.5, pieces: 5 },
  ])('$goal at $rate, confidence $confidence: $pieces', ({ goal, rate, confidence, pieces }) => {
    const result = piecesToPour(goal, fixed(rate), confidence);
    expect(result).toMatchObject({ kind: 'pieces', pieces });
    if (result.kind === 'pieces') expect(result.attained).toBeGreaterThanOrEqual(confidence);
  });

  test('a goal whose first chance no double can hold still has its answer', () => {
    // normal approximation with the variance of bad pieces, goal (1 - p) / p^2, and z 1.2816 at 90 %
    const [goal, rate] = [20_000, 0.9];
    const expected = goal / rate + 1.2816 * (Math.sqrt(goal * (1 - rate)) / rate);
    const result = piecesToPour(goal, fixed(rate), 0.9);
    // the approximation leaves out skewness, about a piece
    if (result.kind === 'pieces') expect(result.pieces).toBeNear(expected, { absolute: 2 });
    expect(result.kind).toBe('pieces');
  });

  test.each([0.999, 1])('a perfect yield pours just the goal, at confidence %d', (confidence) => {
    expect(piecesToPour(12, fixed(1), confidence)).toEqual({
      kind: 'pieces',
      pieces: 12,
      expectedGood: 12,
      attained: 1,
    });
  });

  test.each([
    {
      goal: 5,
      belief: fixed(0.9),
      confidence: 1,
      because:
        'no number of pieces makes enough good ones certain; ask for a confidence below 100 %',
    },
    {
      goal: 5,
      belief: fixed(0),
      confidence: 0.9,
      because: 'at a yield of 0 % no piece comes out good',
    },
    {
      goal: 5,
      belief: fixed(0.001),
      confidence: 0.9,
      because:
        'even 1000 pieces would not give 5 good ones with that confidence: mend the yield first',
    },
  ])('says why there is no answer: $because', ({ goal, belief, confidence, because }) => {
    expect(piecesToPour(goal, belief, confidence)).toEqual({ kind: 'unreachable', because });
  });

  const beliefs = fc.record({
    mean: fc.double({ min: 0.5, max: 0.99, noNaN: true }),
    weight: fc.integer({ min: 1, max: 50 }),
    poured: fc.integer({ min: 0, max: 500 }),
  });

  test('more goal or more confidence never pours less, and the chance is reached just', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 200 }),
        beliefs,
        fc.double({ min: 0.5, max: 0.98, noNaN: true }),
        (goal, record, confidence) => {
          const belief = yieldBelief({ ...record, good: Math.round(record.poured * 0.9) });
          const result = piecesToPour(goal, belief, confidence);
          const more = piecesToPour(goal + 1, belief, confidence);
          const surer = piecesToPour(goal, belief, (confidence + 1) / 2);
          fc.pre(result.kind === 'pieces');
          expect(chanceOfEnough(goal, result.pieces, belief)).toBeNear(result.attained, {
            relative: 1e-9,
          });
          expect(chanceOfEnough(goal, result.pieces - 1, belief)).toBeLessThan(confidence);
          if (more.kind === 'pieces') expect(more.pieces).toBeGreaterThan(result.pieces);
          if (surer.kind === 'pieces') expect(surer.pieces).toBeGreaterThanOrEqual(result.pieces);
        },
      ),
      { seed: 7 },
    );
  });

  test('a long record is a fixed yield', () => {
    const belief = yieldBelief({ mean: 0.5, weight: 1, good: 900_000, poured: 1_000_000 });
    expect(piecesToPour(200, belief, 0.9)).toMatchObject({
      pieces: (piecesToPour(200, fixed(0.9), 0.9) as { pieces: number }).pieces,
    });
  });

  test.each([
    {
      goal: 0,
      rate: 0.9,
      confidence: 0.9,
      sentence: 'good pieces wanted must be at least 1, got 0',
    },
    {
      goal: 2.5,
      rate: 0.9,
      confidence: 0.9,
      sentence: 'good pieces wanted must be a whole number, got 2.5',
    },
    { goal: 5, rate: 1.1, confidence: 0.9, sentence: 'yield must be at most 1, got 1.1' },
    { goal: 5, rate: 0.9, confidence: 0, sentence: 'confidence must be greater than 0, got 0' },
    { goal: 5, rate: 0.9, confidence: 1.5, sentence: 'confidence must be at most 1, got 1.5' },
  ])('refuses: $sentence', ({ goal, rate, confidence, sentence }) => {
    expect(errorText(() => piecesToPour(goal, fixed(rate), confidence))).toBe(sentence);
  });
});

describe('chances', () => {
  test('of exactly each number of good pieces add up to 1', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 60 }),
        fc.double({ min: 0.2, max: 30, noNaN: true }),
        fc.double({ min: 0.2, max: 30, noNaN: true }),
        (pieces, goodWeight, badWeight) => {
          const belief = { kind: 'beta', goodWeight, badWeight } as const;
          const mirror = { kind: 'beta', goodWeight: badWeight, badWeight: goodWeight } as const;
          let mean = 0;
          for (let goal = 1; goal <= pieces; goal++) {
            const chance = chanceOfEnough(goal, pieces, belief);
            mean += chance;
            // good in one belief is bad in its mirror
            expect(chance + chanceOfEnough(pieces - goal + 1, pieces, mirror)).toBeNear(1, {
              absolute: 1e-11, // rounding of up to 60 terms
            });
          }
          // the sum of the upper tails is the mean
          expect(mean).toBeNear(pieces * meanYield(belief), { relative: 1e-10 });
        },
      ),
    );
  });

  test('a longer record moves the expected yield from the assumption to the record', () => {
    expect(meanYield(yieldBelief({ mean: 0.9, weight: 10, good: 0, poured: 0 }))).toBeNear(0.9, {
      relative: 1e-15, // 9 / 10
    });
    expect(meanYield(yieldBelief({ mean: 0.9, weight: 10, good: 70, poured: 90 }))).toBeNear(0.79, {
      relative: 1e-15, // (9 + 70) / (10 + 90)
    });
    expect(errorText(() => yieldBelief({ mean: 0.9, weight: 10, good: 5, poured: 4 }))).toBe(
      'good must be at most 4, got 5',
    );
  });
});
