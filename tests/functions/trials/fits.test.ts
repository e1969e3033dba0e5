import { describe, expect, test } from 'vitest';
import { POUR_HEAT_CURVE } from '../../../shared/functions/heat/POUR_HEAT_CURVE.ts';
import { POUR_DROP_FIT } from '../../../shared/functions/trials/POUR_DROP_FIT.ts';
import { POUR_HEAT_FIT } from '../../../shared/functions/trials/POUR_HEAT_FIT.ts';
import { POUR_OVEN_FIT } from '../../../shared/functions/trials/POUR_OVEN_FIT.ts';
import { POUR_SET_FIT } from '../../../shared/functions/trials/POUR_SET_FIT.ts';
import { noContactText } from '../../../shared/trials/contact/contactRemarkText.ts';
import type { CellArgument } from '../../../src/functions/cellArgument.ts';
import { runFunction } from '../../../src/functions/runFunction.ts';

type Table = readonly (readonly (string | number)[])[];

function table(answer: unknown): Table {
  if (!Array.isArray(answer)) throw new Error(String(answer));
  return answer as Table; // rows of a spilled table
}

const BLOCK = [270, 6, 4, 1] as const;

/** The cells of a column. */
function column(range: CellArgument): readonly (string | number)[] {
  return table(range).map(([cell = '']) => cell);
}

/** A trial as the curve draws it, every three minutes for an hour. */
function trial(contact: number, heatLoss: number): { minutes: CellArgument; tops: CellArgument } {
  const rows = table(
    runFunction(POUR_HEAT_CURVE, [...BLOCK, contact, '', '', '', 60, 3, heatLoss]),
  ).slice(1);
  return {
    minutes: rows.map((row) => [row[0]]),
    tops: rows.map((row) => [row[1]]),
  };
}

describe('POUR_HEAT_FIT', () => {
  test.each([
    [60, 1],
    [140, 1.3],
    [500, 0.7],
  ])('a trial drawn with contact %d and heat loss %d gives them back', (contact, heatLoss) => {
    const { minutes, tops } = trial(contact, heatLoss);
    const answer = table(runFunction(POUR_HEAT_FIT, [minutes, tops, ...BLOCK]));
    expect(answer[0]).toEqual(['parameter', 'value', 'standard error', 'verdict']);
    expect(answer[1]?.[0]).toBe('contact conductance (W/m²·K)');
    // Courses are held to 1e-4 K.
    expect(answer[1]?.[1]).toBeNear(contact, { relative: 1e-3 });
    expect(answer[2]?.[1]).toBeNear(heatLoss, { relative: 1e-2 });
    expect(answer[2]?.[3]).toBe('from the readings');
  });

  test('two heatings told apart by number: one cold, one that starts warm by its reading at 0', () => {
    const { minutes, tops } = trial(100, 1);
    const cold = { minutes: column(minutes).slice(1, 8), tops: column(tops).slice(1, 8) };
    // The same curve from its fifth reading on, at 12 minutes.
    const warm = {
      minutes: column(minutes).slice(0, 7),
      tops: column(tops).slice(4, 11),
    };
    const both = [...cold.minutes, ...warm.minutes].map((one) => [one]);
    const all = [...cold.tops, ...warm.tops].map((one) => [one]);
    const numbers = both.map((_, index) => [index < 7 ? 7 : 3]);
    const told = table(runFunction(POUR_HEAT_FIT, [both, all, ...BLOCK, '', '', numbers]));
    // Where the warm one starts is read off a curve held to 1e-4 K.
    expect(told[1]?.[1]).toBeNear(100, { relative: 1e-3 });
    const mixed = table(runFunction(POUR_HEAT_FIT, [both, all, ...BLOCK]));
    expect(mixed[1]?.[1]).not.toBeNear(100, { relative: 0.1 });
  });

  test('a setting for each reading: two plates as warm as they were', () => {
    const one = trial(100, 1);
    const rows = table(runFunction(POUR_HEAT_CURVE, [300, 6, 4, 1, 100, '', '', '', 60, 3])).slice(
      1,
    );
    const minutes = [...column(one.minutes), ...rows.map((row) => row[0] ?? '')].map((x) => [x]);
    const tops = [...column(one.tops), ...rows.map((row) => row[1] ?? '')].map((x) => [x]);
    const settings = minutes.map((_, index) => [index < 21 ? 270 : 300]);
    const answer = table(runFunction(POUR_HEAT_FIT, [minutes, tops, settings, 6, 4, 1]));
    expect(answer[1]?.[1]).toBeNear(100, { relative: 1e-3 });
  });

  test('no fit is said in words', () => {
    const none = (minutes: CellArgument, tops: CellArgument) =>
      table(runFunction(POUR_HEAT_FIT, [minutes, tops, ...BLOCK])).slice(1);
    expect(none(3, 100)).toEqual([
      ['contact conductance (W/m²·K)', 'no fit', '', noContactText('fewer than two readings')],
    ]);
    expect(none([[3], [6]], [[300], [330]])[0]?.[3]).toBe(
      noContactText('tops hotter than any contact gives'),
    );
    expect(none([[60], [90]], [[72], [72]])[0]?.[3]).toBe(
      noContactText('tops colder than any contact gives'),
    );
  });

  test('a reading without its minute is named', () => {
    expect(runFunction(POUR_HEAT_FIT, [[[3], [6]], [[100]], ...BLOCK])).toBe(
      'mold tops must be 2 numbers, as many as minutes, got 1',
    );
    expect(runFunction(POUR_HEAT_FIT, [[[3], [6]], [[100], [2000]], ...BLOCK])).toBe(
      'mold top 2 must be at most 572 °F, got 2000 °F',
    );
  });

  test('the most readings there may be are fitted within a second', () => {
    const rows = Array.from({ length: 200 }, (_, index) => [index / 4]);
    const tops = rows.map(([minute = 0]) => [
      72 + 150 * (1 - Math.exp(-minute / 9)) + (minute % 2),
    ]);
    const start = performance.now();
    expect(table(runFunction(POUR_HEAT_FIT, [rows, tops, ...BLOCK]))).toHaveLength(3);
    expect(performance.now() - start).toBeLessThan(3000); // three for a busy machine
  });
});

describe('POUR_SET_FIT', () => {
  test.each([
    { seconds: [39.5], verdict: 'one puck: pour two more to see how they scatter' },
    { seconds: [39.5, 40, 39], verdict: 'good' },
    { seconds: [30, 60], verdict: 'weak: pour more pucks, and tilt more often' },
  ])('$seconds s: $verdict', ({ seconds, verdict }) => {
    const answer = table(
      runFunction(POUR_SET_FIT, [seconds.map((one) => [one]), 5, 3, 60, 165, 'metric']),
    );
    expect(answer[0]).toEqual(['parameter', 'value (°C)', 'standard error (°C)', 'verdict']);
    expect(answer[1]?.[0]).toBe('set temperature');
    expect(answer[1]?.[3]).toBe(verdict);
  });

  test('the error is a difference: 1 °C is 1.8 °F', () => {
    const metric = table(runFunction(POUR_SET_FIT, [39.5, 5, 3, 60, 165, 'metric']))[1];
    const us = table(runFunction(POUR_SET_FIT, [39.5, 5, 3 / 25.4, 140, 329]))[1];
    expect(us?.[2]).toBeNear(Number(metric?.[2]) * 1.8, { relative: 1e-9 });
  });
});

test('POUR_OVEN_FIT and POUR_DROP_FIT say what would tell more', () => {
  expect(table(runFunction(POUR_OVEN_FIT, [240, 22, 32, 20, 1000, '', 'metric']))[0]?.[2]).toBe(
    'known to ±29 % only: heat further from cold in one burst',
  );
  expect(table(runFunction(POUR_DROP_FIT, [0.15, 3, 1]))[0]?.[2]).toBe(
    'known to ±15 % only: count more drops',
  );
});
