import { describe, expect, test } from 'vitest';
import { yieldCells } from '../../../shared/outcomes/yields/yieldCells.ts';
import { YIELD_BY, type YieldBy } from '../../../shared/outcomes/yields/yieldGroups.ts';
import { logBook } from '../../log/logBook.ts';

type LogRow = Readonly<Record<string, string | number>>;

const SOUND = { run: 'R-1', order: '1', mold: 'Stick', pattern: 'Line', poured: 10, good: 9 };

const HEADINGS = [
  ...['Rounds', 'Poured', 'Good', 'Yield', 'Low', 'High'],
  ...['Expected', 'Expected low', 'Expected high', 'Note'],
];

/** The shop assumes one good and one bad piece, so that what is expected has intervals by hand. */
function cells(by: YieldBy, rows: readonly LogRow[]) {
  const { pourLog, shop } = logBook({ pourLog: rows.map((row) => ({ ...SOUND, ...row })) });
  return yieldCells({ pourLog, shop: { ...shop, expectedYield: 0.5, yieldWeight: 2 } }, by);
}

const near = (value: number) => expect.toBeNear(value, { relative: 1e-9 }); // digits of the quantiles

const ASSUMED = [
  ...['nothing logged yet', '', '', '', '', '', '', 0.5, near(0.025), near(0.975)],
  'the shop’s assumption: fewer than five groups do not show how they differ; counts as 2 pieces',
];

describe('yieldCells', () => {
  test('an empty log says so and shows what the shop assumes', () => {
    expect(cells('mold', [])).toEqual([
      ['Mold', ...HEADINGS],
      [...Array<string>(10).fill(''), 'nothing is logged yet'],
      ASSUMED,
    ]);
  });

  test('4 of 4 of one round: Wilson 0.5101 to 1, expected 5/6 between 0.025^(1/5) and 0.975^(1/5)', () => {
    const z2 = 1.959963984540054 ** 2;
    const low = near(4 / (4 + z2)); // the Wilson interval of all good, by hand
    const expected = [5 / 6, 0.025 ** (1 / 5), 0.975 ** (1 / 5)].map(near);
    expect(cells('mold', [{ poured: 4, good: 4 }])).toEqual([
      ['Mold', ...HEADINGS],
      ['Stick', 1, 4, 4, 1, low, 1, ...expected, ''],
      ['all', 1, 4, 4, 1, low, 1, '', '', '', ''],
      ASSUMED,
    ]);
  });

  test('a name that loses most comes first by what is expected of it, not by its own share', () => {
    const rows = [
      { mold: 'Frog', poured: 1, good: 0 },
      { mold: 'Stick', poured: 98, good: 89 },
      { mold: 'Worm', poured: 98, good: 9 },
    ];
    // (good + 1) / (poured + 2)
    expect(cells('mold', rows).map(([name, , , , , , , expected]) => [name, expected])).toEqual([
      ['Mold', 'Expected'],
      ['Worm', 0.1],
      ['Frog', near(1 / 3)],
      ['Stick', 0.9],
      ['all', ''],
      ['nothing logged yet', 0.5],
    ]);
  });

  test.each([
    { by: 'layers', rows: [{ pour2: 330, good: 0 }, { pour1: 330 }], first: ['1', '2'] },
    {
      by: 'mold top',
      rows: [{ moldTop: 230, good: 0 }, { moldTop: 90 }],
      first: ['80 to 100 °F', '220 to 240 °F'],
    },
    {
      by: 'month',
      rows: [{ loggedAt: '2026-11-02', good: 0 }, { loggedAt: '2026-10-30' }],
      first: ['2026-10', '2026-11'],
    },
  ] as const)('by $by the lines keep their own order', ({ by, rows, first }) => {
    expect(
      cells(by, rows)
        .slice(1, 3)
        .map(([name]) => name),
    ).toEqual(first);
  });

  test('all together are the sums, with the Wilson interval of NEWCOMBE1998: 81 of 263', () => {
    const rows = [
      { mold: 'Worm', poured: 200, good: 70 },
      { poured: 63, good: 11 },
    ];
    const all = cells('mold', rows).find(([name]) => name === 'all');
    expect(all?.slice(1, 4)).toEqual([2, 263, 81]);
    // half a unit of the last printed digit
    expect(all?.[5]).toBeNear(0.2553, { absolute: 5e-5 });
    expect(all?.[6]).toBeNear(0.3662, { absolute: 5e-5 });
  });

  test('a corrected row counts once', () => {
    const rows = [
      { entry: 'e1', good: 0 },
      { entry: 'e2', corrects: 'e1', good: 8 },
    ];
    expect(cells('mold', rows)[1]?.slice(0, 5)).toEqual(['Stick', 1, 10, 8, 0.8]);
  });

  test('rows that do not say read not given, rows that cannot be true are named below', () => {
    const found = cells('person', [{}, { who: 'AK', good: 11 }, { good: '' }]);
    expect(found.map(([name]) => name)).toEqual([
      ...['Person', 'not given', 'all', 'nothing logged yet', ''],
    ]);
    expect(found[4]?.[10]).toBe(
      'not counted, Pour log rows 3, 4: poured and good must both be given, good no more than poured',
    );
  });

  test('of many such rows the first twenty are named and the others counted', () => {
    const found = cells(
      'mold',
      Array.from({ length: 23 }, () => ({ good: 11 })),
    );
    expect(found[found.length - 1]?.[10]).toMatch(
      /^not counted, Pour log rows 2, .*, 21 and 3 more: /,
    );
  });

  test('from five groups on the last line says what the record settles', () => {
    const molds = (...good: readonly number[]) =>
      good.map((count, index) => ({ mold: `Mold ${index}`, poured: 200, good: count }));
    const note = (rows: readonly LogRow[]) =>
      cells('mold', rows)
        .map((row) => row[10])
        .pop();
    expect(note(molds(20, 60, 100, 140, 180, 190))).toMatch(
      /^from the 6 groups above; counts as [\d.]+ pieces?$/,
    );
    expect(note(molds(180, 180, 180, 180, 180))).toMatch(
      /^from the 5 groups above; counts as [\d.]+ pieces, which these groups hardly settle$/,
    );
    expect(note(molds(200, 200, 200, 200, 200))).toBe(
      'the shop’s assumption: not one piece was bad; counts as 2 pieces',
    );
    expect(note(molds(0, 0, 0, 0, 0))).toBe(
      'the shop’s assumption: not one piece was good; counts as 2 pieces',
    );
  });

  test.each(YIELD_BY)(
    'by %s every row is as wide as the headings, of texts and finite numbers',
    (by) => {
      const rows = [{ moldTop: 200, pour1: 330, who: 'AK' }, { good: 0, poured: 1 }, { good: 20 }];
      for (const row of cells(by, rows)) {
        expect(row).toHaveLength(11);
        for (const cell of row)
          expect(typeof cell === 'string' || Number.isFinite(cell), String(cell)).toBe(true);
      }
    },
  );
});
