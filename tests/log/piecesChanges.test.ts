import { describe, expect, test } from 'vitest';
import type { Book } from '../../shared/book/book.ts';
import { piecesChanges } from '../../shared/log/piecesChanges.ts';
import { planOrder } from '../../shared/plan/planOrder.ts';
import { demoBook } from '../book/demoBook.ts';

/** Orders 2041 (40 pieces) and 2043 (12 pieces) share mold and pattern; 2042 does not. */
const BEFORE = demoBook();

function withRound(good: number, poured: number): Book {
  const record = { mold: 'Ribbed 4 in', pattern: 'Creek minnow', order: '2041', good, poured };
  return { ...BEFORE, pourLog: [...BEFORE.pourLog, { row: 900, record }] };
}

function toPour(book: Book, order: string): number {
  const plan = planOrder(book, order);
  if (plan.kind !== 'plan') throw new Error(`order ${order} has no plan`);
  return plan.pieces.toPour;
}

describe('piecesChanges', () => {
  test('names every open order of the mold and pattern, with the pieces that its plan asks for', () => {
    const after = withRound(4, 16);
    expect(piecesChanges(BEFORE, after, '2041')).toEqual(
      ['2041', '2043'].map((order) => ({
        order,
        quantity: order === '2041' ? 40 : 12,
        before: toPour(BEFORE, order),
        after: toPour(after, order),
      })),
    );
  });

  test('a bad round asks for more pieces, a good one for no more', () => {
    const [bad] = piecesChanges(BEFORE, withRound(4, 16), '2041');
    const [good] = piecesChanges(BEFORE, withRound(16, 16), '2041');
    expect(bad?.after).toBeGreaterThan(bad?.before ?? Number.POSITIVE_INFINITY);
    expect(good?.after).toBeLessThanOrEqual(good?.before ?? 0);
  });

  test('leaves out orders that are done with, but not the own one', () => {
    const done = (book: Book): Book => ({
      ...book,
      orders: book.orders.map(({ row, record }) => ({
        row,
        record: { ...record, status: 'shipped' },
      })),
    });
    const changes = piecesChanges(done(BEFORE), done(withRound(4, 16)), '2041');
    expect(changes.map(({ order }) => order)).toEqual(['2041']);
  });

  test('is empty for an order that is not in the book', () => {
    expect(piecesChanges(BEFORE, withRound(4, 16), '9')).toEqual([]);
  });
});
