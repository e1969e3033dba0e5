import { describe, expect, test } from 'vitest';
import { POUR_YIELD_TABLE } from '../../../shared/functions/quality/POUR_YIELD_TABLE.ts';
import { YIELD_BY } from '../../../shared/outcomes/yields/yieldGroups.ts';
import type { CellArgument } from '../../../src/functions/cellArgument.ts';
import { runFunction } from '../../../src/functions/runFunction.ts';
import { HOSTILE } from '../../paper/hostile.ts';
import { logCells, shopCells } from './logCells.ts';

const SHOP = shopCells({ 'Yield before any record': 0.5, 'Weight of that yield': 2 });

function shown(by: CellArgument, rows: Parameters<typeof logCells>[0], shop = SHOP) {
  return runFunction(POUR_YIELD_TABLE, [by, logCells(rows), shop]);
}

function names(by: CellArgument, rows: Parameters<typeof logCells>[0]) {
  const table = shown(by, rows);
  return Array.isArray(table) ? table.map(([name]) => name) : table;
}

describe('POUR_YIELD_TABLE', () => {
  test('reads log and shop as a cell hands them over: 9 of 10 beside the shop’s own 1 of 2', () => {
    const table = shown('mold', [{}, { mold: 'Worm', good: 4 }]);
    // (good + 1) / (poured + 2)
    const near = (value: number) => expect.toBeNear(value, { relative: 1e-9 }); // twelve digits are shown
    expect(table).toMatchObject(
      [
        ['Mold', 'Rounds', 'Poured', 'Good', 'Yield'],
        ['Worm', 1, 10, 4, 0.4],
        ['Stick', 1, 10, 9, 0.9],
        ['all', 2, 20, 13, 0.65],
        ['nothing logged yet'],
      ].map((row) => expect.arrayContaining(row)),
    );
    const expected = Array.isArray(table) ? table.slice(1, 3).map((row) => row[7]) : [];
    expect(expected).toEqual([near(5 / 12), near(10 / 12)]);
  });

  test.each([
    { by: 'pattern', first: ['Pattern', 'Line'] },
    { by: 'mold and pattern', first: ['Mold and pattern', 'Stick, Line'] },
    { by: 'layers', first: ['Layers', '2'] },
    { by: 'person', first: ['Person', 'AK'] },
    { by: 'mold top', first: ['Mold top', '200 to 220 °F'] },
    { by: 'month', first: ['Month', '2026-11'] },
    { by: 'MOLD', first: ['Mold', 'Stick'] },
    { by: '', first: ['Mold', 'Stick'] },
  ])('sorts by $by', ({ by, first }) => {
    const row = { pour2: 330, who: 'AK', moldTop: 210, loggedAt: '2026-11-30 09:00' };
    expect(names(by, [row])).toEqual([...first, 'all', 'nothing logged yet']);
  });

  test('bands of the mold top follow the shop’s units', () => {
    const table = shown('mold top', [{ moldTop: 212 }], shopCells({ Units: 'metric' }));
    expect(table).toContainEqual(expect.arrayContaining(['100 to 110 °C']));
  });

  test('an empty log, and ranges of blanks, say that nothing is logged yet', () => {
    const blank = [['']];
    for (const table of [shown('mold', []), runFunction(POUR_YIELD_TABLE, ['mold', blank, blank])])
      expect(table).toContainEqual(expect.arrayContaining(['nothing is logged yet']));
  });

  test('a corrected row does not count', () => {
    const rows = [
      { entry: 'e1', good: 0 },
      { entry: 'e2', corrects: 'e1', good: 8 },
    ];
    expect(shown('mold', rows)).toContainEqual(expect.arrayContaining(['Stick', 1, 10, 8]));
  });

  test.each(HOSTILE)('the name %j comes back as text', (mold) => {
    expect(names('mold', [{ mold }])).toContain(mold.trim());
  });

  test('a wrong sorting and a range that is none are refused in one sentence', () => {
    expect(shown('day', [])).toBe(`by must be one of ${YIELD_BY.join(', ')}, got "day"`);
    expect(runFunction(POUR_YIELD_TABLE, ['mold', 5, SHOP])).toBe(
      'pour log must be a range of the sheet Pour log with its heading row, got 5',
    );
  });
});
