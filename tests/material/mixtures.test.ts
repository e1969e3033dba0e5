import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { floatOrSink } from '../../shared/material/floatOrSink.ts';
import { mixtureDensity } from '../../shared/material/mixtureDensity.ts';
import { waterDensity } from '../../shared/material/waterDensity.ts';
import { errorText } from '../heat/errorText.ts';

function mix(...pairs: readonly (readonly [mass: number, gramsPerML: number])[]): number {
  return mixtureDensity(pairs.map(([mass, density]) => ({ mass, density: density * 1000 }))) / 1000;
}

describe('mixtureDensity', () => {
  test.each([
    {
      given: [
        [30, 2.54],
        [15, 2.15],
        [55, 1.14],
      ],
      expected: 1.49,
      within: 5e-3,
      source: 'COMPOUNDER, F1, printed to 2 places',
    },
    {
      given: [
        [100, 1.4],
        [60, 0.984],
      ],
      expected: 1.2084,
      within: 5e-5,
      source: 'ADDITIVE, F2',
    },
    {
      given: [
        [98, 1.20842],
        [2, 2.82],
      ],
      expected: 1.2224,
      within: 5e-5,
      source: 'ADDITIVE, F3',
    },
    {
      given: [
        [100, 1.4],
        [50, 0.986],
      ],
      expected: 1.2281,
      within: 5e-5,
      source: 'ADDITIVE, F4',
    },
    {
      given: [
        [99.5, 1.17086],
        [0.5, 1.38],
      ],
      expected: 1.1717,
      within: 1e-4,
      source: 'ADDITIVE, F5',
    },
    {
      given: [
        [60, 1.4],
        [40, 0.986],
      ],
      expected: 1.1987,
      within: 5e-5,
      source: 'ADDITIVE, F6',
    },
  ] as const)('$given is $expected g/mL', ({ given, expected, within }) => {
    expect(mix(...given)).toBeNear(expected, { absolute: within });
  });

  test('lies between its parts and does not depend on their order', () => {
    const part = fc.record({
      mass: fc.double({ min: 0.01, max: 10, noNaN: true }),
      density: fc.double({ min: 100, max: 5000, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 6 }), (parts) => {
        const density = mixtureDensity(parts);
        const densities = parts.map((one) => one.density);
        expect(density).toBeGreaterThanOrEqual(Math.min(...densities) * (1 - 1e-12));
        expect(density).toBeLessThanOrEqual(Math.max(...densities) * (1 + 1e-12));
        expect(mixtureDensity([...parts].reverse())).toBeNear(density, { relative: 1e-12 });
      }),
    );
  });

  test('refuses no mass at all', () => {
    expect(errorText(() => mixtureDensity([]))).toBe('mass must be greater than 0 kg, got 0 kg');
  });
});

describe('waterDensity', () => {
  test.each([
    { given: 4, expected: 999.972, source: 'CIPMWATER' },
    { given: 20, expected: 998.203, source: 'CIPMWATER' },
    { given: 25, expected: 997.043, source: 'CIPMWATER' },
    { given: 40, expected: 992.212, source: 'CIPMWATER' },
  ])('at $given °C is $expected', ({ given, expected }) => {
    // Kell's equation is on the older temperature scale: up to 0.01 kg/m3 apart
    expect(waterDensity(given)).toBeNear(expected, { absolute: 0.01 });
  });

  test('refuses ice and steam', () => {
    expect(errorText(() => waterDensity(-1))).toBe(
      'water temperature must be at least 0 °C, got -1 °C',
    );
    expect(errorText(() => waterDensity(101))).toBe(
      'water temperature must be at most 100 °C, got 101 °C',
    );
  });
});

describe('floatOrSink', () => {
  const bare = {
    pieceMass: 0.01,
    pieceDensity: 1040,
    riggingMass: 0,
    riggingDensity: 7850,
    waterTemperature: 20,
  };

  test('plain plastisol sinks slowly, salt makes it sink faster, glass bubbles float it', () => {
    expect(floatOrSink(bare)).toMatchObject({
      verdict: 'sinks',
      density: expect.toBeNear(1040, { relative: 1e-12 }),
    });
    expect(floatOrSink({ ...bare, pieceDensity: 1170 }).weightInWater).toBeGreaterThan(
      floatOrSink(bare).weightInWater,
    );
    expect(floatOrSink({ ...bare, pieceDensity: 940 }).verdict).toBe('floats');
  });

  test('its weight in water is Archimedes’', () => {
    const rigged = floatOrSink({ ...bare, pieceDensity: 940, riggingMass: 0.002 });
    const displaced = (0.01 / 940 + 0.002 / 7850) * waterDensity(20);
    expect(rigged.weightInWater).toBeNear(0.012 - displaced, { relative: 1e-12 });
    expect(rigged.verdict).toBe('sinks');
  });
});
