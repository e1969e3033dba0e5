import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ledger } from '../../../shared/money/stock/ledger.ts';
import type { MoveRow } from '../../../shared/money/stock/ledgerTypes.ts';
import { openNeeds } from '../../../shared/money/stock/openNeeds.ts';
import { purchaseList } from '../../../shared/money/stock/purchaseList.ts';
import { type OpenNeed, type Supply, shortfall } from '../../../shared/money/stock/shortfall.ts';
import { stockSummary } from '../../../shared/money/stock/stockSummary.ts';
import { unitCosts } from '../../../shared/money/stock/unitCosts.ts';
import { demoMoneyBook } from './demoMoneyBook.ts';
import { bought, materialRows, moveRows, used } from './moves.ts';

const LISTED = materialRows(
  {
    material: 'Black',
    packUnit: 'fl oz',
    packSize: 4,
    packPrice: 9.5,
    supplier: 'Supplier 2',
    reorderPoint: 0.5,
  },
  { material: 'Salt', packUnit: 'lb', packSize: 5, supplier: 'Supplier 1' },
);

function need(order: string, amount: number, due?: string, key = 'black'): OpenNeed {
  const use = { material: key, key, lot: '', amount, unit: 'fl oz' } as const;
  return { order, due, uses: [use] };
}

function black(needs: readonly OpenNeed[], moves: readonly MoveRow[]): Supply {
  const [supply] = shortfall(needs, ledger(moves, LISTED), LISTED);
  if (supply === undefined) throw new Error('Black is listed');
  return supply;
}

describe('shortfall', () => {
  test('names the first order, in the order they are served, that the stock does not reach for', () => {
    const supply = black(
      [need('1', 3, '2026-12-01'), need('2', 2, '2026-12-05'), need('3', 9, '2026-12-09')],
      moveRows(bought(4, 9.5)),
    );
    expect(supply).toMatchObject({ onHand: 4, needed: 14, free: -10 });
    expect(supply.shortFrom).toEqual({ order: '2', due: '2026-12-05', amount: 2 });
  });

  test('does not count again what was used for an order already, corrections included', () => {
    const scrapped = { reason: 'scrapped', amount: -1, order: '1' } as const;
    const moves = moveRows(
      bought(5, 9.5),
      used(2, { order: '1' }),
      used(-0.5, { order: ' 1 ' }),
      scrapped,
    );
    const supply = black([need('1', 3), need('2', 1)], moves);
    expect(supply).toMatchObject({ onHand: 2.5, needed: 2.5, free: 0 });
    expect(supply.orders.map(({ order, amount }) => [order, amount])).toEqual([
      ['1', 1.5],
      ['2', 1],
    ]);
    expect(supply.shortFrom).toBeUndefined();
    // More was used than planned: nothing of the order is left to take, and nothing comes back.
    const over = black([need('1', 1)], moves);
    expect(over).toMatchObject({ needed: 0, orders: [] });
  });

  test.each([
    { onHand: 4, needed: 1, packs: 0, isLow: false },
    { onHand: 4, needed: 2, packs: 1, isLow: true }, // exactly at the reorder point of 2
    { onHand: 4, needed: 4, packs: 1, isLow: true },
    { onHand: 4, needed: 6, packs: 2, isLow: true }, // one pack would leave it at 2 again
    { onHand: 4, needed: 8, packs: 2, isLow: true },
  ])('$needed needed of $onHand: $packs whole packs', ({ onHand, needed, packs, isLow }) => {
    expect(black([need('1', needed)], moveRows(bought(onHand, 1)))).toMatchObject({ packs, isLow });
  });

  test('says why no number of packs can be given', () => {
    const materials = materialRows({ material: 'Black', packUnit: 'fl oz' });
    const [supply] = shortfall([need('1', 1)], ledger([], materials), materials);
    expect(supply).toMatchObject({
      packs: 0,
      noPacks: 'pack size of Black must be given in Materials',
    });
  });

  test('a stock below nothing is to be covered even when no order takes of it', () => {
    const materials = materialRows({ material: 'Salt', packUnit: 'lb', packSize: 5 });
    const stock = ledger(moveRows(used(6, { material: 'Salt' })), materials);
    expect(shortfall([], stock, materials)[0]).toMatchObject({ onHand: -6, packs: 2 });
  });

  test('the packs are the fewest that serve the orders and stand above the reorder point', () => {
    const amounts = fc.integer({ min: 0, max: 400 }).map((one) => one / 20);
    fc.assert(
      fc.property(amounts, fc.array(amounts, { maxLength: 6 }), (onHand, wanted) => {
        const needs = wanted.map((amount, index) => need(String(index), amount));
        const { free, packs } = black(needs, moveRows(bought(onHand, 1)));
        if (packs === 0) expect(free).toBeGreaterThan(2 - 1e-9);
        else {
          expect(free + 4 * packs).toBeGreaterThan(2 - 1e-9);
          expect(free + 4 * (packs - 1)).toBeLessThan(2 + 1e-9);
        }
      }),
    );
  });
});

describe('purchaseList', () => {
  test('sums whole packs at their price, and says how many have none', () => {
    const needs = [need('1', 10), need('2', 1, undefined, 'salt')];
    const supplies = shortfall(needs, ledger(moveRows(bought(1, 3)), LISTED), LISTED);
    const list = purchaseList(supplies, 'USD');
    expect(list.lines.map(({ material, packs, money }) => [material, packs, money])).toEqual([
      ['Salt', 1, undefined],
      ['Black', 3, 2850],
    ]);
    expect([list.total, list.unpriced]).toEqual([2850, 1]);
  });

  test('takes the average that was paid where there is no list price', () => {
    const moves = moveRows(bought(2, 3, { material: 'Salt' }));
    const supplies = shortfall([need('2', 4, undefined, 'salt')], ledger(moves, LISTED), LISTED);
    expect(purchaseList(supplies, 'USD').lines).toMatchObject([
      { material: 'Salt', money: 750 },
      { material: 'Black' },
    ]);
  });
});

describe('openNeeds', () => {
  test('serves accepted and planned orders by due date, those only asked for when wanted', () => {
    const book = demoMoneyBook();
    const orders = (which: 'accepted' | 'asked too') =>
      openNeeds(book, which).needs.map(({ order }) => order);
    expect(orders('accepted')).toEqual(['1007', '1008', '1009', '1010']);
    expect(orders('asked too')).toEqual(['1007', '1008', '1009', '1010', '1012']);
    const noDue = book.orders.map((row) =>
      row.record.order === '1007' ? { ...row, record: { ...row.record, due: undefined } } : row,
    );
    expect(
      openNeeds({ ...book, orders: noDue }, 'accepted').needs.map(({ order }) => order),
    ).toEqual(['1008', '1009', '1010', '1007']);
  });

  test('names the orders that it cannot count', () => {
    const book = demoMoneyBook();
    const orders = book.orders.map((row) =>
      row.record.order === '1008' ? { ...row, record: { ...row.record, mold: 'Stick 9 in' } } : row,
    );
    const { needs, uncounted } = openNeeds({ ...book, orders }, 'accepted');
    expect(needs.map(({ order }) => order)).toEqual(['1007', '1009', '1010']);
    expect(uncounted).toEqual([
      { order: '1008', text: 'Orders row 9: mold must be listed in Molds, got "Stick 9 in"' },
    ]);
  });
});

describe('the demo shop', () => {
  const shown = stockSummary(demoMoneyBook());

  test('has a short material, one below its reorder point, counts that differ, and two lots of one material', () => {
    expect(shown.problems).toEqual([]);
    expect(shown.uncounted).toEqual([]);
    const [short] = shown.purchases.lines;
    expect(short).toMatchObject({ material: 'Plastisol soft', packs: 2, money: 12_400 });
    expect(short?.shortFrom?.order).toBe('1007');
    const low = shown.purchases.lines.filter(({ shortFrom }) => shortFrom === undefined);
    expect(low.map(({ material }) => material)).toContain('Nail weight, 1/16 oz');
    const line = (name: string) => shown.lines.find(({ material }) => material === name);
    expect(line('Plastisol medium')?.lots.map(({ lot }) => lot)).toEqual(['PM-2610', 'PM-2611']);
    expect(line('Zip bag, 4 x 6 in')?.lastDifference).toMatchObject({
      expected: 475,
      counted: 468,
    });
  });

  test('the values of the materials add up to the total', () => {
    expect(shown.lines.reduce((sum, { value }) => sum + value, 0)).toBe(shown.total);
    for (const { value } of shown.lines) expect(Number.isInteger(value)).toBe(true);
  });
});

describe('stockSummary', () => {
  test('lists runs of which nothing was taken out yet, the last first, and not every problem of a broken sheet', () => {
    const book = demoMoneyBook();
    expect(stockSummary(book).unposted).toEqual([]);
    const kept = book.stockMoves.filter(
      ({ record }) => !['R-1003', 'R-1005'].includes(record.run ?? ''),
    );
    expect(stockSummary({ ...book, stockMoves: kept }).unposted).toEqual([
      { order: '1005', run: 'R-1005' },
      { order: '1003', run: 'R-1003' },
    ]);
    const broken = Array.from({ length: 250 }, (_, index) => ({
      row: 100 + index,
      record: { date: '2026-11-30' },
    }));
    const shown = stockSummary({ ...book, stockMoves: [...book.stockMoves, ...broken] });
    expect([shown.problems.length, shown.problemCount]).toEqual([100, 750]);
  });
});

describe('unitCosts', () => {
  test('is the average of what was bought, else the list price, else nothing', () => {
    const moves = moveRows(bought(2, 8), used(2));
    expect([...unitCosts(ledger(moves, LISTED), LISTED)]).toEqual([
      ['black', { perPackUnit: 4, from: 'stock' }],
    ]);
    expect([...unitCosts(ledger([], LISTED), LISTED)]).toEqual([
      ['black', { perPackUnit: 2.375, from: 'list price' }],
    ]);
  });
});
