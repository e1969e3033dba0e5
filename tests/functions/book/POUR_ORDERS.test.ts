import { describe, expect, test } from 'vitest';
import type { Column } from '../../../shared/book/column.ts';
import { headingOf } from '../../../shared/book/reading/headingOf.ts';
import { ORDERS } from '../../../shared/book/tables/orders.ts';
import { POUR_ORDERS } from '../../../shared/functions/book/POUR_ORDERS.ts';
import { ORDERS_COLUMNS } from '../../../shared/plan/ordersColumn.ts';
import { planOrder } from '../../../shared/plan/planOrder.ts';
import { bookCells } from '../../book/bookCells.ts';
import { DEMO, type DemoChanges, demoBook, withChange } from '../../book/demoBook.ts';

function column(name: string, changes: DemoChanges = {}) {
  return POUR_ORDERS.compute(bookCells(demoBook(changes)), { column: name }, 'US');
}

describe('POUR_ORDERS', () => {
  test('takes its ranges in the order of the sheets of a plan', () => {
    expect(Object.keys(POUR_ORDERS.params)).toEqual([
      'column',
      'orders',
      'molds',
      'patterns',
      'doses',
      'materials',
      'plates',
      'pourLog',
      'shop',
    ]);
  });

  test('offers exactly the computed columns that Orders declares, but for those of money', () => {
    const columns: readonly Column[] = Object.values(ORDERS.columns);
    const declared = columns.filter((one) => one.kind === 'computed' && one.by !== 'money');
    expect(declared.map((one) => one.heading.toLowerCase())).toEqual([...ORDERS_COLUMNS]);
  });

  test('begins every column with its heading, plastisol with the shop’s unit', () => {
    const headings = ORDERS_COLUMNS.map((name) => column(name)[0]?.[0]);
    expect(headings).toEqual([
      'Pieces to pour',
      'Rounds',
      'Plastisol (fl oz)',
      'Cups',
      'Plate on',
      'Minutes of work',
      'Warnings',
    ]);
    expect(column('plastisol', { shop: { units: 'metric' } })[0]).toEqual(['Plastisol (mL)']);
    expect(headingOf(ORDERS.columns.cups, 'US')).toBe('Cups');
  });

  test('shows the same figures as the plan of each row, read from cells in user units', () => {
    const plans = ['2041', '2042', '2043'].map((order) => planOrder(demoBook(), order));
    const pieces = plans.map((plan) => (plan.kind === 'plan' ? [plan.pieces.toPour] : ['']));
    expect(column('pieces to pour').slice(1)).toEqual(pieces);
    const rounds = plans.map((plan) => (plan.kind === 'plan' ? [plan.pieces.rounds] : ['']));
    expect(column('rounds').slice(1)).toEqual(rounds);
    const cups = plans.map((plan) => (plan.kind === 'plan' ? [plan.cups] : ['']));
    expect(column('cups').slice(1)).toEqual(cups);
    const work = plans.map((plan) =>
      plan.kind === 'plan' ? [Math.ceil(plan.minutesOfWork)] : [''],
    );
    expect(column('minutes of work').slice(1)).toEqual(work);
  });

  test('rounds plastisol up to a tenth, so that what is shown is enough', () => {
    const plan = planOrder(demoBook(), '2041');
    if (plan.kind === 'missing') throw new Error('no plan');
    const needed = plan.plastisolVolume / 2.95735295625e-5; // fluid ounce, HB44
    expect(column('plastisol')[1]?.[0]).toBe(Math.ceil(needed * 10) / 10);
  });

  test('the plate goes on at a clock time, or so long before the first pour', () => {
    expect(column('plate on').slice(1)).toEqual([
      ['9:04 am'],
      ['36 min before the first pour'],
      ['25 min before the first pour'],
    ]);
    expect(column('plate on', { shop: { units: 'metric' } })[1]).toEqual(['9:06']);
  });

  test('a plate that cannot make it leaves its cell blank and says why in the warnings', () => {
    const plates = withChange(DEMO.plates, 0, { highestSetting: 105 });
    expect(column('plate on', { plates })).toEqual([['Plate on']]);
    expect(column('warnings', { plates })[1]?.[0]).toMatch(
      /^The mold will not get hot enough: at the highest setting/,
    );
  });

  test('a row with something missing has blank figures and a sentence with its place', () => {
    const orders = withChange(DEMO.orders, 1, { mold: 'Minnow 9', quantity: undefined });
    expect(column('cups', { orders })[2]).toEqual(['']);
    expect(column('warnings', { orders })[2]).toEqual([
      'Orders row 3: quantity must be given, got nothing; Orders row 3: mold must be listed in Molds, got "Minnow 9"',
    ]);
  });

  test('blank rows stay blank and trailing ones are left off', () => {
    const cells = bookCells(demoBook());
    const blank = cells.orders[0]?.map(() => '') ?? [];
    const [head = [], first = [], ...rest] = cells.orders;
    const orders = [head, blank, first, blank, ...rest, blank, blank];
    const spill = POUR_ORDERS.compute({ ...cells, orders }, { column: 'rounds' }, 'US');
    expect(spill.map(([cell]) => cell)).toEqual(['Rounds', '', 3, '', 8, 2]);
  });

  test('an empty book is its heading', () => {
    expect(column('cups', { orders: [] })).toEqual([['Cups']]);
    expect(POUR_ORDERS.compute({}, { column: 'cups' }, 'US')).toEqual([['Cups']]);
  });

  test('1,000 orders over 5,000 log rows take well under a second', () => {
    const orders = Array.from({ length: 1000 }, (_, index) => ({
      ...DEMO.orders[index % DEMO.orders.length],
      order: String(index),
      quantity: 10 + (index % 300),
    }));
    const pourLog = Array.from({ length: 5000 }, (_, index) => ({
      ...DEMO.pourLog[index % DEMO.pourLog.length],
    }));
    const cells = bookCells(demoBook({ orders, pourLog }));
    const times = ['cups', 'warnings', 'plastisol'].map((name) => {
      const start = process.cpuUsage().user;
      expect(POUR_ORDERS.compute(cells, { column: name }, 'US')).toHaveLength(1001);
      return (process.cpuUsage().user - start) / 1000; // [ms] of this process alone, whatever else the machine does
    });
    expect(Math.min(...times)).toBeLessThan(1000); // the best of three: the first also compiles
  });
});
