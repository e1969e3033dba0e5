import { describe, expect, test } from 'vitest';
import { headingOf, readHeading } from '../../../shared/book/reading/headingOf.ts';
import type { CellValue } from '../../../shared/book/reading/parseCell.ts';
import { readTable } from '../../../shared/book/reading/readTable.ts';
import { MOLDS } from '../../../shared/book/tables/molds.ts';
import { ORDERS } from '../../../shared/book/tables/orders.ts';
import { PATTERNS } from '../../../shared/book/tables/patterns.ts';
import { POUR_LOG } from '../../../shared/book/tables/pourLog.ts';
import { describe as sentence } from '../../../shared/errors/describe.ts';

type Cells = readonly (readonly CellValue[])[];

const MOLD_HEADINGS = Object.values(MOLDS.columns).map((column) => headingOf(column, 'US'));

function moldSheet(...rows: Readonly<Record<string, CellValue>>[]): Cells {
  return [MOLD_HEADINGS, ...rows.map((row) => MOLD_HEADINGS.map((heading) => row[heading] ?? ''))];
}

function problemsOf(read: ReturnType<typeof readTable>) {
  return read.problems.map(({ sheet, row, heading, error }) => ({
    sheet,
    row,
    heading,
    text: sentence(error),
  }));
}

describe('headings', () => {
  test('headingOf adds the unit of the system, and none where there is none', () => {
    expect(headingOf(MOLDS.columns.cavityVolume, 'US')).toBe('Cavity volume (fl oz)');
    expect(headingOf(MOLDS.columns.cavityVolume, 'metric')).toBe('Cavity volume (mL)');
    expect(headingOf(MOLDS.columns.cavities, 'US')).toBe('Cavities');
    expect(headingOf(PATTERNS.columns.share, 'US')).toBe('Share');
  });

  test('readHeading ignores case and blanks around the words', () => {
    expect(readHeading(MOLDS.columns.cavityVolume, '  cavity VOLUME ( mL )')).toBe('unreadable');
    expect(readHeading(MOLDS.columns.cavityVolume, '  cavity VOLUME (mL) ')).toEqual({
      unit: 'mL',
    });
  });

  test('readHeading tells another column from a unit of another kind', () => {
    expect(readHeading(MOLDS.columns.cavityVolume, 'Cavity width (in)')).toBeUndefined();
    expect(readHeading(MOLDS.columns.cavityVolume, 'Cavity volume (in)')).toBe('unreadable');
    expect(readHeading(MOLDS.columns.cavityVolume, 'Cavity volume')).toBe('unreadable');
  });
});

describe('readTable', () => {
  test('readTable gives engine units for the unit in the heading', () => {
    const { rows, problems } = readTable(
      MOLDS,
      moldSheet({ Mold: 'Bar', Kind: 'Open', Cavities: 8, 'Cavity volume (fl oz)': 1 }),
    );
    expect(problems).toEqual([]);
    expect(rows).toHaveLength(1);
    expect(rows[0]?.record).toMatchObject({ mold: 'Bar', kind: 'open', cavities: 8 });
    // HB44, Appendix C: 1 US fluid ounce is 29.573 529 562 5 mL by definition.
    expect(rows[0]?.record.cavityVolume).toBeNear(29.5735295625e-6, { relative: 1e-12 }); // exact factor, binary rounding
  });

  test('readTable follows a heading that the user gave another unit', () => {
    const metric: Cells = [
      ['Mold', 'Kind', 'Cavities', 'Cavity volume (mL)', 'Block length (mm)'],
      ['Bar', 'open', 8, 10, 25.4],
    ];
    const { rows } = readTable(MOLDS, metric);
    expect(rows[0]?.record.cavityVolume).toBeNear(10e-6, { relative: 1e-12 }); // exact factor, binary rounding
    expect(rows[0]?.record.blockLength).toBeNear(0.0254, { relative: 1e-12 }); // exact factor, binary rounding
  });

  test('readTable finds columns wherever they stand, and passes over unknown ones', () => {
    const cells: Cells = [
      ['Notes', 'My own', 'Cavities', 'Kind', 'Mold'],
      ['keep dry', 'x', 4, 'two-piece', 'Bar'],
    ];
    expect(readTable(MOLDS, cells).rows).toEqual([
      { row: 2, record: { mold: 'Bar', kind: 'two-piece', cavities: 4, notes: 'keep dry' } },
    ]);
  });

  test('readTable skips blank rows and keeps the numbers of the rows on the sheet', () => {
    const { rows } = readTable(MOLDS, moldSheet({}, { Mold: 'A' }, { Mold: '  ' }, { Mold: 'B' }));
    expect(rows.map(({ row, record }) => [row, record.mold])).toEqual([
      [3, 'A'],
      [5, 'B'],
    ]);
  });

  test('readTable lists each bad cell by sheet, row and heading, and keeps the rest of its row', () => {
    const read = readTable(
      MOLDS,
      moldSheet(
        { Mold: 'A', Kind: 'round', Cavities: 8 },
        { Mold: 'B', Kind: 'open', Cavities: 2.5, 'Cavity volume (fl oz)': -1 },
        { Mold: 'C', Kind: 'open', Cavities: 'eight', 'Block length (in)': '#REF!' },
        { Mold: 'D', Kind: 'open', Cavities: 4, 'Pour time per cavity (s)': 601 },
      ),
    );
    expect(problemsOf(read)).toEqual([
      {
        sheet: 'Molds',
        row: 2,
        heading: 'Kind',
        text: 'kind must be one of open, two-piece, got "round"',
      },
      {
        sheet: 'Molds',
        row: 3,
        heading: 'Cavities',
        text: 'cavities must be a whole number, got 2.5',
      },
      {
        sheet: 'Molds',
        row: 3,
        heading: 'Cavity volume',
        text: 'cavity volume must be greater than 0 fl oz, got -1 fl oz',
      },
      {
        sheet: 'Molds',
        row: 4,
        heading: 'Cavities',
        text: 'cavities must be a number, got "eight"',
      },
      {
        sheet: 'Molds',
        row: 4,
        heading: 'Block length',
        text: 'block length must be free of errors, got "#REF!"',
      },
      {
        sheet: 'Molds',
        row: 5,
        heading: 'Pour time per cavity',
        text: 'pour time per cavity must be at most 600 s, got 601 s',
      },
    ]);
    expect(read.rows.map(({ record }) => record)).toEqual([
      { mold: 'A', cavities: 8 },
      { mold: 'B', kind: 'open' },
      { mold: 'C', kind: 'open' },
      { mold: 'D', kind: 'open', cavities: 4 },
    ]);
  });

  test('readTable says bounds in the unit of the heading', () => {
    const cells: Cells = [
      ['Run', 'Mold top (°C)'],
      ['R-1', 301],
    ];
    const texts = problemsOf(readTable(POUR_LOG, cells)).map(({ text }) => text);
    expect(texts).toContain('mold top must be at most 300 °C, got 301 °C');
    const inF: Cells = [
      ['Run', 'Mold top (°F)'],
      ['R-1', 573],
    ];
    expect(problemsOf(readTable(POUR_LOG, inF)).map(({ text }) => text)).toContain(
      'mold top must be at most 572 °F, got 573 °F',
    );
  });

  test('readTable lists a column that is not there, and a heading whose unit is none of its own', () => {
    const cells: Cells = [
      MOLD_HEADINGS.filter((heading) => heading !== 'Owned').map((heading) =>
        heading === 'Block width (in)' ? 'Block width (oz)' : heading,
      ),
    ];
    expect(problemsOf(readTable(MOLDS, cells))).toEqual([
      {
        sheet: 'Molds',
        row: undefined,
        heading: 'Owned',
        text: 'the column Owned must be listed in Molds, got nothing',
      },
      {
        sheet: 'Molds',
        row: 1,
        heading: 'Block width',
        text: 'the heading Block width must be followed by its unit in parentheses, got "Block width (oz)"',
      },
    ]);
  });

  test('readTable reads per cent typed as text, and shares as fractions', () => {
    const cells: Cells = [
      ['Pattern', 'Version', 'Layer order', 'Layer', 'Share', 'Fill mark'],
      ['A', 1, 1, 'belly', '45 %', 0.4],
      ['A', 1, 2, 'back', 55, 1],
    ];
    const read = readTable(PATTERNS, cells);
    expect(read.rows[0]?.record.share).toBe(0.45);
    expect(problemsOf(read).map(({ text }) => text)).toContain('share must be at most 1, got 55');
  });

  test('readTable keeps days as text and clock times as minutes, and refuses what is neither', () => {
    const cells: Cells = [
      ['Order', 'Due', 'Pour on', 'First pour at'],
      ['7', '2026-12-01', '12/1/26', '9:30'],
      ['8', '2026-02-30', '', 'soon'],
    ];
    const read = readTable(ORDERS, cells);
    expect(read.rows[0]?.record).toEqual({ order: '7', due: '2026-12-01', firstPour: 570 });
    expect(problemsOf(read).filter(({ row }) => row !== undefined)).toEqual([
      {
        sheet: 'Orders',
        row: 2,
        heading: 'Pour on',
        text: 'pour on must be a date, got "12/1/26"',
      },
      { sheet: 'Orders', row: 3, heading: 'Due', text: 'due must be a date, got "2026-02-30"' },
      {
        sheet: 'Orders',
        row: 3,
        heading: 'First pour at',
        text: 'first pour at must be a time such as 9:30 or 1:15 pm, got "soon"',
      },
    ]);
  });

  test('readTable keeps text as text, also when it looks like a number or a formula', () => {
    const cells: Cells = [
      ['Order', 'Customer', 'Notes'],
      [1001, '  104 ', '=1+1'],
    ];
    expect(readTable(ORDERS, cells).rows[0]?.record).toEqual({
      order: '1001',
      customer: '104',
      notes: '=1+1',
    });
  });

  test('readTable of an empty sheet has no rows and names every column as missing', () => {
    const { rows, problems } = readTable(MOLDS, []);
    expect(rows).toEqual([]);
    expect(problems).toHaveLength(Object.keys(MOLDS.columns).length);
  });
});
