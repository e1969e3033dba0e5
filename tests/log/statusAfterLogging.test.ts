import { describe, expect, test } from 'vitest';
import { ORDER_STATUSES } from '../../shared/book/tables/orders.ts';
import { statusAfterLogging, statusAfterPlanning } from '../../shared/log/statusAfterLogging.ts';

describe('statusAfterPlanning', () => {
  test.each([
    { status: undefined, after: 'planned' },
    { status: 'asked', after: 'planned' },
    { status: 'accepted', after: 'planned' },
    { status: 'planned', after: 'planned' },
    { status: 'poured', after: 'poured' },
    { status: 'packed', after: 'packed' },
    { status: 'shipped', after: 'shipped' },
    { status: 'canceled', after: 'canceled' },
  ] as const)('$status becomes $after', ({ status, after }) => {
    expect(statusAfterPlanning(status)).toBe(after);
  });
});

describe('statusAfterLogging', () => {
  test('is poured when the good pieces reach the quantity, not before', () => {
    expect(statusAfterLogging('planned', 39, 40)).toBe('planned');
    expect(statusAfterLogging('planned', 40, 40)).toBe('poured');
    expect(statusAfterLogging('accepted', 41, 40)).toBe('poured');
    expect(statusAfterLogging(undefined, 0, 40)).toBeUndefined();
  });

  test('never takes an order back, nor revives a canceled one', () => {
    const later = ORDER_STATUSES.slice(ORDER_STATUSES.indexOf('poured'));
    for (const status of later) expect(statusAfterLogging(status, 99, 1)).toBe(status);
  });
});
