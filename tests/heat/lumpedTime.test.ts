import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lumpedTemperature, lumpedTime } from '../../shared/heat/lumpedTime.ts';
import { biotNumber, timeConstant } from '../../shared/heat/timeConstant.ts';
import { evenReal } from '../evenReal.ts';
import { errorText } from './errorText.ts';

function seconds(result: ReturnType<typeof lumpedTime>): number {
  return result.kind === 'reached' ? result.seconds : Number.NaN;
}

describe('timeConstant and lumpedTime agree with worked examples', () => {
  test('thermocouple junction: diameter for 1 s, then 25 to 199 °C in gas at 200 °C (INCROPERA, Ex. 5.1)', () => {
    const diameter = 7.06e-4;
    const junction = {
      density: 8500,
      specificHeat: 400,
      volumeOverArea: diameter / 6,
      coefficient: 400,
    };
    // The book rounds the diameter to three figures.
    expect(timeConstant(junction)).toBeNear(1, { relative: 1e-3 });
    const time = lumpedTime({ start: 25, surroundings: 200, timeConstant: 1 }, 199);
    // Printed 5.2 s.
    expect(seconds(time)).toBeNear(5.2, { absolute: 0.05 });
  });

  test('1 mm junction: Biot number, rate and 99 % of a step (CENGEL, Ex. 4-1)', () => {
    const junction = {
      density: 8500,
      specificHeat: 320,
      volumeOverArea: 0.001 / 6,
      coefficient: 210,
    };
    // Printed 0.001, 0.462 1/s and 10 s; the book rounds V/A to 1.67e-4 m on the way.
    expect(biotNumber(junction, 35)).toBeNear(0.001, { absolute: 0.00005 });
    expect(1 / timeConstant(junction)).toBeNear(0.462, { absolute: 0.0015 });
    const time = lumpedTime(
      { start: 0, surroundings: 1, timeConstant: timeConstant(junction) },
      0.99,
    );
    expect(seconds(time)).toBeNear(10, { absolute: 0.5 });
  });

  test('1 mm bead has a time constant of 1.116 s (LIENHARD, Ex. 1.4)', () => {
    const bead = { density: 9300, specificHeat: 180, volumeOverArea: 0.001 / 6, coefficient: 250 };
    // Printed to four figures.
    expect(timeConstant(bead)).toBeNear(1.116, { absolute: 0.0005 });
  });

  test('5 cm steel ball cools from 450 to 150 °C in 5819 s (HOLMAN, Ex. 4-1)', () => {
    const ball = { density: 7800, specificHeat: 460, volumeOverArea: 0.05 / 6, coefficient: 10 };
    const step = { start: 450, surroundings: 100, timeConstant: timeConstant(ball) };
    // The book rounds the rate to 3.344e-4 1/s.
    expect(seconds(lumpedTime(step, 150))).toBeNear(5819, { absolute: 2 });
  });

  test('cylinder of water, 37 to 25 °C in 20 °C air, takes 12.2 h (CENGEL, Ex. 4-2)', () => {
    const [radius, length] = [0.15, 1.7];
    const volumeOverArea = (radius * length) / (2 * length + 2 * radius);
    const body = { density: 996, specificHeat: 4178, volumeOverArea, coefficient: 8 };
    // Printed 0.0689 m, 0.89, 2.79e-5 1/s, 12.2 h: half a unit of the last digit each.
    expect(volumeOverArea).toBeNear(0.0689, { absolute: 0.00005 });
    expect(biotNumber(body, 0.617)).toBeNear(0.89, { absolute: 0.005 });
    expect(1 / timeConstant(body)).toBeNear(2.79e-5, { absolute: 0.005e-5 });
    const step = { start: 37, surroundings: 20, timeConstant: timeConstant(body) };
    expect(seconds(lumpedTime(step, 25)) / 3600).toBeNear(12.2, { absolute: 0.05 });
  });

  test('coffee at 200 °F, 180 °F after 2 min in a 70 °F room: 175 °F at 2.56 min, 155 °F at 5.09 min (OPENSTAXCALCULUS)', () => {
    const tau = 2 / Math.log(130 / 110);
    const step = { start: 200, surroundings: 70, timeConstant: tau };
    // Half a unit of the last printed digit.
    expect(seconds(lumpedTime(step, 175))).toBeNear(2.56, { absolute: 0.005 });
    expect(seconds(lumpedTime(step, 155))).toBeNear(5.09, { absolute: 0.005 });
  });
});

const steps = fc.record({
  start: fc.integer({ min: -50, max: 200 }),
  surroundings: evenReal(-50, 200),
  timeConstant: fc.double({ min: 1, max: 5000, noNaN: true }),
});

describe('laws of lumped heating and cooling', () => {
  test('time to a temperature, then the temperature at that time, comes back', () => {
    fc.assert(
      fc.property(steps, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (step, share) => {
        fc.pre(Math.abs(step.start - step.surroundings) > 1);
        const target = step.start + share * (step.surroundings - step.start);
        const time = seconds(lumpedTime(step, target));
        // Rounding only.
        expect(lumpedTemperature(step, time)).toBeNear(target, { absolute: 1e-9 });
      }),
    );
  });

  test('one wait and then another is one long wait', () => {
    const waits = evenReal(0, 3000);
    fc.assert(
      fc.property(steps, waits, waits, (step, one, other) => {
        const halfway = lumpedTemperature(step, one);
        const end = lumpedTemperature({ ...step, start: halfway }, other);
        // Rounding only.
        expect(end).toBeNear(lumpedTemperature(step, one + other), { absolute: 1e-9 });
      }),
    );
  });

  test('the start, the surroundings and what lies beyond them', () => {
    const step = { start: 20, surroundings: 120, timeConstant: 600 };
    const short = { kind: 'unreachable', because: 'surroundings stop short of the target' };
    expect(lumpedTime(step, 20)).toEqual({ kind: 'reached', seconds: 0 });
    expect(lumpedTime(step, 10)).toEqual({ kind: 'reached', seconds: 0 });
    expect(lumpedTime(step, 120)).toEqual(short);
    expect(lumpedTime(step, 130)).toEqual(short);
    expect(lumpedTime({ ...step, start: 120 }, 119)).toEqual(short);
    expect(lumpedTemperature(step, 0)).toBe(20);
  });
});

test('bad figures are named', () => {
  const body = { density: 1, specificHeat: 1, volumeOverArea: 1, coefficient: 1 };
  expect(errorText(() => timeConstant({ ...body, density: 0 }))).toBe(
    'density must be greater than 0 kg/m³, got 0 kg/m³',
  );
  expect(errorText(() => timeConstant({ ...body, specificHeat: 0 }))).toBe(
    'specific heat must be greater than 0 J/kg·K, got 0 J/kg·K',
  );
  expect(errorText(() => timeConstant({ ...body, volumeOverArea: -1 }))).toBe(
    'volume over area must be greater than 0 m, got -1 m',
  );
  expect(errorText(() => timeConstant({ ...body, coefficient: 0 }))).toBe(
    'heat transfer coefficient must be greater than 0 W/m²·K, got 0 W/m²·K',
  );
  expect(errorText(() => biotNumber(body, 0))).toBe(
    'conductivity must be greater than 0 W/m·K, got 0 W/m·K',
  );
  const step = { start: 20, surroundings: 120, timeConstant: 600 };
  expect(errorText(() => lumpedTemperature(step, -1))).toBe('time must be at least 0 s, got -1 s');
  expect(errorText(() => lumpedTime({ ...step, timeConstant: 0 }, 100))).toBe(
    'time constant must be greater than 0 s, got 0 s',
  );
});

test('temperatures that are no numbers are named', () => {
  const step = { start: 20, surroundings: 120, timeConstant: 600 };
  expect(errorText(() => lumpedTime(step, Number.NaN))).toBe(
    'target temperature must be a number (°C), got not a number',
  );
  expect(errorText(() => lumpedTime({ ...step, start: Number.NaN }, 100))).toBe(
    'start temperature must be a number (°C), got not a number',
  );
  expect(errorText(() => lumpedTime({ ...step, surroundings: Number.NaN }, 100))).toBe(
    'surrounding temperature must be a number (°C), got not a number',
  );
});
