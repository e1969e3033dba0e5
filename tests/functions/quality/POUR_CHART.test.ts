import { describe, expect, test } from 'vitest';
import { POUR_CHART } from '../../../shared/functions/quality/POUR_CHART.ts';
import type { CellArgument } from '../../../src/functions/cellArgument.ts';
import { runFunction } from '../../../src/functions/runFunction.ts';
import { HOSTILE } from '../../paper/hostile.ts';
import { logCells, shopCells } from './logCells.ts';

type Rows = Parameters<typeof logCells>[0];

const HEADINGS = ['Point', 'Poured', 'Bad', 'Share bad', 'Center', 'Lower', 'Upper', 'Signal'];

function shown(of: CellArgument, rows: Rows, [points, limits]: readonly CellArgument[] = []) {
  return runFunction(POUR_CHART, [of, points, limits, logCells(rows), shopCells()]);
}

/** Label, poured and bad of each point. */
function points(of: CellArgument, rows: Rows, choices: readonly CellArgument[] = []) {
  const table = shown(of, rows, choices);
  return Array.isArray(table) ? table.slice(1).map((row) => row.slice(0, 3)) : table;
}

/** Two runs in two molds: 3 bad of 20 and 4 bad of 20. */
const ROWS: Rows = [
  { round: 1, good: 9 },
  { run: 'R-2', round: 1, mold: 'Worm', pattern: 'Vein', good: 6 },
  { round: 2, good: 8 },
  { run: 'R-2', round: 2, mold: 'Worm', good: 10 },
];

describe('POUR_CHART', () => {
  test('all rounds: 7 bad of 40, limits three deviations of 10 pieces away and not below 0', () => {
    const upper = 0.175 + 3 * Math.sqrt((0.175 * 0.825) / 10);
    const row = (label: string, bad: number) => [
      ...[label, 10, bad, bad / 10, 0.175, 0],
      expect.toBeNear(upper, { relative: 1e-12 }),
      '',
    ];
    expect(shown('all', ROWS)).toEqual([
      HEADINGS,
      row('R-1 round 1', 1),
      row('R-2 round 1', 4),
      row('R-1 round 2', 2),
      row('R-2 round 2', 0),
    ]);
  });

  test('a mold or a pattern by its name takes its own rounds, whatever the case', () => {
    const line = [
      ['R-1 round 1', 10, 1],
      ['R-1 round 2', 10, 2],
    ];
    expect(points('STICK', ROWS)).toEqual(line);
    expect(points(' line', ROWS)).toEqual([...line, ['R-2 round 2', 10, 0]]);
    expect(points('ALL', ROWS)).toHaveLength(4);
  });

  test('one point for each run takes its rounds together', () => {
    expect(points('all', ROWS, ['runs'])).toEqual([
      ['R-1', 20, 3],
      ['R-2', 20, 4],
    ]);
  });

  test('limits may leave out the points beyond the first ones: 5 bad of 100 instead of 13 of 110', () => {
    const calm = Array.from({ length: 10 }, (_, index) => ({
      round: index + 1,
      good: index % 2 ? 10 : 9,
    }));
    const rows = [...calm, { round: 11, good: 2 }];
    const centers = (limits: string) => {
      const table = shown('all', rows, ['', limits]);
      return Array.isArray(table) ? [...new Set(table.slice(1).map((row) => row[4]))] : table;
    };
    expect(centers('')).toEqual([expect.toBeNear(13 / 110, { relative: 1e-12 })]);
    expect(centers('without points beyond a limit')).toEqual([0.05]);
  });

  test('an empty log, one round, a name without a round and ranges of blanks say what it needs', () => {
    const needs = (what: string) => [HEADINGS, [`needs two ${what}`, ...Array<string>(7).fill('')]];
    expect(shown('all', [])).toEqual(needs('rounds'));
    expect(shown('all', [{}], ['runs'])).toEqual(needs('runs'));
    expect(shown('Frog', ROWS)).toEqual(needs('rounds'));
    const blank = [['']];
    expect(runFunction(POUR_CHART, ['all', '', '', blank, blank])).toEqual(needs('rounds'));
  });

  test('a corrected row does not count', () => {
    const rows = [
      { round: 1, entry: 'e1', good: 0 },
      { round: 2 },
      { round: 1, entry: 'e2', corrects: 'e1', good: 8 },
    ];
    expect(points('all', rows)).toEqual([
      ['R-1 round 1', 10, 2],
      ['R-1 round 2', 10, 1],
    ]);
  });

  test.each(HOSTILE)('the name %j is found and comes back as text', (name) => {
    const rows = [1, 2].map((round) => ({ run: name, mold: name, round }));
    const label = name.trim();
    expect(points(name, rows)).toEqual([1, 2].map((round) => [`${label} round ${round}`, 10, 1]));
  });

  test.each([
    { of: '', choices: [], text: 'of must be given, got nothing' },
    { of: 'all', choices: ['days'], text: 'points must be one of rounds, runs, got "days"' },
    {
      of: 'all',
      choices: ['', 'none'],
      text: 'limits must be one of all points, without points beyond a limit, got "none"',
    },
  ])('$text', ({ of, choices, text }) => {
    expect(shown(of, ROWS, choices)).toBe(text);
  });
});
