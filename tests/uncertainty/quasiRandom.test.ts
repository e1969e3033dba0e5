import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { quasiRandom } from '../../shared/uncertainty/quasiRandom.ts';
import { errorText } from '../heat/errorText.ts';
import { pseudoRandomPoints } from './pseudoRandom.ts';

const DIMENSIONS = 14;
const COUNT = 128;
const SEEDS = Array.from({ length: 60 }, (_, index) => index + 1);

type Points = readonly (readonly number[])[];
type Maker = (count: number, dimensions: number, seed: number) => Points;

/** Smooth functions whose integral over the cube is 0. */
const INTEGRANDS: Readonly<Record<string, (point: readonly number[]) => number>> = {
  'all alike, gently curved': (point) =>
    point.reduce((product, x) => (product * Math.exp((x - 0.5) / 4)) / MEAN, 1) - 1,
  'first ones matter most': (point) =>
    point.reduce((product, x, axis) => product * (1 + (3 * x * x - 1) / (axis + 1)), 1) - 1,
  'every pair of axes': (point) => {
    const sum = point.reduce((total, x) => total + x - 0.5, 0);
    // square of the sum less the squares: twice the pairs
    return (sum ** 2 - point.reduce((total, x) => total + (x - 0.5) ** 2, 0)) / 2;
  },
  'two of the axes': ([x = 0, y = 0]) => Math.exp(-x - y) - (1 - Math.exp(-1)) ** 2,
};
/** Of exp((x - 1/2) / 4) over one axis: 4 (e^(1/8) - e^(-1/8)) */
const MEAN = 8 * Math.sinh(1 / 8);

/** Root mean square error of the mean over the seeds. */
function scatter(maker: Maker, integrand: (point: readonly number[]) => number): number {
  const squares = SEEDS.map((seed) => {
    const points = maker(COUNT, DIMENSIONS, seed);
    return (points.reduce((sum, point) => sum + integrand(point), 0) / COUNT) ** 2;
  });
  return Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / squares.length);
}

/** GOLDENPOINTS: x_j = fraction of (i / phi^j), phi^(d + 1) = phi + 1, shifted by pseudo-random numbers. */
function goldenPoints(count: number, dimensions: number, seed: number): Points {
  let phi = 1;
  for (let step = 0; step < 60; step += 1) phi = (1 + phi) ** (1 / (dimensions + 1));
  const [shift = []] = pseudoRandomPoints(1, dimensions, seed);
  return Array.from({ length: count }, (_, index) =>
    shift.map((start, axis) => (start + (index + 1) / phi ** (axis + 1)) % 1),
  );
}

describe('quasiRandom', () => {
  test.each([
    { name: 'all alike, gently curved', timesBetter: 5 },
    { name: 'first ones matter most', timesBetter: 2.5 },
    // least here: 128 points cannot be even over all 91 pairs of axes
    { name: 'every pair of axes', timesBetter: 1.4 },
    { name: 'two of the axes', timesBetter: 7 },
  ])('integrates $timesBetter times better than pseudo-random points: $name', (row) => {
    const integrand = INTEGRANDS[row.name] ?? (() => Number.NaN);
    const even = scatter(quasiRandom, integrand);
    expect(even * row.timesBetter).toBeLessThan(scatter(pseudoRandomPoints, integrand));
  });

  test('integrates better than generalized golden ratios at this size (GOLDENPOINTS)', () => {
    for (const integrand of Object.values(INTEGRANDS))
      expect(1.2 * scatter(quasiRandom, integrand)).toBeLessThan(scatter(goldenPoints, integrand));
  });

  test('pairs of axes look less related than those of pseudo-random points', () => {
    const correlations = (maker: Maker) => {
      const points = maker(COUNT, DIMENSIONS, 3);
      let sum = 0;
      for (let one = 0; one < DIMENSIONS; one += 1)
        for (let other = 0; other < one; other += 1) {
          const products = points.map(
            (point) => ((point[one] ?? 0) - 0.5) * ((point[other] ?? 0) - 0.5),
          );
          sum += (12 * (products.reduce((total, product) => total + product, 0) / COUNT)) ** 2;
        }
      return Math.sqrt(sum / (7 * 13));
    };
    expect(correlations(quasiRandom)).toBeLessThan(0.65 * correlations(pseudoRandomPoints));
  });

  test('along every axis one point falls in each of n equal steps, whatever the seed', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 200 }),
        fc.integer({ min: 1, max: 16 }),
        fc.integer({ min: -(2 ** 31), max: 2 ** 31 }),
        (count, dimensions, seed) => {
          const points = quasiRandom(count, dimensions, seed);
          for (let axis = 0; axis < dimensions; axis += 1) {
            const values = points.map((point) => point[axis] ?? Number.NaN);
            expect(values.every((x) => x >= 0 && x < 1)).toBe(true);
            values.sort((one, other) => one - other);
            values.forEach((x, index) => {
              // Rounding of a fraction only.
              expect(x - (values[0] ?? 0)).toBeNear(index / count, { absolute: 1e-12 });
            });
          }
        },
      ),
      { numRuns: 40 },
    );
  });

  test('an axis keeps its points when axes are added', () => {
    const few = quasiRandom(32, 3, 5);
    const many = quasiRandom(32, 9, 5);
    expect(many.map((point) => point.slice(0, 3))).toEqual(few);
  });

  test('the same seed gives the same points, each other seed its own', () => {
    expect(quasiRandom(64, 5, 8)).toEqual(quasiRandom(64, 5, 8));
    const starts = SEEDS.map((seed) => quasiRandom(8, 2, seed)[0]?.join());
    expect(new Set(starts).size).toBe(SEEDS.length);
  });

  test('shifts of many seeds are themselves evenly spread', () => {
    const shifts = Array.from({ length: 1000 }, (_, seed) => quasiRandom(2, 2, seed)[0]?.[1] ?? 0);
    for (const share of [0.1, 0.25, 0.5, 0.75, 0.9]) {
      const below = shifts.filter((shift) => shift < share).length / 1000;
      // Three standard errors of a share among 1000 are at most 0.047.
      expect(below).toBeNear(share, { absolute: 0.047 });
    }
  });

  test('bad figures are named', () => {
    expect(errorText(() => quasiRandom(1, 3, 1))).toBe('number of draws must be at least 2, got 1');
    expect(errorText(() => quasiRandom(4096, 3, 1))).toBe(
      'number of draws must be at most 2048, got 4096',
    );
    expect(errorText(() => quasiRandom(8, 0, 1))).toBe('dimensions must be at least 1, got 0');
    expect(errorText(() => quasiRandom(8, 3, 0.5))).toBe('seed must be a whole number, got 0.5');
  });
});
