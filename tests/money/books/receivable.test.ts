import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayAfter, daysBetween } from '../../../shared/book/reading/daysBetween.ts';
import { PAYMENT_KINDS } from '../../../shared/book/tables/payments.ts';
import { books } from '../../../shared/money/books/books.ts';
import { ageOf } from '../../../shared/money/books/receivable.ts';
import { booksBook, shipped } from './booksBook.ts';

const DAY = '2026-11-30';

describe('receivable', () => {
  test('deposits and payments count, refunds owe again, by days since the sale', () => {
    const orders = [
      shipped({ order: 'A', shippedOn: '2026-11-20', priceAgreed: 100, shipping: 10 }),
      shipped({ order: 'B', shippedOn: '2026-10-15', priceAgreed: 80 }),
      shipped({ order: 'C', shippedOn: '2026-08-01', priceAgreed: 60 }),
      shipped({ order: 'D', shippedOn: '2026-11-01', priceAgreed: 50 }),
    ];
    const payments = [
      { date: '2026-11-01', order: 'A', kind: 'deposit', money: 55 },
      { date: '2026-11-25', order: 'A', kind: 'payment', money: 20 },
      { date: '2026-11-26', order: 'A', kind: 'refund', money: 5 },
      { date: '2026-11-01', order: 'B', kind: 'payment', money: 80 },
      { date: '2026-11-01', order: 'd', kind: 'payment', money: 50.5 },
      { date: '2026-12-01', order: 'C', kind: 'payment', money: 60 },
      { date: '2026-11-28', order: '2041', kind: 'deposit', money: 40 },
    ] as const;
    const { receivable } = books(booksBook({ orders, payments }), DAY);
    expect(receivable.open.map(({ order, open, days }) => [order, open, days])).toEqual([
      ['C', 6000, 121],
      ['A', 4000, 10],
    ]);
    expect(receivable.byAge).toEqual({ '0-30': 4000, '31-60': 0, '61-90': 0, 'over 90': 6000 });
    expect(receivable.total).toBe(10_000);
    expect(receivable.overpaid.map(({ order, open }) => [order, open])).toEqual([['D', -50]]);
    expect(receivable.held).toEqual([{ order: '2041', paid: 4000 }]);
  });

  test.each([
    [0, '0-30'],
    [30, '0-30'],
    [31, '31-60'],
    [60, '31-60'],
    [61, '61-90'],
    [90, '61-90'],
    [91, 'over 90'],
  ])('%d days are %s', (days, age) => {
    expect(ageOf(days)).toBe(age);
  });

  test('open less overpaid less held is what was sold less what was paid', () => {
    const payment = fc.record({
      date: fc.constantFrom('2026-10-01', '2026-11-30'),
      order: fc.constantFrom('1', '2', '3', 'not sold'),
      kind: fc.constantFrom(...PAYMENT_KINDS),
      money: fc.integer({ min: 1, max: 30_000 }).map((cents) => cents / 100),
    });
    const orders = ['1', '2', '3'].map((order) => shipped({ order, shipping: 7.35 }));
    fc.assert(
      fc.property(fc.array(payment, { maxLength: 15 }), (payments) => {
        const { receivable, sales } = books(booksBook({ orders, payments }), DAY);
        const { open, overpaid, byAge, total, heldTotal } = receivable;
        const paid = payments.reduce(
          (sum, { kind, money }) => sum + (kind === 'refund' ? -1 : 1) * Math.round(money * 100),
          0,
        );
        const sold = sales.reduce((sum, sale) => sum + sale.total, 0);
        const owed = [...open, ...overpaid].reduce((sum, one) => sum + one.open, 0);
        expect(owed - heldTotal).toBe(sold - paid);
        expect(Object.values(byAge).reduce((sum, one) => sum + one, 0)).toBe(total);
      }),
      { numRuns: 50 },
    );
  }, 30_000);

  test('payments that lack something or name no order are told', () => {
    const payments = [
      { date: '2026-11-01', order: 'nobody', kind: 'deposit', money: 5 },
      { date: '2026-11-01', order: '1', money: 5 },
    ] as const;
    const { problems } = books(booksBook({ orders: [shipped()], payments }), DAY);
    expect(problems).toEqual([
      { sheet: 'Payments', row: 3, heading: 'Kind', text: 'kind must be given' },
      {
        sheet: 'Payments',
        row: 2,
        heading: 'Order',
        text: 'order must be listed in Orders, got "nobody"',
      },
    ]);
  });

  test('days go over months, leap days and years', () => {
    expect(daysBetween('2028-02-28', '2028-03-01')).toBe(2);
    expect(daysBetween('2026-12-31', '2027-01-01')).toBe(1);
    expect(dayAfter('2026-12-25', 14)).toBe('2027-01-08');
  });
});
