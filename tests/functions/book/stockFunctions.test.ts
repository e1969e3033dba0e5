import { describe, expect, test } from 'vitest';
import type { MoneyBook } from '../../../shared/book/book.ts';
import type { Table } from '../../../shared/book/column.ts';
import { tableCells } from '../../../shared/book/layout/tableCells.ts';
import { findColumns } from '../../../shared/book/reading/findColumns.ts';
import { headingOf } from '../../../shared/book/reading/headingOf.ts';
import type { CellValue } from '../../../shared/book/reading/parseCell.ts';
import type { Row } from '../../../shared/book/reading/readTable.ts';
import { TABLES } from '../../../shared/book/tables.ts';
import { POUR_LOTS } from '../../../shared/functions/book/POUR_LOTS.ts';
import { POUR_SHORT } from '../../../shared/functions/book/POUR_SHORT.ts';
import { POUR_STOCK } from '../../../shared/functions/book/POUR_STOCK.ts';
import { stockSummary } from '../../../shared/money/stock/stockSummary.ts';
import type { CellArgument } from '../../../src/functions/cellArgument.ts';
import { runFunction } from '../../../src/functions/runFunction.ts';
import { bookCells } from '../../book/bookCells.ts';
import { demoMoneyBook } from '../../money/stock/demoMoneyBook.ts';
import { HOSTILE } from '../../paper/hostile.ts';

const BOOK = demoMoneyBook();

function sheetOf<T extends Table>(table: T, rows: readonly Row<T>[]): CellValue[][] {
  const headings = Object.values(table.columns)
    .filter(({ kind }) => kind !== 'computed')
    .map((column) => headingOf(column, 'US'));
  const { places } = findColumns(table, headings);
  const records = rows.map(({ record }) => record);
  return [headings, ...tableCells<T>(records, places, headings.length, 'US')];
}

/** The demo shop's sheets as the functions get them. */
function cellsOf(book: MoneyBook = BOOK) {
  return {
    ...bookCells(book),
    supplies: sheetOf(TABLES.supplies, book.supplies),
    stockMoves: sheetOf(TABLES.stockMoves, book.stockMoves),
  };
}

function stock(show: string, book: MoneyBook = BOOK) {
  const { stockMoves, materials, shop } = cellsOf(book);
  return rows(runFunction(POUR_STOCK, [show, stockMoves, materials, shop]));
}

function short(which: CellArgument, book: MoneyBook = BOOK) {
  const cells: Record<string, CellValue[][]> = cellsOf(book) as never; // the same sheets, as cells
  const keys = Object.keys(POUR_SHORT.params).filter((key) => key !== 'which');
  return rows(runFunction(POUR_SHORT, [...keys.map((key) => cells[key]), which]));
}

function lots(name: CellArgument) {
  const { stockMoves, materials } = cellsOf();
  return rows(runFunction(POUR_LOTS, [name, stockMoves, materials as CellValue[][]]));
}

function rows(answer: ReturnType<typeof runFunction>): readonly (readonly (string | number)[])[] {
  if (typeof answer !== 'object') throw new Error(String(answer));
  return answer as readonly (readonly (string | number)[])[]; // a table, as checked
}

describe('POUR_STOCK', () => {
  test('lists what is on hand with the value that the panel shows', () => {
    const [headings, ...lines] = stock('');
    expect(headings).toEqual([
      'Material',
      'On hand',
      'Unit',
      'Value (USD)',
      'Average (USD)',
      'Note',
    ]);
    const shown = stockSummary(BOOK);
    expect(lines.map(([material]) => material)).toEqual(
      shown.lines.map(({ material }) => material),
    );
    const sum = lines.reduce((all, [, , , value]) => all + Number(value), 0);
    expect(sum).toBeNear(shown.total / 100, { absolute: 1e-9 }); // binary rounding of cents
    expect(lines[1]).toEqual([
      'Plastisol soft',
      0.09,
      'gal',
      5.58,
      62,
      'at or below its reorder point',
    ]);
  });

  test('lists lots, the oldest first, and counts that differed', () => {
    expect(stock('lots').slice(0, 3)).toEqual([
      ['Material', 'Lot', 'Bought on', 'Left', 'Unit', 'Value (USD)'],
      ['Plastisol medium', 'PM-2610', '2026-10-19', 0.05, 'gal', 3.1],
      ['Plastisol medium', 'PM-2611', '2026-11-09', 1.98, 'gal', 129.69],
    ]);
    expect(stock('counts')).toEqual([
      ['Material', 'Date', 'Row', 'Expected', 'Counted', 'Unit', 'Difference (USD)'],
      ['Plastisol soft', '2026-11-27', 41, 1.69, 0.09, 'gal', -99.2],
      ['Copper mica', '2026-11-28', 42, 3.75, 3.8, 'oz', 0.17],
      ['Zip bag, 4 x 6 in', '2026-11-14', 35, 475, 468, 'each', -0.43],
    ]);
    expect(stock('to mend')).toEqual([['Sheet', 'Row', 'Heading', 'What']]);
  });

  test('names a negative stock with its move, and rows that cannot be read', () => {
    const bad = {
      row: 60,
      record: { date: '2026-12-01', material: 'Red', amount: -9, reason: 'used' },
    } as const;
    const book = { ...BOOK, stockMoves: [...BOOK.stockMoves, bad] };
    expect(stock('materials', book).find(([material]) => material === 'Red')).toEqual([
      'Red',
      -5,
      'fl oz',
      -11.88,
      2.375,
      'below nothing since row 43',
    ]);
    const { stockMoves, materials, shop } = cellsOf(book);
    const broken = stockMoves.map((row, index) =>
      index === 1 ? row.map((cell) => (cell === 2 ? 'two' : cell)) : row,
    );
    const answer = rows(
      runFunction(POUR_STOCK, [
        'to mend',
        broken,
        materials as CellValue[][],
        shop as CellValue[][],
      ]),
    );
    expect(
      answer.slice(1).map(([sheet, row, heading, text]) => [sheet, row, heading, text]),
    ).toContainEqual(['Stock moves', 2, 'Amount', 'amount must be a number, got "two"']);
    expect(answer.filter(([, row]) => row === 2)).toHaveLength(1);
  });

  test('refuses a view that it does not have, and a cell instead of a sheet', () => {
    const { stockMoves, materials, shop } = cellsOf();
    expect(
      runFunction(POUR_STOCK, [
        'all',
        stockMoves,
        materials as CellValue[][],
        shop as CellValue[][],
      ]),
    ).toBe('show must be one of materials, lots, counts, to mend, got "all"');
    expect(runFunction(POUR_STOCK, ['lots', 7])).toBe(
      'stock moves must be a range of the sheet Stock moves with its heading row, got 7',
    );
  });
});

describe('POUR_SHORT', () => {
  test('is the purchase list that the panel shows', () => {
    const [headings, first, ...more] = short('');
    expect(headings?.slice(0, 6)).toEqual([
      'Material',
      'Supplier',
      'On hand',
      'Needed',
      'Short',
      'Unit',
    ]);
    expect(first?.slice(0, 3)).toEqual(['Plastisol soft', 'Supplier 1', 0.09]);
    expect(first?.slice(6, 10)).toEqual(['1007', '2026-12-08', 2, 124]);
    expect(more.map(([material]) => material)).toEqual(
      stockSummary(BOOK)
        .purchases.lines.slice(1)
        .map(({ material }) => material),
    );
  });

  test('reckons with orders that were only asked for when wanted', () => {
    const needed = (which: string) => Number(short(which)[1]?.[3]);
    expect(needed('asked too')).toBeGreaterThan(needed('accepted'));
  });

  test('puts an order that it cannot count at the end, with the reason', () => {
    const orders = BOOK.orders.map((row) =>
      row.record.order === '1008' ? { ...row, record: { ...row.record, mold: 'Stick 9 in' } } : row,
    );
    const last = short('accepted', { ...BOOK, orders }).at(-1);
    expect([last?.[6], last?.[10]]).toEqual([
      '1008',
      'not counted: Orders row 9: mold must be listed in Molds, got "Stick 9 in"',
    ]);
  });
});

describe('POUR_LOTS', () => {
  test('goes both ways from one cell', () => {
    expect(lots([['PM-2611']])).toEqual([
      ['Material', 'Lot', 'Order', 'Run', 'Reason', 'Amount', 'Unit', 'Date', 'Row', 'Lot is'],
      ['Plastisol medium', 'PM-2611', '', '', 'purchase', 2, 'gal', '2026-11-09', 30, 'named'],
      [
        'Plastisol medium',
        'PM-2611',
        '1006',
        'R-1006',
        'used',
        -0.02,
        'gal',
        '2026-11-24',
        40,
        'named',
      ],
    ]);
    const inOrder = lots(1003);
    expect(
      inOrder.map(([material, lot, , , , , , , , sure]) => [material, lot, sure]),
    ).toContainEqual(['Zip bag, 4 x 6 in', '', 'the oldest']);
  });

  test.each([
    { name: '', text: 'name must be given, got nothing' },
    { name: [['A', 'B']], text: 'name must be text in one cell, got "a range"' },
    { name: true, text: 'name must be text in one cell, got TRUE' },
    { name: '#REF!', text: 'name must be free of errors, got "#REF!"' },
  ])('refuses $name', ({ name, text }) => {
    const { stockMoves, materials } = cellsOf();
    expect(runFunction(POUR_LOTS, [name, stockMoves, materials as CellValue[][]])).toBe(text);
  });

  test.each(HOSTILE)('finds no lot called %j, and nothing breaks', (name) => {
    expect(lots(name)).toHaveLength(1);
  });
});

describe('nonsense in the sheets', () => {
  test.each([
    [[]],
    [[['x']]],
    [
      [
        ['Date', 'Material'],
        [1, 2],
      ],
    ],
    [[['#REF!']]],
    [[[Number.NaN, '=1+1', null]]],
  ])('%j instead of Stock moves gives headings and no more', (sheet) => {
    const { materials, shop } = cellsOf();
    const given = sheet as unknown as CellArgument; // whatever a cell may hand over
    const answer = rows(
      runFunction(POUR_STOCK, [
        'materials',
        given,
        materials as CellValue[][],
        shop as CellValue[][],
      ]),
    );
    expect(answer).toHaveLength(1);
    const problems = rows(
      runFunction(POUR_STOCK, [
        'to mend',
        given,
        materials as CellValue[][],
        shop as CellValue[][],
      ]),
    );
    for (const cell of problems.flat())
      expect(String(cell)).not.toMatch(/NaN|undefined|Infinity|\[object/);
  });
});
