import { describe, expect, test } from 'vitest';
import { dropVolume } from '../../../shared/heat/fit/dropVolume.ts';
import { microwaveEfficiency } from '../../../shared/heat/fit/microwaveEfficiency.ts';
import { setTemperatureFromPucks } from '../../../shared/heat/fit/setTemperatureFromPucks.ts';
import { layerCooling, timeToFall } from '../../../shared/heat/layerCooling.ts';
import { errorText } from '../errorText.ts';

describe('setTemperatureFromPucks', () => {
  const puck = (moldTemperature: number, millimeters = 3) => ({
    thickness: millimeters / 1000,
    startTemperature: 158,
    moldTemperature,
  });
  const trial = (moldTemperature: number, setAt: number, interval = 5) => {
    const fall = timeToFall(layerCooling(puck(moldTemperature)), 'mean', setAt);
    const seconds = (fall.kind === 'seconds' ? fall.seconds : Number.NaN) + interval / 2;
    return { puck: puck(moldTemperature), seconds, interval };
  };

  test('a 3 mm puck on a mold at 60 °C that stops within the tilts around 37 s sets at 92 °C (HEATSTUDY)', () => {
    const { value } = setTemperatureFromPucks([{ puck: puck(60), seconds: 39.5, interval: 5 }]);
    // Whole seconds, at 1.5 K a second.
    expect(value).toBeNear(92, { absolute: 1 });
  });

  test('pucks on molds of three temperatures give back the one they set at', () => {
    const found = setTemperatureFromPucks([trial(49, 95), trial(60, 95), trial(71, 95)]);
    // The root's last digits.
    expect(found.value).toBeNear(95, { absolute: 1e-6 });
    expect(found.each).toHaveLength(3);
    // Only the tilts leave something open: 5 s, over sqrt(12), at 0.6 to 1.5 K a second, over sqrt(3).
    expect(found.standardError).toBeGreaterThan(0.5);
    expect(found.standardError).toBeLessThan(1.3);
  });

  test('pucks that disagree say so: mean and error of 90, 92, 97', () => {
    const pucks = [90, 92, 97].map((setAt) => trial(60, setAt, 0.5));
    const found = setTemperatureFromPucks(pucks);
    expect(found.value).toBeNear(93, { absolute: 1e-6 });
    // Sample deviation sqrt(13), over sqrt(3), by hand.
    expect(found.standardError).toBeNear(Math.sqrt(13 / 3), { relative: 1e-6 });
  });

  test('closer tilts leave less open', () => {
    const at = (interval: number) =>
      setTemperatureFromPucks([trial(60, 92, interval)]).standardError;
    // In proportion while the cooling is nearly straight.
    expect(at(1)).toBeNear(at(2) / 2, { relative: 0.01 });
  });

  test('bad figures are named', () => {
    expect(errorText(() => setTemperatureFromPucks([]))).toBe(
      'puck trials must be at least 1, got 0',
    );
    const early = { puck: puck(60), seconds: 5, interval: 5 };
    expect(errorText(() => setTemperatureFromPucks([early]))).toBe(
      'time until a puck set must be greater than 5 s, got 5 s',
    );
  });
});

describe('microwaveEfficiency', () => {
  const MINUTE = {
    bodies: [{ mass: 1, specificHeat: 4187 }],
    start: 10,
    end: 20,
    seconds: 60,
    ratedPower: 700,
    temperatureError: 0.5,
    timeError: 0,
    massShareError: 0,
  };

  test('a liter of water that warms by 10 K in a minute takes up 700 W (IEC60705)', () => {
    const found = microwaveEfficiency({ ...MINUTE, ratedPower: 1000 });
    // Two figures printed: 60 s for 59.8.
    expect(found.value).toBeNear(0.7, { relative: 5e-3 });
  });

  test('250 g of water from 20 to 100 °C in 105 s take up 797 W (GIANCOLI)', () => {
    const bodies = [{ mass: 0.25, specificHeat: 4186 }];
    const found = microwaveEfficiency({
      ...MINUTE,
      bodies,
      start: 20,
      end: 100,
      seconds: 105,
      ratedPower: 1000,
    });
    // Four figures recomputed.
    expect(found.value).toBeNear(0.7973, { relative: 1e-4 });
  });

  test('errors add by squares: 5 % of the rise, 2 % of the time, 1 % of the mass', () => {
    const trial = { ...MINUTE, ratedPower: 1000, timeError: 1.2, massShareError: 0.01 };
    const { value, standardError } = microwaveEfficiency(trial);
    // sqrt(2 x 0.05^2 + 0.02^2 + 0.01^2), by hand.
    expect(standardError / value).toBeNear(0.0741619848709566, { relative: 1e-9 });
  });

  test('bad figures are named', () => {
    const bad = (change: object) => errorText(() => microwaveEfficiency({ ...MINUTE, ...change }));
    expect(bad({ end: 10 })).toBe(
      'end temperature must be greater than start temperature (10 °C), got 10 °C',
    );
    expect(bad({ ratedPower: 500 })).toMatch(/^microwave efficiency must be at most 1, got 1\.39/);
    expect(bad({ seconds: 0 })).toBe('heating time must be greater than 0 s, got 0 s');
    expect(bad({ temperatureError: 0 })).toBe(
      'error of a reading must be greater than 0 °C, got 0 °C',
    );
  });
});

describe('dropVolume', () => {
  const FIFTY = { drops: 50, mass: 0.0025, density: 1000, scaleError: 0.00001, dropSpread: 0.1 };

  test('twenty metric drops make a milliliter (GNUUNITS)', () => {
    const { value } = dropVolume({ ...FIFTY, drops: 20, mass: 0.001 });
    // Exact by definition.
    expect(value).toBeNear(5e-8, { relative: 1e-12 });
  });

  test('fifty drops that differ by a tenth give their mean to 1.5 %', () => {
    const { value, standardError } = dropVolume(FIFTY);
    // sqrt(0.004^2 + 0.1^2 / 50), by hand.
    expect(standardError / value).toBeNear(0.0146969384566991, { relative: 1e-9 });
  });

  test('bad figures are named', () => {
    const bad = (change: object) => errorText(() => dropVolume({ ...FIFTY, ...change }));
    expect(bad({ drops: 2.5 })).toBe('drops must be a whole number, got 2.5');
    expect(bad({ mass: 0 })).toBe('mass of the drops must be greater than 0 kg, got 0 kg');
    expect(bad({ scaleError: 0 })).toBe('error of the scale must be greater than 0 kg, got 0 kg');
  });
});
