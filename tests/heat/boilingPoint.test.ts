import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boilingPoint } from '../../shared/heat/boilingPoint.ts';
import { saturationPressure } from '../../shared/heat/saturationPressure.ts';
import { saturationTemperature } from '../../shared/heat/saturationTemperature.ts';
import { fromEngine, toEngine } from '../../shared/units/toEngine.ts';
import { evenReal } from '../evenReal.ts';
import { errorText } from './errorText.ts';

const ZERO_CELSIUS = 273.15;

describe('saturationPressure', () => {
  test.each([
    { kelvin: 300, expected: 0.353658941e-2, source: 'IAPWS97, Table 35' },
    { kelvin: 600, expected: 0.123443146e2, source: 'IAPWS97, Table 35' },
  ])('of $kelvin K is the program check value: $source', ({ kelvin, expected }) => {
    // The table prints nine figures.
    expect(saturationPressure(kelvin - ZERO_CELSIUS) / 1e6).toBeNear(expected, { relative: 2e-9 });
  });

  test.each([
    { celsius: 95, expected: 0.08461, source: 'STEAMTABLE' },
    { celsius: 90, expected: 0.07018, source: 'STEAMTABLE' },
  ])('of $celsius °C agrees with a printed table: $source', ({ celsius, expected }) => {
    // Half a unit of the last printed digit.
    expect(saturationPressure(celsius) / 1e6).toBeNear(expected, { absolute: 5e-6 });
  });

  test('refuses a temperature beyond the critical point', () => {
    expect(errorText(() => saturationPressure(374))).toBe(
      'temperature must be at most 373.946 °C, got 374 °C',
    );
  });
});

describe('saturationTemperature', () => {
  test.each([
    { megapascal: 0.1, expected: 372.755919, source: 'IAPWS97, Table 36' },
    { megapascal: 10, expected: 584.149488, source: 'IAPWS97, Table 36' },
  ])('of $megapascal MPa is the program check value: $source', ({ megapascal, expected }) => {
    // The table prints nine figures.
    const kelvin = saturationTemperature(megapascal * 1e6) + ZERO_CELSIUS;
    expect(kelvin).toBeNear(expected, { relative: 2e-9 });
  });

  test.each([
    { kilopascal: 101.325, expected: 99.97, source: 'CENGELBOLES, Table A-5' },
    { kilopascal: 20, expected: 60.06, source: 'CENGELBOLES, Table A-5' },
    { kilopascal: 40, expected: 75.86, source: 'CENGELBOLES, Table A-5' },
    { kilopascal: 50, expected: 81.32, source: 'CENGELBOLES, Table A-5' },
    { kilopascal: 100, expected: 99.61, source: 'CENGELBOLES, Table A-5' },
    { kilopascal: 150, expected: 111.35, source: 'CENGELBOLES, Table A-5' },
    { kilopascal: 200, expected: 120.21, source: 'CENGELBOLES, Table A-5' },
  ])('of $kilopascal kPa agrees with a printed table: $source', ({ kilopascal, expected }) => {
    // Half a unit of the last printed digit.
    expect(saturationTemperature(kilopascal * 1000)).toBeNear(expected, { absolute: 0.005 });
  });

  test('is the inverse of saturationPressure', () => {
    fc.assert(
      fc.property(evenReal(0, 373.9), (celsius) => {
        // Both are exact solutions of one quadratic; what is left is rounding, worst near 0 °C.
        expect(saturationTemperature(saturationPressure(celsius))).toBeNear(celsius, {
          absolute: 1e-7,
        });
      }),
    );
  });

  test('refuses a pressure below the line', () => {
    expect(errorText(() => saturationTemperature(600))).toBe(
      'pressure must be at least 611.212 Pa, got 600 Pa',
    );
  });
});

describe('boilingPoint', () => {
  test.each([
    { feet: 1000, expected: 210.2, within: 0.15, source: 'NOAABOIL' },
    { feet: 2000, expected: 208, within: 0.5, source: 'FSIS, whole degrees' },
    { feet: 5000, expected: 203, within: 0.5, source: 'FSIS, whole degrees' },
    { feet: 6000, expected: 201.1, within: 0.15, source: 'NOAABOIL' },
    { feet: 10_000, expected: 194, within: 0.5, source: 'FSIS, whole degrees' },
    { feet: 10_000, expected: 193.6, within: 0.1, source: 'NOAABOIL' },
  ])('at $feet ft is $expected °F: $source', ({ feet, expected, within }) => {
    const fahrenheit = fromEngine(boilingPoint(toEngine(feet, 'ft')), 'degF');
    // Half a unit of the table's last digit; its air pressures are rounded too.
    expect(fahrenheit).toBeNear(expected, { absolute: within });
  });

  test.each([
    { feet: 5000, expected: 94.9 },
    { feet: 10_000, expected: 89.8 },
  ])('at $feet ft is $expected °C (NOAABOIL)', ({ feet, expected }) => {
    // Half a unit of the last printed digit.
    expect(boilingPoint(toEngine(feet, 'ft'))).toBeNear(expected, { absolute: 0.05 });
  });

  test('falls with every foot climbed', () => {
    fc.assert(
      fc.property(evenReal(-4900, 10_900), (elevation) => {
        expect(boilingPoint(elevation + 1)).toBeLessThan(boilingPoint(elevation));
      }),
    );
  });
});
