import { describe, expect, test } from 'vitest';
import type { OrderRecord } from '../../../shared/book/tables.ts';
import { acceptance } from '../../../shared/money/quote/acceptance.ts';
import type { QuoteRecord } from '../../../shared/money/quote/quoteOf.ts';
import { whyNotQuotable } from '../../../shared/money/quote/whyNotQuotable.ts';
import { demoMoneyBook } from '../stock/demoMoneyBook.ts';

const QUOTED: QuoteRecord = Object.freeze({
  quote: 'Q-2026-001',
  order: '1013',
  quotedOn: '2026-11-30',
  validUntil: '2026-12-30',
  mold: 'Round stick 5 in',
  pattern: 'Dusk line',
  version: 2,
  quantity: 50,
  shipping: 9.5,
  price: 105,
});
const ORDER: OrderRecord = Object.freeze({
  order: '1013',
  mold: 'round stick 5 in',
  pattern: 'Dusk line',
  quantity: 50,
  shipping: 9.5,
  status: 'asked',
  quote: 'Q-2026-001',
  validUntil: '2026-12-30',
});

function accept(
  change: Partial<OrderRecord>,
  day = '2026-12-01',
  quoted: readonly QuoteRecord[] = [QUOTED],
) {
  const book = {
    ...demoMoneyBook(),
    quotes: quoted.map((record, index) => ({ row: index + 2, record })),
  };
  return acceptance(book, { row: 14, record: { ...ORDER, ...change } }, day);
}

function because(found: ReturnType<typeof accept>): string {
  return found.kind === 'not now' ? found.because : found.kind;
}

describe('acceptance', () => {
  test('fixes price, pattern version, day and status', () => {
    expect(accept({})).toEqual({
      kind: 'accept',
      quote: 'Q-2026-001',
      price: 105,
      cells: { version: 2, priceAgreed: 105, acceptedOn: '2026-12-01', status: 'accepted' },
    });
  });

  test('holds on the last day, and one day later no more', () => {
    expect(accept({}, '2026-12-30').kind).toBe('accept');
    expect(because(accept({}, '2026-12-31'))).toBe(
      'Quote Q-2026-001 was valid until 2026-12-30: make the quote again before it is accepted.',
    );
  });

  test('the shop may let an offer stand longer, in the order’s row', () => {
    expect(accept({ validUntil: '2027-01-15' }, '2027-01-10').kind).toBe('accept');
  });

  test('an order that is further on keeps its status', () => {
    expect(accept({ status: 'planned' })).toMatchObject({ cells: { status: 'planned' } });
  });

  test('a second acceptance is told from the first', () => {
    expect(accept({ acceptedOn: '2026-11-30' })).toEqual({
      kind: 'before',
      acceptedOn: '2026-11-30',
    });
  });

  test.each([
    [{ status: 'canceled' }, 'Order 1013 is canceled: set its status to asked, then make a quote.'],
    [{ quote: undefined }, 'Order 1013 has no quote yet: make one first.'],
    [
      { quote: 'Q-7' },
      'The price of quote Q-7 of order 1013 cannot be read from Quotes: make the quote again.',
    ],
    [
      { quantity: 60 },
      'Order 1013 was changed after quote Q-2026-001: quantity is 60 now and was 50. Make the quote again.',
    ],
    [
      { version: 3 },
      'Order 1013 was changed after quote Q-2026-001: version is 3 now and was 2. Make the quote again.',
    ],
    [
      { discount: 0.1 },
      'Order 1013 was changed after quote Q-2026-001: discount is 0.1 now and was blank. Make the quote again.',
    ],
    [
      { priceAgreed: 99 },
      'Order 1013 has 99 as price agreed, and quote Q-2026-001 says 105: clear Price agreed in Orders, or make the quote again.',
    ],
  ] as const)('%j cannot be accepted, and a sentence says why', (change, text) => {
    expect(because(accept(change))).toBe(text);
  });

  test('the last quote of a number counts, and none of another order', () => {
    const again = { ...QUOTED, price: 120 };
    expect(accept({}, '2026-12-01', [QUOTED, again])).toMatchObject({ price: 120 });
    expect(because(accept({}, '2026-12-01', [{ ...QUOTED, order: '1009' }]))).toMatch(
      /cannot be read/,
    );
  });
});

describe('whyNotQuotable', () => {
  test.each([
    [{ order: '7' }, undefined],
    [{ order: '7', status: 'planned' }, undefined],
    [
      { order: '7', acceptedOn: '2026-12-01' },
      'Order 7 was accepted on 2026-12-01 at its price agreed: clear Accepted on and Price agreed in Orders to quote it anew.',
    ],
    [
      { order: '7', status: 'canceled' },
      'Order 7 is canceled: set its status to asked to quote it.',
    ],
    [
      { order: '7', status: 'shipped' },
      'Order 7 is shipped already, so it is not quoted any more.',
    ],
  ] as const)('%j', (record, text) => {
    expect(whyNotQuotable(record)).toBe(text);
  });
});
