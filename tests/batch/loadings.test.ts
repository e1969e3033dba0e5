import fc from 'fast-check';
import { expect, test } from 'vitest';
import { loadings } from '../../shared/batch/loadings.ts';
import { evenReal } from '../evenReal.ts';
import { errorText } from '../heat/errorText.ts';

test('loadings are over the base and judged by their limits', () => {
  const black = { name: 'Black', mass: 0.002, limit: 0.03 };
  const salt = { name: 'Fine salt', mass: 0.08, limit: 0.35 };
  const mica = { name: 'Pearl mica', mass: 0.005, limit: 0.02 };
  const flake = { name: 'Flake', mass: 0.001 };
  // by hand, over 0.2 kg of base; last digits of a double
  expect(loadings(0.2, [black, salt, mica, flake])).toEqual({
    total: expect.toBeNear(0.44, { relative: 1e-12 }),
    each: [
      { name: 'Black', loading: 0.01, verdict: 'within limit', limit: 0.03 },
      {
        name: 'Fine salt',
        loading: expect.toBeNear(0.4, { relative: 1e-12 }),
        verdict: 'over limit',
        limit: 0.35,
      },
      {
        name: 'Pearl mica',
        loading: expect.toBeNear(0.025, { relative: 1e-12 }),
        verdict: 'over limit',
        limit: 0.02,
      },
      { name: 'Flake', loading: 0.005, verdict: 'no limit known' },
    ],
  });
});

test('two doses of one additive count together, under the lower of their limits', () => {
  const twice = [
    { name: 'White', mass: 0.002, limit: 0.03 },
    { name: 'White', mass: 0.002, limit: 0.015 },
  ];
  expect(loadings(0.2, twice).each).toEqual([
    { name: 'White', loading: 0.02, verdict: 'over limit', limit: 0.015 },
  ]);
});

test('a loading at its limit is within it, and the total is the sum of its parts', () => {
  expect(loadings(0.1, [{ name: 'Black', mass: 0.1 * 0.05, limit: 0.05 }]).each[0]?.verdict).toBe(
    'within limit',
  );
  const additive = fc.record({
    name: fc.constantFrom('a', 'b', 'c'),
    mass: evenReal(0, 0.1),
  });
  fc.assert(
    fc.property(fc.array(additive), (additives) => {
      const { total, each } = loadings(0.25, additives);
      const sum = each.reduce((so, { loading }) => so + loading, 0);
      expect(total).toBeNear(sum, { absolute: 1e-12 }); // order of addition
    }),
  );
  expect(loadings(0.1, [])).toEqual({ total: 0, each: [] });
});

test('loadings names the additive that is wrong', () => {
  expect(errorText(() => loadings(0.1, [{ name: 'Black', mass: -0.001 }]))).toBe(
    'Black must be at least 0 kg, got -0.001 kg',
  );
  expect(errorText(() => loadings(0, []))).toBe(
    'base in the cup must be greater than 0 kg, got 0 kg',
  );
  expect(errorText(() => loadings(1, [{ name: 'Black', mass: 0.1, limit: Number.NaN }]))).toBe(
    'limit of Black must be a number, got not a number',
  );
});
