import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  contactTemperature,
  effusivity,
  layerContactTemperature,
} from '../../shared/heat/contactTemperature.ts';
import { evenReal } from '../evenReal.ts';
import { errorText } from './errorText.ts';

const temperatures = evenReal(-20, 200);
const effusivities = fc.double({ min: 100, max: 40_000, noNaN: true });

test('skin at 35 °C touches aluminum at 15 °C: 15.9 °C (CENGEL, section 4-3)', () => {
  const skin = { temperature: 35, effusivity: 1100 };
  const aluminum = { temperature: 15, effusivity: 24_000 };
  // Half a unit of the last printed digit.
  expect(contactTemperature(skin, aluminum)).toBeNear(15.9, { absolute: 0.05 });
});

test('effusivity of pure aluminum is 24 kW s^0.5/(m2 K) (CENGEL, section 4-3)', () => {
  const aluminum = { conductivity: 237, density: 2702, specificHeat: 903 };
  // Printed to two figures.
  expect(effusivity(aluminum)).toBeNear(24_000, { absolute: 500 });
});

test('melt at 160 °C on an aluminum mold at 60 °C: the wall stays near the mold, 62.6 °C (HEATSTUDY)', () => {
  const melt = { temperature: 160, effusivity: 550 };
  const mold = { temperature: 60, effusivity: 20_100 };
  // Both effusivities are printed rounded.
  expect(contactTemperature(melt, mold)).toBeNear(62.6, { absolute: 0.1 });
});

test('like on like is the plain average', () => {
  fc.assert(
    fc.property(temperatures, temperatures, effusivities, (one, other, both) => {
      const average = (one + other) / 2;
      // Rounding only.
      expect(
        contactTemperature(
          { temperature: one, effusivity: both },
          { temperature: other, effusivity: both },
        ),
      ).toBeNear(average, { absolute: 1e-10 });
      expect(layerContactTemperature(one, other)).toBeNear(average, { absolute: 1e-10 });
    }),
  );
});

test('order does not matter, and the result lies between the two', () => {
  const sides = fc.record({ temperature: temperatures, effusivity: effusivities });
  fc.assert(
    fc.property(sides, sides, (one, other) => {
      const contact = contactTemperature(one, other);
      // Rounding only.
      expect(contactTemperature(other, one)).toBeNear(contact, { absolute: 1e-10 });
      const low = Math.min(one.temperature, other.temperature);
      const high = Math.max(one.temperature, other.temperature);
      expect(contact).toBeGreaterThanOrEqual(low - 1e-10);
      expect(contact).toBeLessThanOrEqual(high + 1e-10);
    }),
  );
});

test('bad figures are named', () => {
  const side = { temperature: 20, effusivity: 500 };
  expect(errorText(() => contactTemperature(side, { ...side, effusivity: 0 }))).toBe(
    'effusivity must be greater than 0, got 0',
  );
  expect(errorText(() => layerContactTemperature(Number.NaN, 158))).toBe(
    'surface temperature must be a number (°C), got not a number',
  );
  const plastic = { conductivity: 0.15, density: 1000, specificHeat: 1900 };
  expect(errorText(() => effusivity({ ...plastic, conductivity: 0 }))).toBe(
    'conductivity must be greater than 0 W/m·K, got 0 W/m·K',
  );
  expect(errorText(() => effusivity({ ...plastic, density: 0 }))).toBe(
    'density must be greater than 0 kg/m³, got 0 kg/m³',
  );
  expect(errorText(() => effusivity({ ...plastic, specificHeat: 0 }))).toBe(
    'specific heat must be greater than 0 J/kg·K, got 0 J/kg·K',
  );
});
