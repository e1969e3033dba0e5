import { describe, expect, test } from 'vitest';
import { indexBook } from '../../../shared/book/bookIndex.ts';
import { POUR_BOND_FIT } from '../../../shared/functions/quality/POUR_BOND_FIT.ts';
import { bondCells } from '../../../shared/outcomes/bond/bondCells.ts';
import { bondJoints } from '../../../shared/outcomes/bond/bondJoints.ts';
import { bookCells } from '../../book/bookCells.ts';
import { DEMO, logOf, round } from '../demoRound.ts';

function found(...records: readonly ReturnType<typeof round>[]) {
  return bondJoints(indexBook(logOf(...records)));
}

describe('bondJoints', () => {
  test('each joint with its own test, its contact from the row’s own readings', () => {
    const { joints } = found(
      round({ tear12: 'tears through', tear23: 'peels clean' }),
      round({ moldTop: 70, gap12: 200, tear12: 'peels clean', tear23: 'peels clean' }),
    );
    expect(joints.map(({ row, below, tear }) => [row, below, tear])).toEqual([
      [2, 1, 'tears through'],
      [2, 2, 'peels clean'],
      [3, 1, 'peels clean'],
      [3, 2, 'peels clean'],
    ]);
    const [hot, , cold] = joints.map(({ contactTemperature }) => contactTemperature);
    // HEATSTUDY: at-temperature layers meet at 120 to 130 °C
    expect(hot).toBeGreaterThan(120);
    expect(hot).toBeLessThan(135);
    expect(cold).toBeLessThan((hot ?? 0) - 8);
  });

  test('a whole piece that tears through stands for every joint without a test of its own', () => {
    const { joints } = found(round({ tearTest: 'tears through', tear12: 'tears in part' }));
    expect(joints.map(({ tear }) => tear)).toEqual(['tears in part', 'tears through']);
  });

  test('a whole piece that peels says so of its coolest joint alone', () => {
    const { joints } = found(round({ gap23: 400, moldTop: 80, tearTest: 'peels clean' }));
    expect(joints).toHaveLength(1);
    const all = found(
      round({ gap23: 400, moldTop: 80, tear12: 'peels clean', tear23: 'peels clean' }),
    ).joints;
    const coolest = Math.min(...all.map(({ contactTemperature }) => contactTemperature));
    expect(joints[0]?.contactTemperature).toBe(coolest);
  });

  test('rows that cannot be used are named; two-piece molds are counted apart', () => {
    const { gap12: _, ...blank } = round({ tearTest: 'peels clean' });
    const { joints, leftOut, twoPiece } = found(
      blank,
      round({ mold: 'Gone', tearTest: 'tears through' }),
      round({
        order: '1004',
        mold: 'Split minnow 4 in',
        pattern: 'River stone',
        tearTest: 'tears through',
      }),
      round({ tearTest: 'not tested' }),
    );
    expect(joints).toEqual([]);
    expect(leftOut).toEqual([
      { row: 2, because: 'gap 1-2 must be given, got nothing' },
      { row: 3, because: 'mold must be listed in Molds, got "Gone"' },
    ]);
    expect(twoPiece).toBe(1);
  });

  test('a corrected row’s test counts nowhere', () => {
    const { joints } = found(
      round({ entry: 'a', tear12: 'peels clean' }),
      round({ entry: 'b', corrects: 'a', tear12: 'tears through' }),
    );
    expect(joints.map(({ row, tear }) => [row, tear])).toEqual([[3, 'tears through']]);
  });
});

describe('bondCells', () => {
  test('one line with the figure, its limits and a verdict; the invented shop bonds from about 120 °C', () => {
    const [headings, line = []] = bondCells(
      { ...DEMO, shop: { ...DEMO.shop, units: 'metric' } },
      'fit',
    );
    expect(headings).toEqual(['parameter', 'value (°C)', 'low (°C)', 'high (°C)', 'verdict']);
    const [name, value, low, high] = line;
    expect(name).toBe('bond temperature');
    // a demo figure: its rows were invented around 118 to 122 °C
    expect(value).toBeNear(120, { absolute: 3 });
    expect(Number(low)).toBeLessThan(Number(value));
    expect(Number(high)).toBeGreaterThan(Number(value));
  });

  test('where joints tell no figure, blanks and why', () => {
    const all = logOf(...Array.from({ length: 6 }, () => round({ tear12: 'tears through' })));
    const [, line = []] = bondCells(all, 'fit');
    expect(line.slice(0, 4)).toEqual(['bond temperature', '', '', '']);
    expect(line[4]).toMatch(
      /^all 6 joints bonded, so the bond temperature is likely below \d+ °F; how far below they do not tell, and the figure in use stays$/,
    );
    expect(bondCells(logOf(), 'fit')[1]?.[4]).toBe(
      '0 joints tell too little: it takes six, with two that held and two that gave way among them',
    );
  });

  test('one row a joint, then what was left out', () => {
    const { gap12: _, ...blank } = round({ tearTest: 'peels clean' });
    const cells = bondCells(logOf(round({ tear23: 'tears in part' }), blank), 'joints');
    expect(cells[0]).toEqual(['row', 'run', 'layers', 'contact temperature (°F)', 'tear test']);
    expect(cells[1]?.filter((_, place) => place !== 3)).toEqual([2, 'R-1', '2-3', 'tears in part']);
    expect(cells[2]).toEqual([3, '', '', '', 'left out: gap 1-2 must be given, got nothing']);
  });

  test('POUR_BOND_FIT gives the same from the cells of the sheets', () => {
    const book = logOf(round({ tear12: 'tears through' }), round({ tear12: 'peels clean' }));
    expect(POUR_BOND_FIT.compute(bookCells(book), { what: 'joints' }, 'US')).toEqual(
      bondCells(book, 'joints'),
    );
  });
});
