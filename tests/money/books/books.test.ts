import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { ClosedMonthRecord, OrderRecord } from '../../../shared/book/tables.ts';
import { books } from '../../../shared/money/books/books.ts';
import type { Books, MoneySums, Sale } from '../../../shared/money/books/booksTypes.ts';
import type { ExciseSums } from '../../../shared/money/excise/exciseQuarters.ts';
import { booksBook, closedRow, monthOf, shipped } from './booksBook.ts';

const DAY = '2027-03-15';

/** Orders shipped in 2025 to 2027, taxed in every way, with prices to the cent. */
const ORDERS: fc.Arbitrary<readonly OrderRecord[]> = fc
  .array(
    fc.record({
      shippedOn: fc
        .integer({ min: 0, max: 790 })
        .map((days) => new Date(Date.UTC(2025, 0, 1 + days)).toISOString().slice(0, 10)),
      priceAgreed: fc.integer({ min: 0, max: 200_000 }).map((cents) => cents / 100),
      shipping: fc.option(
        fc.integer({ min: 0, max: 3000 }).map((cents) => cents / 100),
        {
          nil: undefined,
        },
      ),
      saleKind: fc.constantFrom('wholesale' as const, 'retail' as const, undefined),
      exciseStatus: fc.constantFrom(
        ...(['taxable', 'exempt', 'export', 'further manufacture', undefined] as const),
      ),
      quantity: fc.constantFrom(12, 24, 40),
    }),
    { maxLength: 12 },
  )
  .map((orders) => orders.map((order, index) => shipped({ ...order, order: String(index + 1) })));

const SHOPS = fc.record({
  exciseIn: fc.constantFrom('inside the price' as const, 'added to the price' as const),
  exciseBase: fc.constantFrom('sale price' as const, 'constructive price' as const),
  salesTaxRate: fc.constantFrom(0, 0.06),
  excise: fc.constantFrom('on' as const, 'off' as const),
});

function total<Item>(items: readonly Item[], amount: (item: Item) => number): number {
  return items.reduce((sum, item) => sum + amount(item), 0);
}

const MONEY = ['sales', 'costOfGoods', 'margin', 'exciseBase', 'exciseTax'] as const;

function amountsOf(sale: Sale): Record<(typeof MONEY)[number], number> {
  const { sales, cost, margin, excise } = sale;
  return {
    sales,
    costOfGoods: cost.total,
    margin,
    exciseBase: excise.base,
    exciseTax: excise.tax,
  };
}

function expectSums(parts: readonly MoneySums[], whole: readonly MoneySums[]): void {
  for (const key of [...MONEY, 'orders'] as const)
    expect(total(whole, (one) => one[key])).toBe(total(parts, (one) => one[key]));
}

describe('the books add up to the smallest unit', () => {
  test('orders to their month, months to their year', () => {
    fc.assert(
      fc.property(ORDERS, SHOPS, (orders, shop) => {
        const found = books(booksBook({ orders, shop }), DAY);
        expect(found.problems).toEqual([]);
        expect(found.sales).toHaveLength(orders.length);
        for (const figures of found.months) {
          const own = found.sales.filter(({ month }) => month === figures.month);
          expect(figures.orders).toBe(own.length);
          for (const key of MONEY)
            expect(figures[key]).toBe(total(own, (sale) => amountsOf(sale)[key]));
        }
        for (const year of found.years)
          expectSums(
            found.months.filter(({ month }) => month.startsWith(String(year.year))),
            [year],
          );
        expectSums(found.months, found.years);
      }),
      { numRuns: 25 },
    );
  }, 30_000);

  test('quarters to their year, and the tax of every sale is in one', () => {
    fc.assert(
      fc.property(ORDERS, SHOPS, (orders, shop) => {
        const { sales, quarters, exciseYears } = books(booksBook({ orders, shop }), DAY);
        const keys = ['sales', 'gross', 'taxed', 'base', 'tax'] as const;
        for (const key of keys)
          expect(total(exciseYears, (one) => one[key])).toBe(total(quarters, (one) => one[key]));
        expect(total(quarters, ({ tax }) => tax)).toBe(total(sales, ({ excise }) => excise.tax));
        expect(total(quarters, ({ gross }) => gross)).toBe(total(sales, ({ goods }) => goods));
        for (const one of quarters) expect(one.gross).toBe(one.taxed + untaxedOf(one));
      }),
      { numRuns: 25 },
    );
  }, 30_000);

  test('what a customer owes is price, excise added, shipping and sales tax; sales are the price less the excise inside', () => {
    fc.assert(
      fc.property(ORDERS, SHOPS, (orders, shop) => {
        for (const sale of books(booksBook({ orders, shop }), DAY).sales) {
          const { goods, excise, shipping, salesTax, cost } = sale;
          expect(sale.total).toBe(goods + excise.added + shipping + salesTax);
          expect(sale.sales).toBe(goods - excise.inside);
          expect(sale.margin).toBe(sale.sales - cost.total);
          expect(cost.total).toBe(cost.stock + cost.unposted + cost.making);
        }
      }),
      { numRuns: 25 },
    );
  }, 30_000);

  test('closed months with their corrections are what the orders say now, by year and in the tax', () => {
    fc.assert(
      fc.property(ORDERS, ORDERS, (before, after) => {
        const book = booksBook({ orders: before });
        const months = books(book, DAY).months.map(({ month }) => month);
        const over = months.filter((month) => month < DAY.slice(0, 7));
        const rows: ClosedMonthRecord[] = [];
        for (const month of over.slice(0, 3))
          rows.push(closedRow(booksBook({ orders: before, closedMonths: rows }), month, DAY));
        const now = books(booksBook({ orders: after, closedMonths: rows }), DAY);
        for (const key of MONEY) {
          const shown = total(now.years, (year) => year[key] + year.corrections[key]);
          expect(shown).toBe(total(now.sales, (sale) => amountsOf(sale)[key]));
        }
        for (const row of rows)
          expect(monthOf(now, row.month ?? '')).toMatchObject({
            state: 'closed',
            sales: Math.round((row.sales ?? 0) * 100),
            exciseTax: Math.round((row.exciseTax ?? 0) * 100),
          });
        const taxed = total(now.quarters, ({ tax, adjustments }) => tax + adjustments.tax);
        expect(taxed).toBe(total(now.sales, ({ excise }) => excise.tax));
        const sold = total(now.quarters, ({ gross, adjustments }) => gross + adjustments.price);
        expect(sold).toBe(total(now.sales, ({ goods }) => goods));
      }),
      { numRuns: 15 },
    );
  }, 30_000);
});

function untaxedOf({ untaxed }: ExciseSums): number {
  return total(Object.values(untaxed), (minor) => minor);
}

function onlySale(found: Books): Sale {
  expect(found.problems).toEqual([]);
  expect(found.sales).toHaveLength(1);
  const [sale] = found.sales;
  if (sale === undefined) throw new Error('no sale');
  return sale;
}

describe('the cost of goods of an order', () => {
  const bought = (material: string, amount: number, money: number) =>
    ({ date: '2026-10-01', material, amount, money, reason: 'purchase' }) as const;

  test('is as planned where nothing was posted', () => {
    const { cost } = onlySale(books(booksBook({ orders: [shipped()] }), DAY));
    expect(cost).toMatchObject({ basis: 'planned', stock: 0 });
    expect(cost.unposted).toBeGreaterThan(0);
    expect(cost.making).toBeGreaterThan(0);
  });

  test('takes what was used and scrapped for it at the weighted average, and the plan for the rest', () => {
    const planned = onlySale(books(booksBook({ orders: [shipped()] }), DAY)).cost;
    const stockMoves = [
      bought('Zip bag', 100, 6),
      bought('Zip bag', 100, 10),
      { date: '2026-11-09', material: 'Zip bag', amount: -3, reason: 'used', order: '1' },
      { date: '2026-11-09', material: 'Zip bag', amount: -2, reason: 'scrapped', order: '1' },
      { date: '2026-11-09', material: 'Zip bag', amount: -50, reason: 'used', order: '77' },
    ] as const;
    const { cost } = onlySale(books(booksBook({ orders: [shipped()], stockMoves }), DAY));
    // Five bags at 16 for 200.
    expect(cost).toMatchObject({ basis: 'partly posted', stock: 40, making: planned.making });
    // Three bags for 24 pieces in packs of ten were planned at 6 for 100.
    expect(planned.unposted - cost.unposted).toBe(18);
  });

  test('is of stock alone, and says so, where the order has no plan', () => {
    const orders = [shipped({ pattern: 'Nobody knows' })];
    const alone = onlySale(books(booksBook({ orders }), DAY)).cost;
    expect(alone).toEqual({ basis: 'unknown', stock: 0, unposted: 0, making: 0, total: 0 });
    const stockMoves = [
      bought('Zip bag', 100, 6),
      { date: '2026-11-09', material: 'Zip bag', amount: -5, reason: 'used', order: ' 1 ' },
    ] as const;
    const { cost } = onlySale(books(booksBook({ orders, stockMoves }), DAY));
    expect(cost).toEqual({ basis: 'stock only', stock: 30, unposted: 0, making: 0, total: 30 });
  });

  test('leaves out what left stock for no order; the month names it', () => {
    const stockMoves = [
      bought('Zip bag', 100, 6),
      { date: '2026-11-09', material: 'Zip bag', amount: 90, reason: 'counted' },
      { date: '2026-11-12', material: 'Zip bag', amount: -5, reason: 'scrapped' },
    ] as const;
    const found = books(booksBook({ orders: [shipped()], stockMoves }), DAY);
    expect(onlySale(found).cost.stock).toBe(0);
    expect(monthOf(found, '2026-11').otherStock).toBe(90);
  });
});

describe('a shipped order is left out and named', () => {
  test.each([
    [
      'a canceled one',
      shipped({ status: 'canceled' }),
      'Status',
      'order 1 is canceled and was shipped, so it is not in the books',
    ],
    [
      'one without a price',
      shipped({ priceAgreed: undefined }),
      'Price agreed',
      'order 1 was shipped without a price, so it is not in the books',
    ],
    [
      'one without a number',
      shipped({ order: undefined }),
      'Order',
      'this row was shipped without an order number, so it is not in the books',
    ],
    [
      'one with a price past all sense',
      shipped({ priceAgreed: 1e13 }),
      'Price agreed',
      'price agreed must be at most 100000000000, got 10000000000000, so the order is not in the books',
    ],
  ])('%s', (_, order, heading, text) => {
    const found = books(booksBook({ orders: [order] }), DAY);
    expect(found.sales).toEqual([]);
    expect(found.problems).toEqual([{ sheet: 'Orders', row: 2, heading, text }]);
  });

  test('the second of a number, and one in the future is in but named', () => {
    const orders = [shipped({ shippedOn: '2027-04-01' }), shipped()];
    const found = books(booksBook({ orders }), DAY);
    expect(found.sales.map(({ row }) => row)).toEqual([2]);
    expect(found.problems.map(({ text }) => text)).toEqual([
      'order 1 is there twice, so this row is not in the books',
      'order 1 is shipped on 2027-04-01, which is still to come',
    ]);
  });
});
