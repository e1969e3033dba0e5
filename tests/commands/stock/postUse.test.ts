import { describe, expect, test } from 'vitest';
import { memoryBook } from '../memoryBook.ts';

describe('postUse', () => {
  test('writes what a logged run takes once, however often it is asked', () => {
    const book = memoryBook();
    const before = book.rows('stockMoves').length;
    const payload = {
      order: '1005',
      run: 'R-1005',
      amounts: { blue: '0.02' },
      scrapped: { black: '0.5' },
    };
    const posted = book.ask('postUse', payload);
    expect(posted).toMatchObject({ kind: 'ok', posted: 'now', negative: [] });
    const added = book.rows('stockMoves').slice(before);
    expect(added.map((row) => [row['Material'], row['Reason']])).toEqual([
      ['Blue', 'used'],
      ['Fine silver glitter', 'used'],
      ['Black', 'used'],
      ['Black', 'scrapped'],
      ['Zip bag, 4 x 6 in', 'used'],
      ['Bag label', 'used'],
    ]);
    expect(posted).toMatchObject({ rows: added.map((_row, index) => before + 2 + index) });
    expect(book.ask('postUse', payload)).toMatchObject({ kind: 'ok', posted: 'before', rows: [] });
    expect(book.rows('stockMoves')).toHaveLength(before + added.length);
  });

  test('writes nothing where a column is gone', () => {
    const book = memoryBook();
    book.dropColumn('stockMoves', 'Entry');
    expect(book.ask('postUse', { order: '1005', run: 'R-1005' })).toEqual({
      kind: 'refused',
      problems: [
        {
          field: '',
          text: 'Stock moves lacks a readable column for Entry: choose Poursmith > Set up this workbook.',
        },
      ],
    });
    expect(book.blocks).toEqual([]);
  });
});
