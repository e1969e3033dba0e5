import { describe, expect, test } from 'vitest';
import { DEFAULTS, type Default } from '../../shared/material/defaults.ts';
import { UNITS } from '../../shared/units/units.ts';

const rows: readonly (readonly [string, Default])[] = Object.entries(DEFAULTS);

describe('every default', () => {
  test.each(rows)('%s lies in its range and says how well it is known', (_name, figure) => {
    expect(figure.low).toBeLessThanOrEqual(figure.value);
    expect(figure.value).toBeLessThanOrEqual(figure.high);
    expect(figure.evidence.length).toBeGreaterThan(5);
  });

  test('is in the engine’s own unit', () => {
    for (const [name, { unit }] of rows) if (unit) expect(UNITS[unit].factor, name).toBe(1);
  });
});

test('the temperatures of a pour come in their order', () => {
  const order = [
    DEFAULTS.roomTemperature,
    DEFAULTS.localAirTemperature,
    DEFAULTS.demoldTemperature,
    DEFAULTS.setTemperature,
    DEFAULTS.firmTemperature,
    DEFAULTS.bondTemperature,
    DEFAULTS.pourTemperature,
    DEFAULTS.cookTemperature,
    DEFAULTS.hardStop,
  ].map(({ value }) => value);
  expect(order).toEqual([...order].sort((one, other) => one - other));
});

test('hot density is the cold one less expansion, within its range', () => {
  // mean of 60 to 170 °C, against 23 °C
  const swelling = 1 + DEFAULTS.expansion.value * (115 - 23);
  const hot = DEFAULTS.density.value / swelling;
  expect(hot).toBeGreaterThan(DEFAULTS.hotDensity.low);
  expect(hot).toBeLessThan(DEFAULTS.hotDensity.high);
});
