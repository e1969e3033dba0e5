import { describe, expect, test } from 'vitest';
import { MONEY_TABLES, type MoneyBook } from '../../../shared/book/book.ts';
import type { Column } from '../../../shared/book/column.ts';
import { headingOf } from '../../../shared/book/reading/headingOf.ts';
import type { CellValue } from '../../../shared/book/reading/parseCell.ts';
import { ORDERS } from '../../../shared/book/tables/orders.ts';
import { TABLES } from '../../../shared/book/tables.ts';
import { POUR_MONEY } from '../../../shared/functions/book/POUR_MONEY.ts';
import { MONEY_COLUMNS } from '../../../shared/money/moneyColumn.ts';
import { bookCells } from '../../book/bookCells.ts';
import { DEMO, withChange } from '../../book/demoBook.ts';
import { type CostChanges, costBook, PRICED } from '../../money/cost/costBook.ts';

function moneyCells(book: MoneyBook) {
  return { ...bookCells(book), ...more(book, 'supplies'), ...more(book, 'stockMoves') };
}

/** Neither sheet has a column with a unit. */
function more(book: MoneyBook, key: 'supplies' | 'stockMoves') {
  const columns = Object.entries<Column>(TABLES[key].columns);
  const rows = book[key].map(({ record }) =>
    columns.map(([name]) => (record as Record<string, CellValue>)[name] ?? ''),
  );
  return { [key]: [columns.map(([, column]) => headingOf(column, 'US')), ...rows] };
}

function column(name: string, changes: CostChanges = {}) {
  return POUR_MONEY.compute(moneyCells(costBook(changes)), { column: name }, 'US');
}

describe('POUR_MONEY', () => {
  test('takes its ranges in the order of the sheets of a cost', () => {
    expect(Object.keys(POUR_MONEY.params)).toEqual(['column', ...MONEY_TABLES, 'shop']);
  });

  test('offers exactly the money columns that Orders declares', () => {
    const columns: readonly Column[] = Object.values(ORDERS.columns);
    const declared = columns.filter((one) => one.kind === 'computed' && one.by === 'money');
    expect(declared.map((one) => one.heading.toLowerCase())).toEqual([...MONEY_COLUMNS]);
    expect(MONEY_COLUMNS.map((name) => column(name)[0]?.[0])).toEqual([
      'Cost',
      'Quote price',
      'Margin',
      'Money notes',
    ]);
  });

  test('shows whole cents, and the margin of the agreed price where there is one', () => {
    const orders = withChange(DEMO.orders, 0, { priceAgreed: 110 });
    const [, [cost] = [], [other] = []] = column('cost', { orders });
    const [, [margin] = [], [quoted] = []] = column('margin', { orders });
    const [, , [price] = []] = column('quote price', { orders });
    for (const amount of [cost, other, price])
      expect(Math.round(Number(amount) * 100) / 100).toBe(amount);
    expect(margin).toBeNear((100 - Number(cost)) / 100, { relative: 1e-12 }); // 10 of the 110 are excise
    const kept = Math.round(Number(price) * 100) - Math.round(Number(price) * (100 / 11));
    expect(quoted).toBeNear((kept - 100 * Number(other)) / kept, { absolute: 1e-3 }); // rounding of the tax
  });

  test('says what a cost leaves out, and nothing where it leaves out nothing', () => {
    const materials = PRICED.map((one) =>
      one.material === 'Label' ? { ...one, packPrice: undefined } : one,
    );
    expect(column('money notes', { materials })[1]).toEqual([
      'No price of Label is in Materials, so it counts as 0.',
    ]);
    expect(column('money notes')).toEqual([['Money notes']]);
  });

  test('a figure that is refused blanks the row and is named in the notes; gaps of the plan are not repeated', () => {
    const cells = moneyCells(costBook());
    const place = cells.orders[0]?.indexOf('Discount') ?? -1;
    const orders = cells.orders.map((row, index) =>
      row.map((cell, at) => (index === 1 && at === place ? 'some' : cell)),
    );
    const shown = (name: string) =>
      POUR_MONEY.compute({ ...cells, orders }, { column: name }, 'US');
    expect(shown('cost')[1]).toEqual(['']);
    expect(shown('money notes')[1]).toEqual(['discount must be a number, got "some"']);
    const broken = withChange(DEMO.orders, 0, { mold: 'Minnow 9' });
    expect(column('money notes', { orders: broken })).toEqual([['Money notes']]);
    expect(column('cost', { orders: broken })[1]).toEqual(['']);
  });

  test('an older book without the new columns still has a cost, and an empty one its heading', () => {
    const cells = moneyCells(costBook());
    const typed = cells.orders[0]?.indexOf('Rush') ?? 0;
    const orders = cells.orders.map((row) => row.slice(0, typed));
    const older = { ...cells, orders, supplies: [], stockMoves: [] };
    expect(POUR_MONEY.compute(older, { column: 'cost' }, 'US')).toHaveLength(4);
    expect(POUR_MONEY.compute({}, { column: 'cost' }, 'US')).toEqual([['Cost']]);
  });

  test('1,000 orders over 5,000 log rows and 5,000 moves take well under a second', () => {
    const orders = Array.from({ length: 1000 }, (_, index) => ({
      ...DEMO.orders[index % DEMO.orders.length],
      order: String(index),
      quantity: 10 + (index % 300),
    }));
    const pourLog = Array.from({ length: 5000 }, (_, index) => ({
      ...DEMO.pourLog[index % DEMO.pourLog.length],
    }));
    const stockMoves = Array.from({ length: 5000 }, (_, index) => ({
      date: '2026-11-01',
      material: PRICED[index % PRICED.length]?.material ?? '',
      amount: index % 3 === 0 ? 50 : -10,
      reason: index % 3 === 0 ? ('purchase' as const) : ('used' as const),
      ...(index % 3 === 0 ? { money: 5 } : {}),
    }));
    const cells = moneyCells(costBook({ orders, pourLog, stockMoves }));
    const times = ['cost', 'quote price', 'margin'].map((name) => {
      const start = process.cpuUsage().user;
      expect(POUR_MONEY.compute(cells, { column: name }, 'US')).toHaveLength(1001);
      return (process.cpuUsage().user - start) / 1000; // [ms] of this process alone, whatever else the machine does
    });
    expect(Math.min(...times), `${times}`).toBeLessThan(1000); // the best of three: the first also compiles
  });
});
