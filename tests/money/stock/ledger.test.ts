import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ledger } from '../../../shared/money/stock/ledger.ts';
import type { Ledger, MaterialStock, MoveRow } from '../../../shared/money/stock/ledgerTypes.ts';
import { HOSTILE } from '../../paper/hostile.ts';
import { BLACK, bought, counted, dayOf, materialRows, moveRows, used } from './moves.ts';

function black(book: Ledger): MaterialStock {
  const stock = book.stocks.get('black');
  if (stock === undefined) throw new Error('there is no Black');
  return stock;
}

function stockAfter(...records: readonly MoveRow['record'][]): MaterialStock {
  return black(ledger(moveRows(...records), BLACK));
}

/** Binary rounding of a few sums. */
const EXACT = { relative: 1e-12 };

describe('published inventory examples', () => {
  test.each([
    {
      source: 'FINCAL',
      buys: [bought(2, 4), bought(3, 9), bought(5, 25)],
      sold: 7,
      fifo: { cost: 23, left: 15 },
      average: { cost: 26.6, left: 11.4 },
      within: 1e-12, // printed exactly
    },
    {
      source: 'OPENSTAXACCOUNTING',
      buys: [bought(150, 150 * 21), bought(225, 225 * 27), bought(210, 210 * 33)],
      sold: 300,
      fifo: { cost: 7200, left: 8955 },
      average: { cost: 8283, left: 7872 },
      within: 3e-4, // the book cuts the unit cost of 27.615 to 27.61
    },
    {
      source: 'OPENSTAXACCOUNTING, unit cost not cut',
      buys: [bought(150, 150 * 21), bought(225, 225 * 27), bought(210, 210 * 33)],
      sold: 300,
      fifo: { cost: 7200, left: 8955 },
      average: { cost: 8284.62, left: 7870.38 },
      within: 1e-6, // recomputed to a cent
    },
    {
      source: 'INVENTORYEXERCISE',
      buys: [bought(5, 5 * 37), bought(18, 18 * 39), bought(13, 13 * 40)],
      sold: 20,
      fifo: { cost: 1407 - 637, left: 637 },
      average: { cost: 1407 - 625.28, left: 625.28 },
      within: 1e-4, // its unit cost is rounded to 39.08
    },
  ])('$source: cost of what went and value of what is left', (given) => {
    const stock = stockAfter(...given.buys, used(given.sold));
    expect(stock.fifoCost).toBeNear(given.fifo.cost, EXACT);
    expect(stock.fifoValue).toBeNear(given.fifo.left, EXACT);
    expect(stock.cost).toBeNear(given.average.cost, { relative: given.within });
    expect(stock.value).toBeNear(given.average.left, { relative: given.within });
  });

  test('the average is that of what is there, so a later purchase does not touch what went before', () => {
    const stock = stockAfter(bought(10, 10), used(5), bought(5, 25));
    expect(stock.cost).toBeNear(5, EXACT);
    expect(stock.average).toBeNear(3, EXACT);
    expect(stock.value).toBeNear(30, EXACT);
  });
});

describe('the order of moves', () => {
  test('is by date, then by row, wherever the rows stand', () => {
    const day = (days: number) => ({ date: dayOf(days) });
    const late = [used(2, day(3)), bought(2, 2, day(1)), bought(2, 6, day(2))];
    const book = ledger(moveRows(...late), BLACK);
    expect(book.moves.map(({ row }) => row)).toEqual([3, 4, 2]);
    expect(black(book).fifoCost).toBeNear(2, EXACT);
    expect(book.problems).toEqual([]);
    const sameDay = ledger(moveRows(bought(1, 1, day(5)), used(1, day(5))), BLACK);
    expect(sameDay.moves.map(({ row }) => row)).toEqual([2, 3]);
  });

  test('a row without a date stands with the row above it, and is named', () => {
    const rows = moveRows(bought(2, 2), used(1, { date: undefined }), used(1));
    const book = ledger(rows, BLACK);
    expect(book.moves.map(({ date }) => date)).toEqual(['2026-01-01', '2026-01-01', '2026-01-03']);
    expect(book.problems).toEqual([
      { sheet: 'Stock moves', row: 3, heading: 'Date', text: 'date must be given, got nothing' },
    ]);
  });
});

describe('lots', () => {
  const two = [bought(4, 8, { lot: 'A' }), bought(4, 12, { lot: 'B' })];

  test('the oldest goes first where a move names none', () => {
    const book = ledger(moveRows(...two, used(5)), BLACK);
    expect(black(book).lots).toEqual([{ lot: 'B', date: '2026-01-02', row: 3, left: 3, value: 9 }]);
    expect(book.moves[2]).toMatchObject({
      isLotNamed: false,
      lots: [
        { lot: 'A', amount: 4 },
        { lot: 'B', amount: 1 },
      ],
    });
  });

  test('the one that a move names goes, in any writing, and the oldest for what it lacks', () => {
    const book = ledger(moveRows(...two, used(3, { lot: ' b ' }), used(2, { lot: 'B' })), BLACK);
    expect(black(book).lots.map(({ lot, left }) => [lot, left])).toEqual([['A', 3]]);
    expect(book.moves[3]?.lots).toEqual([
      { lot: 'B', amount: 1 },
      { lot: 'A', amount: 1 },
    ]);
  });

  test('a lot that nobody bought takes from the oldest', () => {
    const book = ledger(moveRows(...two, used(1, { lot: 'C' })), BLACK);
    expect(book.moves[2]?.lots).toEqual([{ lot: 'A', amount: 1 }]);
  });

  test('what is put back goes to its lot, open or used up', () => {
    const open = stockAfter(...two, used(1, { lot: 'B' }), used(-1, { lot: 'B' }));
    expect(open.lots.map(({ lot, left }) => [lot, left])).toEqual([
      ['A', 4],
      ['B', 4],
    ]);
    const usedUp = stockAfter(...two, used(4, { lot: 'A' }), used(-1, { lot: 'A' }), used(2));
    expect(usedUp.lots.map(({ lot, left }) => [lot, left])).toEqual([['B', 3]]);
    expect(usedUp.fifoCost).toBeNear(8 - 2 + 2 + 3, EXACT);
  });

  test('what was put back to a lot is expected in its next count', () => {
    const back = [used(1, { lot: 'B' }), used(-1, { lot: 'B' }), counted(4, { lot: 'B' })];
    expect(stockAfter(...two, ...back).counts).toMatchObject([{ expected: 4, difference: 0 }]);
  });

  test('a count of one lot while stock is below nothing finds all of that lot', () => {
    const stock = stockAfter(used(3), counted(5, { lot: 'B' }));
    expect(stock).toMatchObject({ onHand: 5, counts: [{ expected: -3, difference: 8 }] });
    expect(stock.lots).toMatchObject([{ lot: 'B', left: 5 }]);
  });

  test('a count of one lot sets that lot only', () => {
    const book = ledger(moveRows(...two, counted(3, { lot: 'B' })), BLACK);
    expect(black(book).onHand).toBe(7);
    expect(black(book).lots.map(({ lot, left }) => [lot, left])).toEqual([
      ['A', 4],
      ['B', 3],
    ]);
    expect(black(book).counts).toEqual([
      {
        row: 4,
        date: '2026-01-03',
        lot: 'B',
        expected: 4,
        counted: 3,
        difference: -1,
        value: -2.5,
      },
    ]);
  });
});

describe('a count', () => {
  test('sets what is there, and values what is lost and what is found at the average', () => {
    const lost = stockAfter(bought(4, 8), used(1), counted(2.5));
    expect(lost).toMatchObject({ onHand: 2.5, value: 5, cost: 3 });
    expect(lost.counts).toMatchObject([{ expected: 3, counted: 2.5, difference: -0.5, value: -1 }]);
    const found = stockAfter(bought(4, 8), counted(5));
    expect(found).toMatchObject({ onHand: 5, value: 10, cost: -2, average: 2 });
    expect(found.counts).toMatchObject([{ expected: 4, counted: 5, difference: 1, value: 2 }]);
  });

  test('that finds what was expected changes nothing', () => {
    const stock = stockAfter(bought(4, 8), counted(4));
    expect(stock).toMatchObject({ onHand: 4, value: 8, cost: 0 });
    expect(stock.counts).toMatchObject([{ difference: 0, value: 0 }]);
  });

  test('of nothing empties the stock to the last cent', () => {
    const stock = stockAfter(bought(3, 1), used(1), counted(0));
    expect(stock).toMatchObject({ onHand: 0, value: 0, cost: 1, lots: [], fifoValue: 0 });
  });
});

describe('a negative stock', () => {
  test('is reported with the very move that caused it and by how much, and goes on', () => {
    const rows = moveRows(bought(4, 8), used(3), used(1.5), used(1), bought(4, 12));
    const before = ledger(rows.slice(0, 4), BLACK);
    expect(before.problems).toEqual([
      {
        sheet: 'Stock moves',
        row: 4,
        heading: 'Amount',
        text: 'this move of 2026-01-03 takes Black to -0.5 fl oz: a purchase or a count is missing before it, or its amount is wrong',
      },
    ]);
    expect(black(before).negative).toEqual({ row: 4, date: '2026-01-03', onHand: -0.5 });
    expect(black(before)).toMatchObject({ onHand: -1.5, value: -3, cost: 11, average: 2 });
    const after = black(ledger(rows, BLACK));
    expect(after.negative).toBeUndefined();
    // The 1.5 that was used before it was bought cost 3 each, not the 2 reckoned with.
    expect(after).toMatchObject({ onHand: 2.5, value: 7.5, average: 3, cost: 12.5 });
  });

  test('names each move that takes it below nothing again', () => {
    const rows = moveRows(bought(1, 1), used(2), bought(2, 2), used(2));
    expect(ledger(rows, BLACK).problems.map(({ row }) => row)).toEqual([3, 5]);
  });

  test('a rest of binary arithmetic is no negative stock', () => {
    const book = ledger(moveRows(bought(0.3, 3), used(0.1), used(0.1), used(0.1)), BLACK);
    expect(book.problems).toEqual([]);
    expect(black(book)).toMatchObject({ onHand: 0, value: 0, lots: [] });
  });

  test('what was used before any price was known is reckoned at the list price, or at nothing', () => {
    const listed = materialRows({
      material: 'Black',
      packUnit: 'fl oz',
      packSize: 4,
      packPrice: 8,
    });
    expect(black(ledger(moveRows(used(1)), listed))).toMatchObject({ value: -2, cost: 2 });
    expect(black(ledger(moveRows(used(1)), listed)).average).toBeUndefined();
    expect(black(ledger(moveRows(used(1)), BLACK))).toMatchObject({ value: 0, cost: 0 });
  });
});

describe('rows that cannot be posted as they stand', () => {
  test('are named with row, heading, rule and value', () => {
    const rows = moveRows(
      { amount: 1, reason: 'used', material: undefined },
      { reason: 'used' },
      { amount: 1 },
      bought(1, 1, { material: 'Blck' }),
      { reason: 'purchase', amount: 1 },
      bought(1, -5),
      counted(-1),
    );
    const texts = ledger(rows, BLACK).problems.map(
      ({ row, heading, text }) => `${row} ${heading}: ${text}`,
    );
    expect(texts).toEqual([
      '2 Material: material must be given, got nothing',
      '3 Amount: amount must be given, got nothing',
      '4 Reason: reason must be given, got nothing',
      '5 Material: material must be listed in Materials, got "Blck"',
      '6 Money: money must be given, got nothing',
      '7 Money: money must be at least 0, got -5',
      '8 Amount: amount must be at least 0, got -1',
    ]);
  });

  test('a material that is not listed has its own stock', () => {
    const book = ledger(moveRows(bought(1, 5, { material: 'Blck' })), BLACK);
    expect(book.stocks.get('blck')).toMatchObject({ material: 'Blck', onHand: 1, value: 5 });
    expect(book.stocks.get('blck')).not.toHaveProperty('unit');
    expect(black(book)).toMatchObject({ onHand: 0, value: 0 });
  });

  test('a material without a pack unit is named where it is listed', () => {
    const listed = materialRows({ material: 'White' }, { material: 'Black' });
    expect(ledger(moveRows(bought(1, 5)), listed).problems).toEqual([
      {
        sheet: 'Materials',
        row: 3,
        heading: 'Pack unit',
        text: 'pack unit of Black must be given: its moves are counted in it',
      },
    ]);
  });

  test('a purchase without a price is taken at the one reckoned with so far', () => {
    const stock = stockAfter(bought(2, 6), { reason: 'purchase', amount: 2 });
    expect(stock).toMatchObject({ onHand: 4, value: 12, average: 3 });
    expect(stockAfter(bought(2, 6), bought(2, -5))).toMatchObject({ value: 12, average: 3 });
  });

  test('freight without a material is a cost, a return takes out what came back', () => {
    expect(stockAfter(bought(2, 6), bought(0, 4))).toMatchObject({ value: 6, cost: 4 });
    const back = stockAfter(bought(4, 8), { reason: 'purchase', amount: -1, money: 1.5 });
    expect(back).toMatchObject({ onHand: 3, value: 6, cost: 0.5 });
    expect(back.bought).toEqual({ amount: 3, money: 6.5 });
  });

  test.each(HOSTILE)('%j is a name like any other', (text) => {
    const book = ledger(
      moveRows(bought(1, 5, { material: text, lot: text }), used(1, { material: text, lot: text })),
      materialRows({ material: text, packUnit: 'each' }),
    );
    expect(book.problems).toEqual([]);
    expect([...book.stocks.values()]).toMatchObject([{ material: text, onHand: 0, value: 0 }]);
  });
});

/** Any shop: three materials, four lots, amounts and prices of every size, counts, returns and corrections. */
const anyMoves: fc.Arbitrary<readonly MoveRow[]> = fc
  .array(
    fc.record({
      material: fc.constantFrom('Black', 'White', 'Salt'),
      lot: fc.constantFrom('', 'A', 'B', 'C'),
      reason: fc.constantFrom('purchase', 'used', 'scrapped', 'counted' as const),
      // Whole hundredths: doubles are drawn by their bits, and nearly all of those would be 0.00.
      amount: fc.integer({ min: -5000, max: 10_000 }).map((one) => one / 100),
      money: fc.option(
        fc.integer({ min: 0, max: 50_000 }).map((one) => one / 100),
        { nil: undefined },
      ),
      day: fc.integer({ min: 0, max: 40 }),
    }),
    { maxLength: 60, size: 'max' },
  )
  .map((rows) => moveRows(...rows.map(({ day, ...row }) => ({ ...row, date: dayOf(day) }))));

const SHOP = materialRows(
  { material: 'Black', packUnit: 'fl oz', packSize: 4, packPrice: 9.5 },
  { material: 'White', packUnit: 'g' },
  { material: 'Salt', packUnit: 'lb', packSize: 5 },
);

describe('laws of conservation', () => {
  /** Sums of up to 60 amounts of up to 500, each within a binary digit. */
  const near = { absolute: 1e-6 };

  test('moves sum to the stock; what was paid is the value on hand and the costs, by either rule', () => {
    fc.assert(
      fc.property(anyMoves, (moves) => {
        const book = ledger(moves, SHOP);
        for (const stock of book.stocks.values()) {
          const own = book.moves.filter(({ key }) => key === stock.key);
          const sum = (of: 'change' | 'paid' | 'cost' | 'fifoCost') =>
            own.reduce((all, move) => all + move[of], 0);
          expect(stock.onHand).toBeNear(sum('change'), near);
          expect(stock.bought.money).toBeNear(sum('paid'), near);
          expect(stock.value + sum('cost')).toBeNear(sum('paid'), near);
          expect(stock.fifoValue + sum('fifoCost')).toBeNear(sum('paid'), near);
          expect([stock.cost, stock.fifoCost].map(Number.isFinite)).toEqual([true, true]);
          const left = stock.lots.reduce((all, lot) => all + lot.left, 0);
          expect(left).toBeNear(Math.max(0, stock.onHand), near);
          expect(stock.negative !== undefined).toBe(stock.onHand < 0);
        }
      }),
      { numRuns: 300 },
    );
  });

  test('the value on hand is the average times what is there, and neither is below nothing with stock on hand', () => {
    fc.assert(
      fc.property(anyMoves, (moves) => {
        for (const stock of ledger(moves, SHOP).stocks.values()) {
          if (stock.onHand <= 0 || stock.average === undefined) continue;
          expect(stock.value).toBeNear(stock.average * stock.onHand, near);
          expect(stock.value).toBeGreaterThanOrEqual(-near.absolute);
        }
      }),
      { numRuns: 300 },
    );
  });

  test('a lot gives no more than came in of it, and after a count of all exactly that is there', () => {
    fc.assert(
      fc.property(anyMoves, fc.integer({ min: 0, max: 500 }), (moves, found) => {
        const last = { row: 99, record: counted(found, { material: 'Black', date: dayOf(41) }) };
        const book = ledger([...moves, last], SHOP);
        expect(black(book).onHand).toBeNear(found, near);
        for (const lot of black(book).lots) expect(lot.left).toBeGreaterThan(0);
      }),
      { numRuns: 200 },
    );
  });
});

test('the time grows in proportion to the moves', () => {
  const time = (count: number) => {
    const rows = moveRows(
      ...Array.from({ length: count }, (_, index) =>
        index % 3 === 0
          ? bought(3, 6, { lot: `L${index % 7}` })
          : used(1.2, { lot: `L${index % 5}` }),
      ),
    );
    // Of the processor: others that run at the same time do not count.
    const start = process.cpuUsage();
    ledger(rows, BLACK);
    const { user, system } = process.cpuUsage(start);
    return (user + system) / 1000;
  };
  time(5000);
  const [small, large] = [time(5000), time(50_000)];
  expect(large).toBeLessThan(1000);
  // Ten times the moves; the collector may make it three times worse, a square would make it 100.
  expect(large / small).toBeLessThan(35);
});
