import { describe, expect, test } from 'vitest';
import { books } from '../../../shared/money/books/books.ts';
import { closingChangeText } from '../../../shared/money/books/closingChangeText.ts';
import { frozenOrders, frozenText } from '../../../shared/money/books/frozenOrders.ts';
import { monthToClose, nextToClose } from '../../../shared/money/books/monthToClose.ts';
import { booksBook, closedRow, monthOf, shipped } from './booksBook.ts';

const DAY = '2027-02-03';
const ORDERS = [
  shipped({ order: '1005', shippedOn: '2026-11-10' }),
  shipped({ order: '1006', shippedOn: '2026-11-20', priceAgreed: 90 }),
  shipped({ order: '1007', shippedOn: '2026-12-02' }),
];

function asked(month: string, day = DAY, closedMonths = {}) {
  const book = booksBook({ orders: ORDERS, ...closedMonths });
  return monthToClose(book, books(book, day), { month, who: 'AK' });
}

describe('closing a month', () => {
  test.each([
    ['not a month', 'November', DAY, 'month must be a month such as 2026-11, got "November"'],
    ['thirteen', '2026-13', DAY, 'month must be a month such as 2026-11, got "2026-13"'],
    [
      'not over',
      '2026-12',
      '2026-12-31',
      '2026-12 is not over: it can be closed from 2027-01-01 on',
    ],
    ['no sales', '2026-08', DAY, '2026-08 has no sales to close'],
    [
      'an earlier one is open',
      '2026-12',
      DAY,
      '2026-11 has sales and is not closed yet: close it first',
    ],
  ])('is refused: %s', (_, month, day, text) => {
    expect(asked(month, day)).toEqual({ kind: 'refused', field: 'month', text });
  });

  test('freezes sums, stock at the end of the month and each order', () => {
    const stockMoves = [
      { date: '2026-11-01', material: 'Zip bag', amount: 100, money: 6, reason: 'purchase' },
      { date: '2026-11-10', material: 'Zip bag', amount: -10, reason: 'used', order: '1005' },
      { date: '2026-12-01', material: 'Zip bag', amount: -40, reason: 'used', order: '1007' },
    ] as const;
    const book = booksBook({ orders: ORDERS, stockMoves });
    const row = closedRow(book, '2026-11', DAY);
    expect(row).toMatchObject({
      entry: 'closed 2026-11',
      month: '2026-11',
      closedOn: DAY,
      who: 'AK',
      // 210 holds its tenth: 210 / 1.1, each order rounded by itself.
      sales: 190.91,
      exciseBase: 190.91,
      exciseTax: 19.09,
      stockValue: 5.4,
    });
    expect(frozenOrders(row.orders)?.map(({ order, sales }) => [order, sales])).toEqual([
      ['1005', 10_909],
      ['1006', 8182],
    ]);
  });

  test('is not done twice', () => {
    const closedMonths = [closedRow(booksBook({ orders: ORDERS }), '2026-11', DAY)];
    expect(asked('2026-11', DAY, { closedMonths })).toEqual({ kind: 'closed' });
  });

  test('the next is the first that is over and open', () => {
    expect(nextToClose(books(booksBook({ orders: ORDERS }), '2026-12-15'))).toBe('2026-11');
    const closedMonths = [closedRow(booksBook({ orders: ORDERS }), '2026-11', DAY)];
    const book = booksBook({ orders: ORDERS, closedMonths });
    expect(nextToClose(books(book, '2026-12-15'))).toBeUndefined();
    expect(nextToClose(books(book, '2027-01-01'))).toBe('2026-12');
  });
});

describe('a closed month', () => {
  const closedMonths = [closedRow(booksBook({ orders: ORDERS }), '2026-11', DAY)];
  const before = monthOf(books(booksBook({ orders: ORDERS, closedMonths }), DAY), '2026-11');

  test('keeps its figures after an order was changed, and names the difference and the order', () => {
    const orders = ORDERS.map((order) =>
      order.order === '1006' ? { ...order, priceAgreed: 103.75 } : order,
    );
    const found = books(booksBook({ orders, closedMonths }), DAY);
    const { since, ...figures } = monthOf(found, '2026-11');
    const { since: untouched, ...frozen } = before;
    expect(untouched && closingChangeText(untouched, 'USD')).toBe('');
    expect(figures).toEqual(frozen);
    expect(since && closingChangeText(since, 'USD')).toBe(
      'since closing: +$12.50 sales, +$12.50 margin, +$12.50 excise base, +$1.25 excise tax, order 1006 changed',
    );
    // The fourth quarter was filed as it was; the first of the next year holds the correction.
    const [fourth, first] = found.quarters;
    expect(fourth).toMatchObject({ year: 2026, quarter: 4, tax: 3000, adjustments: { count: 0 } });
    expect(first).toMatchObject({
      year: 2027,
      quarter: 1,
      sales: 0,
      tax: 0,
      adjustments: { count: 1, price: 1375, base: 1250, tax: 125 },
    });
  });

  test('keeps an order that left it, and one that came in is no part of it', () => {
    const orders = [
      shipped({ order: '1005', shippedOn: '2026-12-10' }),
      ...ORDERS.slice(1),
      shipped({ order: '1008', shippedOn: '2026-11-05' }),
    ];
    const { since, ...figures } = monthOf(
      books(booksBook({ orders, closedMonths }), DAY),
      '2026-11',
    );
    const { since: _, ...frozen } = before;
    expect(figures).toEqual(frozen);
    expect(since?.orders).toEqual(['1008', '1005']);
  });

  test('an order that is taxed otherwise since is taken back whole and entered anew', () => {
    const orders = ORDERS.map((order) =>
      order.order === '1006' ? { ...order, exciseStatus: 'export' as const } : order,
    );
    const [fourth, first] = books(booksBook({ orders, closedMonths }), DAY).quarters;
    expect(fourth).toMatchObject({ tax: 3000, untaxed: { export: 0 } });
    expect(first?.adjustments).toEqual({ count: 2, price: 0, base: -8182, tax: -818 });
  });

  test('whose row was spoiled by hand still counts by its sums, or is named', () => {
    const [row] = closedMonths;
    const spoiled = books(
      booksBook({ orders: ORDERS, closedMonths: [{ ...row, orders: '[["1005"]]' }] }),
      DAY,
    );
    const { since } = monthOf(spoiled, '2026-11');
    expect(since).not.toHaveProperty('orders');
    const twice = booksBook({
      orders: ORDERS,
      closedMonths: [
        { ...row },
        { ...row, sales: 1 },
        { month: 'soon' },
        { month: '2026-12', sales: 1e12 },
      ],
    });
    const found = books(twice, DAY);
    expect(monthOf(found, '2026-11').sales).toBe(19_091);
    expect(found.problems).toEqual([
      {
        sheet: 'Closed months',
        row: 3,
        heading: 'Month',
        text: '2026-11 is closed in row 2 already',
      },
      { sheet: 'Closed months', row: 4, heading: 'Month', text: 'must be a month such as 2026-11' },
      {
        sheet: 'Closed months',
        row: 5,
        heading: 'Month',
        text: 'must be followed by amounts that make sense',
      },
    ]);
  });
});

describe('orders frozen as text', () => {
  test('come back as they were, whatever they are called', () => {
    const orders = ['=1+1', '"', "',\n", 'Ä 7'].map((order) => shipped({ order }));
    const { sales } = books(booksBook({ orders }), DAY);
    const back = frozenOrders(frozenText(sales));
    expect(back?.map(({ order, goods, sales: net }) => [order, goods, net])).toEqual(
      sales.map(({ order, goods, sales: net }) => [order, goods, net]),
    );
  });

  test('that are too long for a cell are left out, and so the month is kept by its sums', () => {
    const orders = Array.from({ length: 900 }, (_, index) => shipped({ order: `Order ${index}` }));
    const { orders: kept, notes, sales } = closedRow(booksBook({ orders }), '2026-11', DAY);
    expect(kept).toBeUndefined();
    expect(notes).toBe('Too many orders to list: later changes show in the sums only.');
    expect(sales).toBe(900 * 109.09);
  });

  test.each([
    '',
    '{}',
    '[1]',
    'null',
    '[["1","2026-11-10",1,1,1,1,1,0.1,"free"]]',
    '[["1","soon",1,1,1,1,1,0.1,"taxable"]]',
    '[["1","2026-11-10",1.5,1,1,1,1,0.1,"taxable"]]',
  ])('are not made of %s', (text) => {
    expect(frozenOrders(text)).toBeUndefined();
  });
});
