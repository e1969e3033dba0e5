import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { absorbedPower, heatNeeded, microwaveTime } from '../../shared/heat/microwaveTime.ts';
import { errorText } from './errorText.ts';

describe('heatNeeded and absorbedPower agree with worked examples', () => {
  test('aluminum pan and water, 20 to 80 °C: 27.0, 62.8, 89.8 kJ, 30.1 % in the pan (OPENSTAXPHYSICS, Ex. 14.1)', () => {
    const pan = { mass: 0.5, specificHeat: 900 };
    const water = { mass: 0.25, specificHeat: 4186 };
    // Three figures.
    expect(heatNeeded([pan], 60) / 1000).toBeNear(27, { absolute: 0.05 });
    expect(heatNeeded([water], 60) / 1000).toBeNear(62.8, { absolute: 0.05 });
    expect(heatNeeded([pan, water], 60) / 1000).toBeNear(89.8, { absolute: 0.05 });
    expect(heatNeeded([pan], 60) / heatNeeded([pan, water], 60)).toBeNear(0.301, {
      absolute: 5e-4,
    });
  });

  test.each([
    { watts: 600, seconds: 70 },
    { watts: 700, seconds: 60 },
    { watts: 800, seconds: 52 },
    { watts: 900, seconds: 46.5 },
    { watts: 1000, seconds: 42 },
    { watts: 1100, seconds: 38 },
  ])('$watts W heats a liter of water by 10 K in $seconds s (IEC60705)', ({ watts, seconds }) => {
    const heat = heatNeeded([{ mass: 1, specificHeat: 4187 }], 10);
    // Whole seconds.
    expect(heat / watts).toBeNear(seconds, { absolute: 0.5 });
    expect(absorbedPower(heat, heat / watts)).toBeNear(watts, { relative: 1e-12 });
  });

  test('250 g of water, 20 to 100 °C in 105 s: 797 W (GIANCOLI)', () => {
    const heat = heatNeeded([{ mass: 0.25, specificHeat: 4186 }], 80);
    // Three figures.
    expect(absorbedPower(heat, 105)).toBeNear(797, { absolute: 0.5 });
  });
});

const LOAD = {
  bodies: [
    { mass: 0.24, specificHeat: 1900 },
    { mass: 0.05, specificHeat: 840 },
  ],
  start: 23,
  end: 168,
  ratedPower: 1000,
  burst: 30,
  rest: 20,
};

describe('microwaveTime', () => {
  test.each([
    { grams: 60, heat: 18, seconds: 40 },
    { grams: 120, heat: 36, seconds: 79 },
    { grams: 240, heat: 71, seconds: 158 },
    { grams: 480, heat: 142, seconds: 316 },
  ])('$grams g by 145 K in a 1000 W oven: $seconds s (HEATSTUDY)', ({ grams, heat, seconds }) => {
    const mass = grams / 1000;
    const cup = { mass: mass * 0.2, specificHeat: 950 };
    const plan = microwaveTime({ ...LOAD, bodies: [{ mass, specificHeat: 1850 }, cup] });
    // The study's cup takes a tenth of the whole heat, printed in whole kilojoules and seconds.
    expect(plan.heat / 1000).toBeNear(heat, { relative: 0.02 });
    expect(plan.heating).toBeNear(seconds, { relative: 0.02 });
  });

  test('bursts cover the heating, with a rest between each two', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 200, max: 2000, noNaN: true }),
        fc.double({ min: 10, max: 60, noNaN: true }),
        (ratedPower, burst) => {
          const plan = microwaveTime({ ...LOAD, ratedPower, burst });
          expect(plan.bursts * burst).toBeGreaterThanOrEqual(plan.heating);
          expect((plan.bursts - 1) * burst).toBeLessThan(plan.heating);
          // Rounding only.
          expect(plan.elapsed).toBeNear(plan.heating + (plan.bursts - 1) * 20, { relative: 1e-12 });
          expect(plan.heating * ratedPower * 0.45).toBeNear(plan.heat, { relative: 1e-12 });
        },
      ),
    );
  });

  test('nothing in the oven takes no time and no burst', () => {
    expect(microwaveTime({ ...LOAD, bodies: [] })).toEqual({
      heat: 0,
      heating: 0,
      bursts: 0,
      elapsed: 0,
    });
  });

  test('bad figures are named', () => {
    const bad = (change: object) => errorText(() => microwaveTime({ ...LOAD, ...change }));
    expect(bad({ end: 20 })).toBe(
      'cook temperature must be greater than start temperature (23 °C), got 20 °C',
    );
    expect(bad({ ratedPower: 0 })).toBe('rated power must be greater than 0 W, got 0 W');
    expect(bad({ efficiency: 0 })).toBe('microwave efficiency must be greater than 0, got 0');
    expect(bad({ efficiency: 45 })).toBe('microwave efficiency must be at most 1, got 45');
    expect(bad({ burst: 0 })).toBe('burst must be greater than 0 s, got 0 s');
    expect(bad({ rest: -1 })).toBe('rest must be at least 0 s, got -1 s');
    expect(bad({ bodies: [{ mass: -1, specificHeat: 1 }] })).toBe(
      'mass must be at least 0 kg, got -1 kg',
    );
    expect(bad({ bodies: [{ mass: 1, specificHeat: 0 }] })).toBe(
      'specific heat must be greater than 0 J/kg·K, got 0 J/kg·K',
    );
    expect(errorText(() => absorbedPower(0, 60))).toBe(
      'heat taken up must be greater than 0 J, got 0 J',
    );
    expect(errorText(() => absorbedPower(100, 0))).toBe(
      'heating time must be greater than 0 s, got 0 s',
    );
  });
});

test('temperatures that are no numbers are named', () => {
  expect(errorText(() => microwaveTime({ ...LOAD, start: Number.NaN }))).toBe(
    'start temperature must be a number (°C), got not a number',
  );
  expect(errorText(() => microwaveTime({ ...LOAD, end: Number.NaN }))).toBe(
    'cook temperature must be a number (°C), got not a number',
  );
  expect(errorText(() => heatNeeded([], Number.NaN))).toBe(
    'temperature rise must be a number (°C), got not a number',
  );
});
