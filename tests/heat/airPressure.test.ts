import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { airPressure, airTemperature } from '../../shared/heat/airPressure.ts';
import { fromEngine, toEngine } from '../../shared/units/toEngine.ts';
import { evenReal } from '../evenReal.ts';
import { errorText } from './errorText.ts';

const EARTH_RADIUS = 6_356_766; // m, USSA76

describe('airPressure agrees with the printed atmosphere', () => {
  test.each([
    { meters: 0, expected: 101_325, within: 1e-6, source: 'USSA76, by definition' },
    { meters: 1000, expected: 89_876, within: 0.5, source: 'USSA76, 1000 m geometric' },
    { meters: 3000, expected: 70_121, within: 0.5, source: 'USSA76, 3000 m geometric' },
  ])('$meters m: $source', ({ meters, expected, within }) => {
    // Half a unit of the last printed digit.
    expect(airPressure(meters)).toBeNear(expected, { absolute: within });
  });

  test.each([
    { height: 1000, expected: 89_874.6, within: 0.05, source: 'ISO2533' },
    { height: 2000, expected: 79_495.2, within: 0.3, source: 'ISO2533' },
    { height: 5000, expected: 54_019.9, within: 0.3, source: 'ISO2533' },
  ])('geopotential $height m: $source', ({ height, expected, within }) => {
    const elevation = (EARTH_RADIUS * height) / (EARTH_RADIUS - height);
    // The last printed digit, read from memory for the two higher rows.
    expect(airPressure(elevation)).toBeNear(expected, { absolute: within });
  });

  test.each([
    { feet: 5000, expected: 12.228, within: 0.0005, source: 'ATMOSPHERETABLE' },
    { feet: -1000, expected: 15.236, within: 0.003, source: 'ASHRAE, rounded loosely' },
    { feet: 1000, expected: 14.175, within: 0.003, source: 'ASHRAE, rounded loosely' },
  ])('$feet ft in psi: $source', ({ feet, expected, within }) => {
    const pressure = fromEngine(airPressure(toEngine(feet, 'ft')), 'psi');
    // The table's rounding as said in its row.
    expect(pressure).toBeNear(expected, { absolute: within });
  });
});

test('airTemperature at 5000 ft is 41.17 °F (ATMOSPHERETABLE)', () => {
  const fahrenheit = fromEngine(airTemperature(toEngine(5000, 'ft')), 'degF');
  // Half a unit of the last printed digit.
  expect(fahrenheit).toBeNear(41.17, { absolute: 0.005 });
});

test('airPressure falls with elevation, by the weight of the air between', () => {
  fc.assert(
    fc.property(evenReal(-4900, 10_900), (elevation) => {
      const step = 10;
      const drop = airPressure(elevation) - airPressure(elevation + step);
      const kelvin = airTemperature(elevation + step / 2) + 273.15;
      const density = (airPressure(elevation + step / 2) * 28.9644) / (8314.32 * kelvin);
      // Gravity is 0.4 % less at the top of the layer; the rest is the finite step.
      expect(drop).toBeNear(density * 9.80665 * step, { relative: 5e-3 });
    }),
  );
});

test('airPressure refuses heights beyond the lowest layer', () => {
  expect(errorText(() => airPressure(11_001))).toBe(
    'elevation must be at most 11000 m, got 11001 m',
  );
  expect(errorText(() => airTemperature(-5001))).toBe(
    'elevation must be at least -5000 m, got -5001 m',
  );
  expect(errorText(() => airPressure(Number.NaN))).toBe(
    'elevation must be a number (m), got not a number',
  );
});
