import { describe, expect, test } from 'vitest';
import { TABLES } from '../../shared/book/tables.ts';
import { ALL_COMMANDS } from '../../shared/commands/allCommands.ts';
import { cellsAfter } from '../../shared/commands/cellsAfter.ts';
import { placeWrites } from '../../shared/commands/placeWrites.ts';
import { readPayload } from '../../shared/commands/readPayload.ts';
import { memoryBook } from './memoryBook.ts';

const HEADINGS = {
  orders: ['Order', 'Notes', 'Status', 'Quantity', 'Date'],
  materials: ['Material', 'Density (g/mL)'],
} as const;

function cells(key: string): readonly (readonly string[])[] {
  return key === 'orders' || key === 'materials' ? [HEADINGS[key], ['1001', '', 'asked']] : [];
}

describe('placeWrites', () => {
  test('finds the cells of a row by its headings, texts as texts, days as days, blanks cleared', () => {
    const placed = placeWrites(
      [
        {
          kind: 'change',
          table: 'orders',
          row: 2,
          cells: { status: 'planned', quantity: 12, date: '2026-12-01', notes: undefined },
        },
      ],
      cells,
      'US',
    );
    const at = { kind: 'cells', sheet: 'Orders', row: 2 } as const;
    expect(placed).toEqual([
      { ...at, column: 3, cells: [[{ text: 'planned' }]] },
      { ...at, column: 4, cells: [[12]] },
      { ...at, column: 5, cells: [[{ day: '2026-12-01' }]] },
      { ...at, column: 2, cells: [['']] },
    ]);
  });

  test('writes a number in the unit of its heading', () => {
    const placed = placeWrites(
      [{ kind: 'change', table: 'materials', row: 2, cells: { density: 1040 } }],
      cells,
      'US',
    );
    expect(placed).toMatchObject([{ column: 2, cells: [[1.04]] }]);
  });

  test('two appends to one table stand one below the other', () => {
    const book = memoryBook();
    const last = book.cells('stockMoves').length;
    const placed = placeWrites(
      [
        { kind: 'append', table: 'stockMoves', records: [{ material: 'A' }, { material: 'B' }] },
        { kind: 'append', table: 'stockMoves', records: [{ material: 'C' }] },
      ],
      (key) => book.cells(key),
      'US',
    );
    expect(placed).toMatchObject([
      { row: last + 1, below: last },
      { row: last + 3, below: last + 2 },
    ]);
  });

  test('refuses rows for a sheet that is not there, and a change of a column that is gone', () => {
    const refusal = (text: string) => ({ kind: 'refused', problems: [{ field: '', text }] });
    expect(placeWrites([{ kind: 'append', table: 'quotes', records: [{}] }], cells, 'US')).toEqual(
      refusal('The sheet Quotes is not there: choose Poursmith > Set up this workbook.'),
    );
    expect(
      placeWrites(
        [{ kind: 'change', table: 'orders', row: 2, cells: { priceAgreed: 1 } }],
        cells,
        'US',
      ),
    ).toEqual(
      refusal(
        'Orders lacks a readable column for Price agreed: choose Poursmith > Set up this workbook.',
      ),
    );
  });
});

test('cellsAfter is what would be read once the writes are done; nothing else changes', () => {
  const rows = [
    ['Material', 'Lot'],
    ['White', 'W-1'],
  ];
  const after = cellsAfter(['materials'], (key) => (key === 'shop' ? [] : rows), [
    { kind: 'cells', sheet: 'Materials', row: 3, column: 1, cells: [[{ text: 'Black' }, 2]] },
    { kind: 'cells', sheet: 'Materials', row: 2, column: 2, cells: [['']] },
    { kind: 'cells', sheet: 'Orders', row: 2, column: 1, cells: [[{ day: '2026-12-01' }]] },
  ]);
  expect(after).toEqual({
    materials: [
      ['Material', 'Lot'],
      ['White', ''],
      ['Black', 2],
    ],
    shop: [],
  });
  expect(rows).toEqual([
    ['Material', 'Lot'],
    ['White', 'W-1'],
  ]);
});

describe('readPayload', () => {
  const TEXT = { longest: 5, needed: true };
  const fields = {
    name: TEXT,
    values: { texts: { one: { ...TEXT, needed: false } } },
    more: { any: TEXT },
  };

  test('texts by name are an object, empty where none was sent', () => {
    expect(readPayload(fields, { name: 'a' })).toEqual({
      kind: 'read',
      value: { name: 'a', values: {}, more: {} },
    });
  });

  test.each([
    { sent: {}, text: 'name must be given, got nothing' },
    {
      sent: { name: 'a', other: 'x' },
      text: 'other must be a field that this command knows, got "x"',
    },
    {
      sent: { name: 'a', values: { two: 'x' } },
      text: 'two must be a field that this command knows, got "x"',
    },
    {
      sent: { name: 'a', more: { any: 'too long' } },
      text: 'any must be at most 5 characters long, got "too long"',
    },
    { sent: { name: ['a'] }, text: 'name must be text, got "a list or an object"' },
  ])('says $text', ({ sent, text }) => {
    expect(readPayload(fields, sent)).toMatchObject({ kind: 'refused', problems: [{ text }] });
  });
});

test('every command that writes reads the tables that it appends to or changes', () => {
  for (const { kind, tables } of Object.values(ALL_COMMANDS)) {
    expect(['read', 'write']).toContain(kind);
    for (const key of tables) expect(TABLES).toHaveProperty(key);
  }
});

test('logging the same entry twice writes one row; the order moves on with it', () => {
  const book = memoryBook();
  const before = book.rows('pourLog').length;
  const form = book.ask('startLog', { order: '1006' });
  if (form.kind !== 'ok') throw new Error(JSON.stringify(form));
  const sent = {
    order: '1006',
    token: form.token,
    values: {
      poured: '90',
      good: '90',
      who: 'AK',
      tearTest: 'tears through',
      run: form.runs[0]?.run ?? '',
    },
  };
  expect(book.ask('logOutcome', sent)).toMatchObject({
    kind: 'ok',
    logged: 'now',
    status: 'poured',
  });
  expect(book.ask('logOutcome', sent)).toMatchObject({ kind: 'ok', logged: 'before' });
  expect(book.rows('pourLog')).toHaveLength(before + 1);
  expect(book.rows('orders').find((row) => row['Order'] === '1006')).toMatchObject({
    Status: 'poured',
  });
});
