import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { heatRate, heatUsed, heatVerdict } from '../../shared/heat/heatUsed.ts';
import { evenReal } from '../evenReal.ts';
import { errorText } from './errorText.ts';

const hold = (celsius: number, seconds: number) => ({ from: celsius, to: celsius, seconds });

describe('heatRate at 150 kJ/mol (PVCAGEING; figures of HEATSTUDY)', () => {
  test.each([
    { celsius: 160, expected: 0.39, within: 0.005 },
    { celsius: 165, expected: 0.63, within: 0.005 },
    { celsius: 170, expected: 1, within: 1e-12 },
    { celsius: 175, expected: 1.6, within: 0.05 },
    { celsius: 180, expected: 2.5, within: 0.05 },
    { celsius: 185, expected: 3.8, within: 0.05 },
    { celsius: 190, expected: 5.8, within: 0.05 },
    { celsius: 200, expected: 13, within: 0.5 },
    { celsius: 210, expected: 29, within: 0.5 },
  ])('$celsius °C counts $expected times', ({ celsius, expected, within }) => {
    // Half a unit of the last printed digit.
    expect(heatRate(celsius)).toBeNear(expected, { absolute: within });
  });

  test('doubles every 7.7 K near 175 °C', () => {
    // Two figures.
    expect(heatRate(175 + 3.85) / heatRate(175 - 3.85)).toBeNear(2, { relative: 0.01 });
  });

  test.each([
    { celsius: 160, minutes: 154 },
    { celsius: 175, minutes: 38 },
    { celsius: 185, minutes: 16 },
    { celsius: 200, minutes: 4.5 },
  ])('the default budget of 60 min lasts $minutes min at $celsius °C', ({ celsius, minutes }) => {
    // Two or three figures.
    expect(60 / heatRate(celsius)).toBeNear(minutes, { relative: 0.02 });
  });
});

const stretches = fc.array(
  fc.record({
    from: fc.double({ min: 100, max: 200, noNaN: true }),
    to: fc.double({ min: 100, max: 200, noNaN: true }),
    seconds: evenReal(0, 1800),
  }),
  { maxLength: 6 },
);

describe('heatUsed', () => {
  test('a fresh cup has none, a minute at 170 °C is a minute', () => {
    expect(heatUsed([])).toBe(0);
    expect(heatUsed([hold(170, 60)])).toBe(60);
  });

  test('adds up: reheats and leftovers carry their history', () => {
    fc.assert(
      fc.property(stretches, stretches, (before, after) => {
        const whole = heatUsed([...before, ...after]);
        // Rounding only.
        expect(whole).toBeNear(heatUsed(before) + heatUsed(after), {
          absolute: 1e-8 * (1 + whole),
        });
      }),
    );
  });

  test('a ramp is the sum of short holds, up or down', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 60, max: 200, noNaN: true }),
        fc.double({ min: 60, max: 200, noNaN: true }),
        (from, to) => {
          const pieces = 2000;
          const holds = Array.from({ length: pieces }, (_, piece) =>
            hold(from + ((piece + 0.5) / pieces) * (to - from), 600 / pieces),
          );
          // Simpson over 5 K, midpoints over a two-thousandth of the ramp.
          expect(heatUsed([{ from, to, seconds: 600 }])).toBeNear(heatUsed(holds), {
            relative: 1e-4,
          });
          expect(heatUsed([{ from: to, to: from, seconds: 600 }])).toBeNear(heatUsed(holds), {
            relative: 1e-4,
          });
        },
      ),
      { numRuns: 30 },
    );
  });

  test('a higher activation energy counts heat above 170 °C for more and below it for less', () => {
    expect(heatUsed([hold(185, 60)], 170_000)).toBeGreaterThan(heatUsed([hold(185, 60)], 150_000));
    expect(heatUsed([hold(155, 60)], 170_000)).toBeLessThan(heatUsed([hold(155, 60)], 150_000));
  });
});

describe('heatVerdict', () => {
  test('within, over, and past the hard stop', () => {
    expect(heatVerdict([hold(170, 600)])).toEqual({
      kind: 'within budget',
      used: 600,
      left: 3000,
    });
    expect(heatVerdict([hold(170, 4000)])).toEqual({ kind: 'over budget', used: 4000, over: 400 });
    expect(heatVerdict([{ from: 20, to: 191, seconds: 1 }])).toMatchObject({
      kind: 'past the hard stop',
      hottest: 191,
    });
    expect(heatVerdict([])).toEqual({ kind: 'within budget', used: 0, left: 3600 });
  });

  test('the limits themselves are allowed', () => {
    expect(heatVerdict([hold(170, 3600)]).kind).toBe('within budget');
    expect(heatVerdict([hold(190, 1)]).kind).toBe('within budget');
  });

  test('the shop’s own limits count', () => {
    expect(heatVerdict([hold(170, 600)], { budget: 500 }).kind).toBe('over budget');
    expect(heatVerdict([hold(170, 600)], { hardStop: 169 }).kind).toBe('past the hard stop');
  });
});

test('bad figures are named', () => {
  expect(errorText(() => heatUsed([hold(170, -1)]))).toBe(
    'time at heat must be at least 0 s, got -1 s',
  );
  expect(errorText(() => heatRate(-274))).toBe(
    'temperature must be greater than -273.15 °C, got -274 °C',
  );
  expect(errorText(() => heatRate(170, 0))).toBe('activation energy must be greater than 0, got 0');
  expect(errorText(() => heatVerdict([], { budget: 0 }))).toBe(
    'heat budget must be greater than 0 s, got 0 s',
  );
  expect(errorText(() => heatVerdict([], { hardStop: Number.NaN }))).toBe(
    'hard stop must be a number (°C), got not a number',
  );
});
