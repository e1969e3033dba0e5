import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { daysLater, nextOrder, nextQuote } from '../../../shared/money/quote/nextQuote.ts';

describe('nextQuote', () => {
  test.each([
    [[], 'Q-2026-001'],
    [['Q-1001', undefined, 'mine'], 'Q-2026-001'],
    [['Q-2026-001', 'q-2026-009 ', 'Q-2025-077'], 'Q-2026-010'],
    [['Q-2026-999'], 'Q-2026-1000'],
  ])('after %j comes %s', (taken, next) => {
    expect(nextQuote(taken, '2026-12-01')).toBe(next);
  });

  test('a number is never given twice', () => {
    const taken = fc.array(fc.integer({ min: 1, max: 5000 }));
    fc.assert(
      fc.property(taken, (counts) => {
        const numbers = counts.map((count) => `Q-2026-${String(count).padStart(3, '0')}`);
        expect(numbers).not.toContain(nextQuote(numbers, '2026-01-01'));
      }),
    );
  });
});

describe('nextOrder', () => {
  test.each([
    [[], '1'],
    [['1001', ' 1012 ', 'A-7', undefined], '1013'],
  ])('after %j comes %s', (taken, next) => {
    expect(nextOrder(taken)).toBe(next);
  });
});

describe('daysLater', () => {
  test.each([
    ['2026-12-01', 30, '2026-12-31'],
    ['2028-02-28', 1, '2028-02-29'],
    ['2026-12-31', 365, '2027-12-31'],
  ])('%s and %i days is %s', (day, days, later) => {
    expect(daysLater(day, days)).toBe(later);
  });
});
