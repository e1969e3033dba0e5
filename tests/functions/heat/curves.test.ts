import { describe, expect, test } from 'vitest';
import { POUR_HEAT_CURVE } from '../../../shared/functions/heat/POUR_HEAT_CURVE.ts';
import { POUR_LAYER_CURVE } from '../../../shared/functions/heat/POUR_LAYER_CURVE.ts';
import { POUR_PREHEAT } from '../../../shared/functions/heat/POUR_PREHEAT.ts';
import { POUR_WINDOW } from '../../../shared/functions/heat/POUR_WINDOW.ts';
import type { CellArgument } from '../../../src/functions/cellArgument.ts';
import { runFunction } from '../../../src/functions/runFunction.ts';

type Table = readonly (readonly (string | number)[])[];

function table(answer: unknown): Table {
  if (!Array.isArray(answer)) throw new Error(String(answer));
  return answer as Table; // rows of a spilled table
}

const BLOCK = [270, 6, 4, 1] as const;

describe('POUR_HEAT_CURVE', () => {
  test.each([0, 5])('passes a target when POUR_PREHEAT says, warm-up %d min', (warmUp) => {
    const minutes = Number(runFunction(POUR_PREHEAT, [200, ...BLOCK, '', '', '', warmUp]));
    const answer = table(
      runFunction(POUR_HEAT_CURVE, [...BLOCK, '', '', '', warmUp, minutes, minutes]),
    );
    expect(answer[0]).toEqual(['time (min)', 'mold top (°F)']);
    // Two ways of following one balance: 0.1 % of the time, at up to 8 °F a minute.
    expect(answer[2]?.[1]).toBeNear(200, { absolute: 0.1 });
  });

  test('half an hour by the minute when nothing is said; a lid’s share of the loss is hotter', () => {
    const usual = table(runFunction(POUR_HEAT_CURVE, BLOCK));
    expect(usual).toHaveLength(32);
    const lid = table(runFunction(POUR_HEAT_CURVE, [...BLOCK, '', '', '', '', '', '', 0.5]));
    expect(Number(lid[31]?.[1])).toBeGreaterThan(Number(usual[31]?.[1]) + 5);
  });

  test('500 rows and no more', () => {
    const rows = (between: number) =>
      runFunction(POUR_HEAT_CURVE, [...BLOCK, '', '', '', '', 499, between]);
    expect(table(rows(1))).toHaveLength(501);
    expect(rows(0.5)).toBe('minutes between rows must be at least 1 min, got 0.5 min');
  });

  test('a plate colder than its room is named in the user’s unit', () => {
    expect(runFunction(POUR_HEAT_CURVE, [60, 6, 4, 1])).toBe(
      'plate setting must be greater than room temperature (71.6 °F), got 60 °F',
    );
    const metric = [15, 150, 100, 25, '', '', '', '', '', '', '', 'metric'];
    expect(runFunction(POUR_HEAT_CURVE, metric)).toBe(
      'plate setting must be greater than room temperature (22 °C), got 15 °C',
    );
  });
});

describe('POUR_LAYER_CURVE', () => {
  const column = (...cells: readonly number[]): CellArgument => cells.map((cell) => [cell]);

  test('mean and surface of each layer, blank until it is poured', () => {
    const answer = table(
      runFunction(POUR_LAYER_CURVE, [column(3, 3), 60, 165, 60, '', '', 3, 0.5, 'metric']),
    );
    expect(answer[0]).toEqual([
      'time (min)',
      'layer 1 mean (°C)',
      'layer 1 surface (°C)',
      'layer 2 mean (°C)',
      'layer 2 surface (°C)',
    ]);
    expect(answer[2]?.slice(3)).toEqual(['', '']);
    expect(answer[3]?.slice(3)).toEqual([158, expect.toBeNear(157, { absolute: 0.5 })]);
  });

  test('its mean passes the set temperature at the open time of POUR_WINDOW', () => {
    const window = table(
      runFunction(POUR_WINDOW, [column(3, 3), 60, 165, 60, '', '', '', 'metric']),
    );
    const open = Number(window[2]?.[2]);
    const minutes = (60 + open) / 60;
    const answer = table(
      runFunction(POUR_LAYER_CURVE, [
        column(3, 3),
        60,
        165,
        60,
        '',
        '',
        minutes,
        minutes,
        'metric',
      ]),
    );
    expect(answer[2]?.[3]).toBeNear(92, { absolute: 0.2 });
  });

  test('a curve may go on past the 20 minutes of the windows', () => {
    const answer = table(
      runFunction(POUR_LAYER_CURVE, [3, 100, 165, '', '', '', 120, 60, 'metric']),
    );
    expect(answer[3]?.[1]).toBeNear(93.6, { absolute: 0.2 });
  });

  test('a layer that is never poured says why, once', () => {
    const answer = table(
      runFunction(POUR_LAYER_CURVE, [column(3, 3), 140, 165, '', '', '', 1, 0.5, 'metric']),
    );
    expect(answer[1]?.[3]).toBe(
      'not poured: layer 1 never gets firm; give the gaps, or a cooler mold',
    );
    expect(answer.slice(2).map((row) => row.slice(3))).toEqual([
      ['', ''],
      ['', ''],
    ]);
  });
});
