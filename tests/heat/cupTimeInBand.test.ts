import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  cavitiesPerHeating,
  cupSurface,
  cupTimeConstant,
  cupTimeInBand,
} from '../../shared/heat/cupTimeInBand.ts';
import { errorText } from './errorText.ts';

const ROOM = 22;
const cups = fc.record({
  mass: fc.double({ min: 0.03, max: 1, noNaN: true }),
  roomTemperature: fc.double({ min: 5, max: 40, noNaN: true }),
});

describe('cup cooling agrees with the study (HEATSTUDY)', () => {
  test.each([
    { grams: 60, tau: 19, to165: 1.3, to150: 3.4 },
    { grams: 240, tau: 30, to165: 2, to150: 5.4 },
    { grams: 480, tau: 37, to165: 2.5, to150: 6.6 },
  ])('$grams g: 175 to 165 °C in $to165 min', ({ grams, tau, to165, to150 }) => {
    const cup = { mass: grams / 1000, roomTemperature: ROOM };
    const minutes = (lowest: number) => {
      const time = cupTimeInBand(cup, 175, lowest);
      return time.kind === 'reached' ? time.seconds / 60 : Number.NaN;
    };
    // The study does not print its cup; ours is as deep as wide. 10 % is that and its rounding to 0.1 min.
    expect(cupTimeConstant(cup) / 60).toBeNear(tau, { relative: 0.1 });
    expect(minutes(165)).toBeNear(to165, { relative: 0.1 });
    expect(minutes(150)).toBeNear(to150, { relative: 0.1 });
  });
});

test('cupSurface: a cup 8 cm deep and wide holds 402 mL behind 251 cm2', () => {
  // pi/4 8^3 and 5/4 pi 8^2, by hand to three figures.
  expect(cupSurface((Math.PI / 4) * 0.08 ** 3)).toBeNear(0.0251, { absolute: 0.00005 });
});

describe('laws of the cup', () => {
  test('eight times as much cools half as fast', () => {
    fc.assert(
      fc.property(cups, (cup) => {
        const large = { ...cup, mass: 8 * cup.mass };
        // Volume by eight, surface by four: rounding only.
        expect(cupTimeConstant(large)).toBeNear(2 * cupTimeConstant(cup), { relative: 1e-12 });
      }),
    );
  });

  test('the band lasts as long as its two halves', () => {
    fc.assert(
      fc.property(cups, (cup) => {
        const time = (from: number, to: number) => {
          const result = cupTimeInBand(cup, from, to);
          return result.kind === 'reached' ? result.seconds : Number.NaN;
        };
        // Rounding only.
        expect(time(175, 170) + time(170, 160)).toBeNear(time(175, 160), { relative: 1e-9 });
      }),
    );
  });

  test('a heavier cup holds the band longer, a larger surface less', () => {
    const cup = { mass: 0.24, roomTemperature: ROOM, cupHeatCapacity: 45 };
    const plain = cupTimeConstant(cup);
    expect(cupTimeConstant({ ...cup, cupHeatCapacity: 90 })).toBeGreaterThan(plain);
    expect(cupTimeConstant({ ...cup, hotVolume: 0.0003 })).toBeLessThan(plain);
    // (0.24 x 1900 + 45) / (17 x 0.01782), by hand to three figures.
    expect(plain).toBeNear(1655, { absolute: 5 });
  });
});

test('a cup below its band has no time, one in a hot room never leaves it', () => {
  const cup = { mass: 0.24, roomTemperature: ROOM };
  expect(cupTimeInBand(cup, 160, 165)).toEqual({ kind: 'reached', seconds: 0 });
  expect(cupTimeInBand(cup, 175, 20).kind).toBe('unreachable');
});

test('cavitiesPerHeating counts whole pours', () => {
  expect(cavitiesPerHeating(120, 15)).toBe(8);
  expect(cavitiesPerHeating(119, 15)).toBe(7);
  expect(cavitiesPerHeating(10, 15)).toBe(0);
});

test('bad figures are named', () => {
  const cup = { mass: 0.24, roomTemperature: ROOM };
  expect(errorText(() => cupTimeConstant({ ...cup, mass: 0 }))).toBe(
    'plastisol in the cup must be greater than 0 kg, got 0 kg',
  );
  expect(errorText(() => cupTimeConstant({ ...cup, hotVolume: 0 }))).toBe(
    'cup volume must be greater than 0 m³, got 0 m³',
  );
  expect(errorText(() => cupTimeConstant({ ...cup, coefficient: 0 }))).toBe(
    'cup heat loss must be greater than 0 W/m²·K, got 0 W/m²·K',
  );
  expect(errorText(() => cupTimeConstant({ ...cup, specificHeat: 0 }))).toBe(
    'specific heat must be greater than 0 J/kg·K, got 0 J/kg·K',
  );
  expect(errorText(() => cupTimeConstant({ ...cup, cupHeatCapacity: -1 }))).toBe(
    'cup heat capacity must be at least 0, got -1',
  );
  expect(errorText(() => cupTimeInBand(cup, 20, 15))).toBe(
    'cup temperature must be greater than room temperature (22 °C), got 20 °C',
  );
  expect(errorText(() => cavitiesPerHeating(-1, 15))).toBe(
    'time in the pour band must be at least 0 s, got -1 s',
  );
  expect(errorText(() => cavitiesPerHeating(60, 0))).toBe(
    'pour time per cavity must be greater than 0 s, got 0 s',
  );
});

test('temperatures that are no numbers are named', () => {
  const cup = { mass: 0.24, roomTemperature: ROOM };
  expect(errorText(() => cupTimeInBand(cup, Number.NaN, 165))).toBe(
    'cup temperature must be a number (°C), got not a number',
  );
  expect(errorText(() => cupTimeInBand(cup, 175, Number.NaN))).toBe(
    'lowest pour temperature must be a number (°C), got not a number',
  );
  expect(errorText(() => cupTimeInBand({ ...cup, roomTemperature: Number.NaN }, 175, 165))).toBe(
    'room temperature must be a number (°C), got not a number',
  );
});
