import { describe, expect, test } from 'vitest';
import { MONEY_TABLES, readBook } from '../../shared/book/book.ts';

describe('readBook', () => {
  test('a book without supplies and moves has none, and nothing to mend', () => {
    const none = { shop: [], orders: [], molds: [], patterns: [], doses: [], materials: [] };
    const cells = { ...none, plates: [], pourLog: [], supplies: [], stockMoves: [] };
    const { supplies, stockMoves, problems } = readBook(MONEY_TABLES, cells);
    expect([supplies, stockMoves]).toEqual([[], []]);
    expect(problems.filter(({ sheet }) => ['Supplies', 'Stock moves'].includes(sheet))).toEqual([]);
    const typo = readBook(MONEY_TABLES, {
      ...cells,
      supplies: [
        ['Material', 'Amount', 'Per', 'Mold', 'Notes'],
        ['Bag', 0, 'box', '', ''],
      ],
    });
    expect(
      typo.problems
        .filter(({ sheet }) => sheet === 'Supplies')
        .map(({ row, heading }) => [row, heading]),
    ).toEqual([
      [2, 'Amount'],
      [2, 'Per'],
    ]);
  });
});
