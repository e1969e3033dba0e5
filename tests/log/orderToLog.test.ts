import { describe, expect, test } from 'vitest';
import { goodSoFar } from '../../shared/log/goodSoFar.ts';
import { orderToLog } from '../../shared/log/orderToLog.ts';
import { logBook } from './logBook.ts';

const BOOK = logBook({
  orders: [
    { order: '7', mold: 'Gone', pattern: 'Two tone', quantity: 10 },
    { order: '8', mold: 'Gone', pattern: 'Two tone', version: 1, quantity: 10 },
    { order: '9', mold: 'Gone' },
  ],
  patterns: [
    { pattern: 'Two tone', version: 1, layerOrder: 1, layer: 'all', share: 1, base: 'Clear' },
    { pattern: 'Two tone', version: 2, layerOrder: 2, layer: 'back', share: 0.5, base: 'Clear' },
    { pattern: 'Two tone', version: 2, layerOrder: 1, layer: 'belly', share: 0.5, base: 'Clear' },
  ],
  pourLog: [
    { run: 'a', order: '7', poured: 5, good: 4 },
    { run: 'b', order: '7', poured: 5 },
    { run: 'c', order: '8', poured: 5, good: 5 },
  ],
});

describe('orderToLog', () => {
  test('takes the newest version when the row names none, its layers as poured', () => {
    expect(orderToLog(BOOK, ' 7 ')).toMatchObject({
      order: '7',
      version: 2,
      layers: ['belly', 'back'],
    });
    expect(orderToLog(BOOK, '8')).toMatchObject({ version: 1, layers: ['all'] });
  });

  test('says which cells of the row are blank, and where', () => {
    expect(orderToLog(BOOK, '9')).toEqual({
      kind: 'refused',
      problems: [
        { field: '', text: 'In Orders, row 4: pattern must be given, got nothing' },
        { field: '', text: 'In Orders, row 4: quantity must be given, got nothing' },
      ],
    });
  });

  test('refuses an order that is not in the book', () => {
    expect(orderToLog(BOOK, '70')).toEqual({
      kind: 'refused',
      problems: [{ field: 'order', text: 'order must be listed in Orders, got "70"' }],
    });
  });
});

describe('goodSoFar', () => {
  test('adds the good pieces of the order alone', () => {
    expect(goodSoFar(BOOK, '7')).toBe(4);
    expect(goodSoFar(BOOK, '70')).toBe(0);
  });
});
