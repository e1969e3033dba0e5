import { describe, expect, test } from 'vitest';
import type { MoneyBook } from '../../../shared/book/book.ts';
import { ledger } from '../../../shared/money/stock/ledger.ts';
import type { MoveRow } from '../../../shared/money/stock/ledgerTypes.ts';
import { lotTrace } from '../../../shared/money/stock/lotTrace.ts';
import { recordsOfUse, type TypedAmounts } from '../../../shared/money/stock/recordsOfUse.ts';
import { type RunUse, runUse } from '../../../shared/money/stock/runUse.ts';
import { demoMoneyBook } from './demoMoneyBook.ts';
import { BLACK, bought, moveRows, used } from './moves.ts';

const DATE = '2026-12-01';
const AS_PLANNED: TypedAmounts = { used: {}, scrapped: {} };

function useOf(book: MoneyBook, order: string, run: string): RunUse {
  const row = book.orders.find(({ record }) => record.order === order);
  if (row === undefined) throw new Error(`no order ${order}`);
  const use = runUse(book, ledger(book.stockMoves, book.materials), row, run);
  if (use.kind !== 'use') throw new Error(use.because.join());
  return use;
}

function recordsFor(use: RunUse, typed = AS_PLANNED) {
  const made = recordsOfUse(use, typed, DATE);
  if (made.kind !== 'records') throw new Error(made.problems.map(({ text }) => text).join());
  return made.records;
}

function withRows(book: MoneyBook, records: readonly MoveRow['record'][]): MoneyBook {
  const start = book.stockMoves.length + 2;
  const rows = records.map((record, index) => ({ row: start + index, record }));
  return { ...book, stockMoves: [...book.stockMoves, ...rows] };
}

describe('the use of a run', () => {
  test('is planned for the pieces that its rounds poured', () => {
    const use = useOf(demoMoneyBook(), '1006', 'R-1006');
    expect(use).toMatchObject({ poured: 128, assumptions: [], gaps: [] });
    // A round that was corrected counts once, as corrected.
    expect(use.good).toBeGreaterThan(100);
    expect(use.good).toBeLessThan(use.poured);
    const [base] = use.lines;
    expect(base).toMatchObject({ material: 'Plastisol medium', lot: 'PM-2610', unit: 'gal' });
    // 128 pieces of 0.29 fl oz, 8 % more for topping off and cups: about 0.32 gal.
    expect(base?.planned).toBeGreaterThan((128 * 0.29) / 128);
    expect(base?.planned).toBeLessThan(((128 * 0.29) / 128) * 1.2);
    expect(base?.used).toMatchObject({
      amount: expect.toBeNear(0.36, { relative: 1e-12 }),
      rows: [39, 40],
    }); // binary rounding of 0.34 + 0.02
  });

  test('becomes rows that take out what is planned, each with its order, run, lot and token', () => {
    const use = useOf(demoMoneyBook(), '1006', 'R-1006');
    const white = use.lines.find(({ material }) => material === 'White');
    const records = recordsFor(use);
    expect(records.map(({ material }) => material)).toEqual([
      'White',
      'Pearl white mica',
      'Heat stabilizer',
      'Blue',
      'Red',
      'Black',
      'Zip bag, 4 x 6 in',
      'Bag label',
    ]);
    expect(records[0]).toEqual({
      date: DATE,
      material: 'White',
      lot: 'C-0121',
      amount: expect.toBeNear(-(white?.planned ?? 0), { relative: 1e-11 }), // written to twelve digits
      reason: 'used',
      order: '1006',
      run: 'R-1006',
      entry: 'used | r-1006 | white | c-0121',
    });
    expect(records[6]).not.toHaveProperty('lot');
  });

  test('posted again gives no row, whatever was typed the second time', () => {
    const book = demoMoneyBook();
    const posted = withRows(book, recordsFor(useOf(book, '1006', 'R-1006')));
    const again = useOf(posted, '1006', 'r-1006 ');
    expect(recordsFor(again)).toEqual([]);
    expect(recordsFor(again, { used: { white: '9' }, scrapped: {} })).toEqual([]);
    expect(again.lines.every((line) => line.used !== undefined)).toBe(true);
  });

  test('stays posted when Materials names another lot meanwhile, or a correction is typed', () => {
    const book = demoMoneyBook();
    const posted = withRows(book, recordsFor(useOf(book, '1006', 'R-1006')));
    const materials = book.materials.map((row) => ({
      ...row,
      record: { ...row.record, lot: 'NEW-1' },
    }));
    expect(recordsFor(useOf({ ...posted, materials }, '1006', 'R-1006'))).toEqual([]);
    const correction = {
      ...used(-0.01),
      material: 'White',
      date: DATE,
      run: 'R-1006',
      order: '1006',
    };
    expect(recordsFor(useOf(withRows(posted, [correction]), '1006', 'R-1006'))).toEqual([]);
  });

  test('scrap typed by hand does not keep the use from being posted', () => {
    const book = demoMoneyBook();
    const moves = book.stockMoves.filter(
      ({ record }) => record.run !== 'R-1002' || record.reason !== 'used',
    );
    const use = useOf({ ...book, stockMoves: moves }, '1002', 'R-1002');
    expect(use.lines[0]).toMatchObject({
      material: 'Plastisol medium',
      scrapped: { amount: 0.06 },
    });
    const own = recordsFor(use, { used: {}, scrapped: { 'plastisol medium': '5' } }).filter(
      ({ material }) => material === 'Plastisol medium',
    );
    expect(own.map(({ reason }) => reason)).toEqual(['used']);
  });

  test('takes what was weighed, and scrap beside it; blank takes nothing', () => {
    const typed = { used: { white: ' 0.5 ', black: '' }, scrapped: { white: '0.25' } };
    const records = recordsFor(useOf(demoMoneyBook(), '1006', 'R-1006'), typed);
    const own = records.filter(({ material }) => material === 'White' || material === 'Black');
    expect(own.map(({ reason, amount }) => [reason, amount])).toEqual([
      ['used', -0.5],
      ['scrapped', -0.25],
    ]);
  });

  test.each([
    { text: '-1', message: 'White used must be at least 0, got -1' },
    { text: 'some', message: 'White used must be a number, got "some"' },
    { text: '=1+1', message: 'White used must be a number, got "=1+1"' },
    { text: '1e9', message: 'White used must be at most 1000000, got 1000000000' },
    { text: 'NaN', message: 'White used must be a number, got "NaN"' },
    { text: 'Infinity', message: 'White used must be a number, got "Infinity"' },
  ])('refuses $text at its field', ({ text, message }) => {
    const use = useOf(demoMoneyBook(), '1006', 'R-1006');
    const made = recordsOfUse(use, { used: { white: text }, scrapped: {} }, DATE);
    expect(made).toEqual({ kind: 'refused', problems: [{ field: 'used white', text: message }] });
  });

  test('refuses a material that the run does not take', () => {
    const use = useOf(demoMoneyBook(), '1006', 'R-1006');
    expect(recordsOfUse(use, { used: { ['__proto__x']: '1' }, scrapped: {} }, DATE)).toEqual({
      kind: 'refused',
      problems: [
        { field: '', text: 'material must be a material that run R-1006 takes, got "__proto__x"' },
      ],
    });
  });

  test('a run that is not logged has none', () => {
    const book = demoMoneyBook();
    const [row] = book.orders.filter(({ record }) => record.order === '1007');
    const stock = ledger(book.stockMoves, book.materials);
    expect(row && runUse(book, stock, row, '1007-1')).toEqual({
      kind: 'none',
      because: ['no pieces of run 1007-1 are in Pour log: log them first'],
    });
  });

  test('says when the lot in use does not hold enough', () => {
    const book = demoMoneyBook();
    const stockMoves = book.stockMoves.filter(({ record }) => record.run !== 'R-1006');
    const lotInUse = (lot: string) =>
      book.materials.map((row) =>
        row.record.material === 'Plastisol medium'
          ? { ...row, record: { ...row.record, lot } }
          : row,
      );
    const noteWith = (lot: string) =>
      useOf({ ...book, stockMoves, materials: lotInUse(lot) }, '1006', 'R-1006').lines[0]?.note;
    expect(noteWith('PM-2610')).toBeUndefined();
    expect(noteWith('PM-9')).toBe(
      'nothing of lot PM-9 is in stock: the oldest lot is reckoned with; set the lot in use in Materials',
    );
    const less = [
      ...stockMoves,
      {
        row: 99,
        record: { ...used(0.3), material: 'Plastisol medium', lot: 'PM-2610', date: '2026-11-29' },
      },
    ];
    expect(useOf({ ...book, stockMoves: less }, '1006', 'R-1006').lines[0]?.note).toBe(
      'lot PM-2610 holds 0.09 gal: what it lacks is reckoned from the oldest lot',
    );
  });
});

describe('lotTrace', () => {
  const moves = moveRows(
    bought(2, 4, { lot: 'A' }),
    bought(2, 4, { lot: 'B' }),
    used(1, { lot: 'B', order: '7', run: '7-1' }),
    used(2.5, { order: '8', run: '8-1' }),
  );
  const stock = ledger(moves, BLACK);

  test('tells which orders contain a lot, also where no row names it', () => {
    const lines = lotTrace(stock, ' b ').ofLot.map(({ row, order, amount, isLotNamed }) => [
      row,
      order,
      amount,
      isLotNamed,
    ]);
    expect(lines).toEqual([
      [3, '', 2, true],
      [4, '7', -1, true],
      [5, '8', -0.5, false],
    ]);
  });

  test('tells which lots are in an order or a run', () => {
    const lots = (name: string) =>
      lotTrace(stock, name).ofOrder.map(({ lot, amount }) => [lot, amount]);
    expect(lots('8')).toEqual([
      ['A', -2],
      ['B', -0.5],
    ]);
    expect(lots('7-1')).toEqual([['B', -1]]);
  });

  test('finds nothing for a blank or an unknown name', () => {
    for (const name of ['', '  ', 'nobody', 'constructor'])
      expect(lotTrace(stock, name)).toEqual({ ofLot: [], ofOrder: [] });
  });

  test('both ways agree: every order that contains a lot has that lot in it', () => {
    const book = demoMoneyBook();
    const all = ledger(book.stockMoves, book.materials);
    for (const lot of ['PM-2610', 'PM-2611', 'PS-2609', 'M-34'])
      for (const { order } of lotTrace(all, lot).ofLot)
        if (order !== '')
          expect(lotTrace(all, order).ofOrder.map((line) => line.lot)).toContain(lot);
  });
});
