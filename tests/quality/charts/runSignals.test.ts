import { erfc } from 'jstat-esm';
import { describe, expect, test } from 'vitest';
import { type RulePoint, runSignals } from '../../../shared/quality/charts/runSignals.ts';
import { pseudoRandom } from '../../uncertainty/pseudoRandom.ts';

function normalPoints(values: readonly number[]): readonly RulePoint[] {
  return values.map((z) => ({
    z,
    chanceBeyond: (sigmas) => tail(sigmas),
    chanceAsFar: tail(Math.abs(z)),
  }));
}

function tail(z: number): number {
  return erfc(z / Math.SQRT2) / 2;
}

function found(values: readonly number[]) {
  return runSignals(normalPoints(values)).map(({ rule, side, from, to }) => [rule, side, from, to]);
}

describe('each rule of WESTERNELECTRIC at its edge', () => {
  test.each([
    { z: [0.5, 3.01, -0.5], signals: [['limit', 'high', 1, 1]] },
    { z: [0.5, 3, -0.5], signals: [] },
    { z: [0.5, -3.01, 0.5], signals: [['limit', 'low', 1, 1]] },
    { z: [2.1, 0.2, 2.1], signals: [['twoOfThree', 'high', 0, 2]] },
    { z: [2.1, 0.2, -0.2, 2.1], signals: [] },
    { z: [2.1, -2.1, 0.2], signals: [] },
    { z: [1.1, 1.1, 0.2, 1.1, 1.1], signals: [['fourOfFive', 'high', 0, 4]] },
    { z: [1.1, 1.1, 0.2, 0.2, 1.1, 1.1], signals: [] },
    { z: [0.1, 0.2, 0.1, 0.2, 0.1, 0.2, 0.1, 0.2], signals: [['eightInRow', 'high', 0, 7]] },
    { z: [0.1, 0.2, 0.1, 0.2, 0.1, 0.2, 0.1], signals: [] },
    { z: [0.1, 0.2, 0.1, 0, 0.1, 0.2, 0.1, 0.2, 0.1], signals: [] },
    {
      z: [-0.1, -0.2, -0.1, -0.2, -0.1, -0.2, -0.1, -0.2, -0.3],
      signals: [['eightInRow', 'low', 0, 8]],
    },
  ])('$z', ({ z, signals }) => {
    expect(found(z)).toEqual(signals);
  });

  test('runs that do not touch are two signals, in the order they came', () => {
    const calm = [0.1, -0.1, 0.1, -0.1];
    expect(found([2.1, 2.2, ...calm, -2.1, -2.2, ...calm, 2.1, 2.2])).toEqual([
      ['twoOfThree', 'high', 0, 1],
      ['twoOfThree', 'low', 6, 7],
      ['twoOfThree', 'high', 12, 13],
    ]);
  });

  test('no points, no signal', () => {
    expect(runSignals([])).toEqual([]);
  });
});

describe('false alarms', () => {
  test('by themselves the rules answer luck at 1.3, 1.5, 2.8 and 3.9 of 1,000 places', () => {
    const chances = [
      [3 + 1e-6],
      [0.1, 2.1, 2.1],
      [1.1, 1.1, 0.1, 1.1, 1.1],
      Array.from({ length: 8 }, () => 0.1),
    ].map((values) => runSignals(normalPoints(values))[0]?.chance ?? 0);
    const [p2, p1] = [tail(2), tail(1)];
    // a hair beyond three standard deviations
    expect(chances[0]).toBeNear(tail(3), { relative: 1e-4 });
    expect(chances[1]).toBeNear(3 * p2 ** 2 * (1 - p2) + p2 ** 3, { relative: 1e-9 });
    expect(chances[2]).toBeNear(5 * p1 ** 4 * (1 - p1) + p1 ** 5, { relative: 1e-9 });
    expect(chances[3]).toBeNear(1 / 256, { relative: 1e-12 });
  });

  test('CHAMPWOODALL: with all four rules luck alone gives a signal every 91.75 points', () => {
    const next = pseudoRandom(7);
    const normal = () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
    const lengths = Array.from({ length: 3000 }, () => {
      let recent: readonly number[] = [];
      for (let length = 1; ; length += 1) {
        recent = [...recent.slice(-7), normal()];
        const last = recent.length - 1;
        if (runSignals(normalPoints(recent)).some(({ to }) => to === last)) return length;
      }
    });
    const mean = lengths.reduce((sum, length) => sum + length, 0) / lengths.length;
    // run lengths are about geometric: the mean of 3,000 is sure to 91.75 / sqrt(3000), three times that is 5
    expect(mean).toBeNear(91.75, { absolute: 5 });
  });
});
