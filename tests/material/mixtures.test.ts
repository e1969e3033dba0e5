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
  test.each([0, 4, 10, 15, 20, 25, 30, 35, 40])(
    'at %d °C is the density of the international table',
    (temperature) => {
      // CIPMWATER, page 305: a5 [1 - (t + a1)^2 (t + a2) / (a3 (t + a4))]
      const [a1, a2, a3, a4, a5] = [-3.983035, 301.797, 522528.9, 69.34881, 999.97495];
      const table =
        a5 * (1 - ((temperature + a1) ** 2 * (temperature + a2)) / (a3 * (temperature + a4)));
      // Kell's equation is on the temperature scale of 1968 and for other isotopes: up to 0.004 kg/m3 apart
      expect(waterDensity(temperature)).toBeNear(table, { absolute: 4e-3 });
    },
  );

  test.each([5, 20, 40])('at %d °C is that of volumetric calibration', (temperature) => {
    // JONESHARRIS, air-saturated water, ITS-90, valid 5 to 40 °C
    const terms = [999.85308, 6.32693e-2, -8.523829e-3, 6.943248e-5, -3.821216e-7];
    const calibration = terms.reduce((sum, term, power) => sum + term * temperature ** power, 0);
    // dissolved air takes off up to 0.004, the temperature scale as much
    expect(waterDensity(temperature)).toBeNear(calibration, { absolute: 8e-3 });
  });

  test('at the boiling point is 958.4', () => {
    // CENGELBOLES, saturated liquid at 100 °C: 0.001043 m3/kg, printed to 4 figures
    expect(1 / waterDensity(100)).toBeNear(0.001043, { absolute: 5e-7 });
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
