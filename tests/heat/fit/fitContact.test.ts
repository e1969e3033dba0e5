import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { describe, expect, test } from 'vitest';
import type { ContactFit } from '../../../shared/heat/fit/contactFit.ts';
import { fitContact } from '../../../shared/heat/fit/fitContact.ts';
import { type HeatTrial, trialTops } from '../../../shared/heat/fit/heatTrial.ts';
import { errorText } from '../errorText.ts';

const INCH = 0.0254;
const PLATE = {
  kind: 'heated',
  setting: 132,
  watts: 1500,
  heatCapacity: 3000,
  lossConductance: 1.5,
  deadBand: 8,
} as const;
const TRIAL = {
  plate: PLATE,
  mold: { length: 6 * INCH, width: 4 * INCH, height: 1.25 * INCH },
  roomTemperature: 22,
} as const;
const OTHER = {
  plate: { ...PLATE, setting: 140 },
  mold: { length: 6 * INCH, width: 4 * INCH, height: INCH, finish: 'used' },
  roomTemperature: 18,
} as const;
/** Tops at these times for a contact of 130 W/m2K and 0.8 of the loss (SCIPYHEATUP). */
const TIMES = [300, 600, 900, 1200, 1800, 2700, 3600];
const TOPS = [49.7215, 80.2341, 97.2987, 106.7933, 114.9845, 117.9952, 118.506];

function readings(times: readonly number[], tops: readonly number[]): HeatTrial['readings'] {
  return times.map((seconds, index) => ({ seconds, top: tops[index] ?? Number.NaN }));
}

function fitted(fit: ContactFit) {
  if (fit.kind !== 'fitted') throw new Error(fit.because);
  return fit;
}

/** Scatter of a probe, the same every time: sums of twelve uniform numbers less 6. */
function scatter(first: number): () => number {
  let last = first;
  const uniform = () => {
    last = (last * 16_807) % 2_147_483_647;
    return last / 2_147_483_647;
  };
  return () => Array.from({ length: 12 }, uniform).reduce((sum, one) => sum + one, -6);
}

describe('readings from outside the engine (SCIPYHEATUP)', () => {
  test('contact and loss come back', () => {
    const fit = fitted(fitContact([{ ...TRIAL, readings: readings(TIMES, TOPS) }]));
    // Four decimals of a kelvin given.
    expect(fit.contact.value).toBeNear(130, { relative: 1e-4 });
    expect(fit.lossShare.value).toBeNear(0.8, { relative: 1e-4 });
    expect(fit.lossShare.from).toBe('readings');
    const [remark] = fit.remarks;
    if (remark?.kind !== 'contact and loss told apart') throw new Error('another remark');
    // More contact and more loss bend the curve alike, but not so much that they hide each other.
    expect(remark.correlation).toBeGreaterThan(0.5);
    expect(remark.correlation).toBeLessThan(0.75);
  });

  test('another mold, room, setting and finish', () => {
    const tops = [39.5223, 66.8117, 93.1217, 105.6312, 107.1395];
    const trial = { ...OTHER, readings: readings([300, 600, 1200, 2400, 3600], tops) };
    const fit = fitted(fitContact([trial]));
    // Four decimals of a kelvin given.
    expect(fit.contact.value).toBeNear(75, { relative: 1e-4 });
    expect(fit.lossShare.value).toBeNear(1.2, { relative: 1e-4 });
  });

  test('the library finds the same minimum in scattered readings (MLLM)', () => {
    const noise = scatter(7);
    const tops = TOPS.map((top) => top + noise());
    const fit = fitted(fitContact([{ ...TRIAL, readings: readings(TIMES, tops) }]));
    const { parameterValues } = levenbergMarquardt(
      { x: TIMES, y: tops },
      ([tens = 0, lossShare = 0]) =>
        (time) =>
          trialTops(TRIAL, [time], { contact: 10 * tens, lossShare })[0] ?? 0,
      // Scaled alike, because its damping is not.
      {
        initialValues: [10, 1],
        gradientDifference: 0.01,
        centralDifference: true,
        maxIterations: 25,
      },
    );
    // It stops by its count of steps.
    expect(fit.contact.value).toBeNear(10 * (parameterValues[0] ?? 0), { relative: 1e-4 });
    expect(fit.lossShare.value).toBeNear(parameterValues[1] ?? 0, { relative: 1e-4 });
  });
});

describe('scattered readings', () => {
  test('the true figures lie within two standard errors about nineteen times out of twenty', () => {
    const noise = scatter(2026);
    let inside = 0;
    const rounds = 30;
    for (let round = 0; round < rounds; round += 1) {
      const tops = TOPS.map((top) => top + 2 * noise());
      const { contact, lossShare } = fitted(
        fitContact([{ ...TRIAL, readings: readings(TIMES, tops) }]),
      );
      if (Math.abs(contact.value - 130) < 2 * contact.standardError) inside += 1;
      if (Math.abs(lossShare.value - 0.8) < 2 * lossShare.standardError) inside += 1;
    }
    // 95 % of 60 is 57, give or take 2; errors never below the probe's own make it more.
    expect(inside).toBeGreaterThanOrEqual(54);
    expect(inside).toBeLessThan(60);
  });

  test('two trials on one plate know more than one', () => {
    const one = fitted(fitContact([{ ...TRIAL, readings: readings(TIMES, TOPS) }]));
    const trial = { ...TRIAL, readings: readings(TIMES, TOPS) };
    const two = fitted(fitContact([trial, trial]));
    // Twice the readings: the square root of 2.
    expect(two.contact.standardError).toBeNear(one.contact.standardError / Math.SQRT2, {
      relative: 0.01,
    });
    expect(two.residuals).toHaveLength(14);
  });
});

describe('what the readings cannot tell', () => {
  const early = [600, 900, 1200];
  const few = { ...TRIAL, readings: readings(early, [80.2, 97.3, 106.8]) };

  test('three early readings: the loss is assumed, and one after 40 min would tell it', () => {
    const fit = fitted(fitContact([few]));
    expect(fit.lossShare).toEqual({ value: 1, standardError: 0.2, from: 'assumption' });
    // The assumed loss is a quarter too high: the contact makes up for it, and its error says so.
    expect(fit.contact.value).toBeGreaterThan(130);
    expect(Math.abs(fit.contact.value - 130)).toBeLessThan(fit.contact.standardError);
    expect(fit.remarks).toHaveLength(1);
    const [remark] = fit.remarks;
    if (remark?.kind !== 'contact not told from loss') throw new Error('another remark');
    expect(remark.readings).toBe(3);
    expect(remark.correlation ?? 0).toBeGreaterThan(0.85);
    expect(remark.add.seconds).toBe(2400);
    expect(remark.add.lossError).toBeLessThan(0.2);
  });

  test('with the reading it asked for the loss is told, and as well as it said', () => {
    const [top = 0] = trialTops(TRIAL, [2400], { contact: 130, lossShare: 0.8 });
    const asked = fitted(
      fitContact([{ ...few, readings: [...few.readings, { seconds: 2400, top }] }]),
    );
    expect(asked.lossShare.from).toBe('readings');
    const [remark] = fitted(fitContact([few])).remarks;
    const promised = remark?.kind === 'contact not told from loss' ? remark.add.lossError : 0;
    // Promised where the assumption put the curve, kept where the readings put it.
    expect(asked.lossShare.standardError).toBeNear(promised, { relative: 0.1 });
  });

  test('a better probe does not make the assumed loss better', () => {
    const { value, standardError } = fitted(fitContact([few], 1)).contact;
    expect(standardError).toBeGreaterThan(3);
    expect(Math.abs(value - 130)).toBeLessThan(2 * standardError);
  });

  test('a poor probe: not even the best reading is enough, and nobody is sent for the last of it', () => {
    const [remark] = fitted(fitContact([few], 6)).remarks;
    if (remark?.kind !== 'contact not told from loss') throw new Error('another remark');
    expect(remark.add.lossError).toBeGreaterThan(0.2);
    expect(remark.add.seconds).toBeGreaterThan(2400);
    expect(remark.add.seconds).toBeLessThan(6000);
  });

  test('a loss that is known from elsewhere is taken as it is where the readings cannot tell', () => {
    const fit = fitted(fitContact([few], 2, 0.8));
    expect(fit.lossShare).toEqual({ value: 0.8, standardError: 0.2, from: 'assumption' });
    // Made with 130 and 0.8, in tenths of a kelvin.
    expect(fit.contact.value).toBeNear(130, { relative: 2e-3 });
    const whole = [{ ...TRIAL, readings: readings(TIMES, TOPS) }];
    expect(fitContact(whole, 2, 0.5)).toEqual(fitContact(whole, 2, 1));
    expect(errorText(() => fitContact([few], 2, 0))).toBe(
      'heat loss must be greater than 0, got 0',
    );
  });

  test('two readings give a contact and no correlation', () => {
    const fit = fitted(fitContact([{ ...TRIAL, readings: few.readings.slice(0, 2) }]));
    expect(fit.remarks[0]).toMatchObject({
      kind: 'contact not told from loss',
      correlation: undefined,
    });
  });

  test('readings that scatter beyond the probe, and a contact hardly known', () => {
    const wild = readings(early, [60, 125, 90]);
    const fit = fitted(fitContact([{ ...TRIAL, readings: wild }]));
    const kinds = fit.remarks.map(({ kind }) => kind);
    expect(kinds).toContain('readings scatter more than the probe');
    const flat = readings([60, 90], [28, 29]);
    const first = fitted(
      fitContact([{ ...TRIAL, plate: { kind: 'held', setting: 132 }, readings: flat }], 8),
    );
    expect(first.remarks.map(({ kind }) => kind)).toContain('contact poorly known');
  });

  test.each([
    { tops: [133, 134, 135], because: 'tops hotter than any contact gives' },
    { tops: [22, 22, 22], because: 'tops colder than any contact gives' },
  ])('$because', ({ tops, because }) => {
    const trial = { ...TRIAL, readings: readings(early, tops) };
    expect(fitContact([trial])).toEqual({ kind: 'no fit', because });
  });

  test('fewer than two readings', () => {
    const none = { kind: 'no fit', because: 'fewer than two readings' };
    expect(fitContact([])).toEqual(none);
    expect(fitContact([{ ...TRIAL, readings: few.readings.slice(0, 1) }])).toEqual(none);
  });

  test('bad figures are named', () => {
    const bad = (seconds: number, top: number) =>
      errorText(() => fitContact([{ ...TRIAL, readings: [{ seconds, top }] }]));
    expect(bad(-1, 50)).toBe('time of a reading must be at least 0 s, got -1 s');
    expect(bad(60, 400)).toBe('mold top must be at most 300 °C, got 400 °C');
    expect(errorText(() => fitContact([], 0))).toBe(
      'error of a reading must be greater than 0 °C, got 0 °C',
    );
  });
});
