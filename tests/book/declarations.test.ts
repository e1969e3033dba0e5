import { describe, expect, test } from 'vitest';
import type { Column, Table } from '../../shared/book/column.ts';
import { headingNote } from '../../shared/book/layout/headingNote.ts';
import { numberFormat, settingFormat } from '../../shared/book/layout/numberFormat.ts';
import { headingOf, readHeading, unitOf } from '../../shared/book/reading/headingOf.ts';
import { SETTINGS, SHOP_FIGURES } from '../../shared/book/settings/settings.ts';
import { TABLES } from '../../shared/book/tables.ts';

const tables: readonly Table[] = Object.values(TABLES);
const columns = tables.flatMap((table) =>
  Object.entries(table.columns).map(([key, column]: [string, Column]) => ({
    table,
    key,
    column,
    name: `${table.sheet}, ${column.heading}`,
  })),
);

describe('declarations of the book', () => {
  test.each(columns)(
    '$name is found by its own heading and by no other in its table',
    ({ table, column }) => {
      for (const system of ['US', 'metric'] as const) {
        const found = Object.values(table.columns).filter((other) =>
          readHeading(other, headingOf(column, system)),
        );
        expect(found).toEqual([column]);
        expect(readHeading(column, headingOf(column, system))).toEqual({
          unit: unitOf(column, system),
        });
      }
    },
  );

  test.each(columns)('$name has a width, and a note that ends as a sentence', ({ column }) => {
    expect(column.width).toBeGreaterThanOrEqual(50);
    expect(headingNote(column, unitOf(column, 'US'), column.about)).toMatch(/^[A-Z0-9].*\.$/);
  });

  test('columns that refer name a column that there is', () => {
    const referring = columns.flatMap(({ column }) =>
      column.kind === 'text' && column.refers ? [column.refers] : [],
    );
    expect(referring.length).toBeGreaterThan(8);
    for (const { sheet, column } of referring) {
      const target = tables.find((table) => table.sheet === sheet);
      expect(target?.columns, `${sheet} ${column}`).toHaveProperty(column);
    }
  });

  test('choices hold no comma, since a drop-down is a list with commas', () => {
    for (const { column } of columns)
      if (column.kind === 'choice') expect(column.choices.join('')).not.toContain(',');
  });

  test('settings have labels of their own, and defaults within their bounds', () => {
    const settings = [...Object.values(SETTINGS), ...Object.values(SHOP_FIGURES)];
    expect(new Set(settings.map(({ label }) => label.toLowerCase())).size).toBe(settings.length);
  });
});

describe('headingNote', () => {
  test('headingNote says what to type, whether it must be, and the limits in the unit of the heading', () => {
    const { cavities, kind, mold } = TABLES.molds.columns;
    expect(headingNote(cavities, undefined, cavities.about)).toBe(
      'Pieces one mold makes in one filling. Required. At least 1. At most 500. Whole numbers.',
    );
    expect(headingNote(kind, undefined, kind.about)).toBe(
      'Open: poured flat, face up. Two-piece: closed, filled upright through its gate. Required. One of: open, two-piece.',
    );
    expect(headingNote(mold, undefined, mold.about)).toBe(
      'Name of the mold, different on every line. Required.',
    );
    expect(
      headingNote(
        TABLES.plates.columns.lowestSetting,
        'degF',
        TABLES.plates.columns.lowestSetting.about,
      ),
    ).toBe('Lowest mark of the dial. Greater than 32 °F. At most 752 °F.');
    expect(
      headingNote(TABLES.patterns.columns.share, 'fraction', TABLES.patterns.columns.share.about),
    ).toContain('Greater than 0 %. At most 100 %.');
    expect(
      headingNote(TABLES.orders.columns.cups, undefined, TABLES.orders.columns.cups.about),
    ).toBe('Cups to weigh out, all layers. Fills itself: type nothing in this column.');
  });
});

describe('numberFormat', () => {
  test.each([
    { column: TABLES.patterns.columns.share, expected: '0.0%' },
    { column: TABLES.molds.columns.cavityVolume, expected: '0.000' },
    { column: TABLES.molds.columns.cavities, expected: '0' },
    { column: TABLES.orders.columns.order, expected: '@' },
    { column: TABLES.orders.columns.firstPour, expected: '@' },
    { column: TABLES.orders.columns.status, expected: '@' },
    { column: TABLES.orders.columns.due, expected: 'yyyy-mm-dd' },
    { column: TABLES.orders.columns.priceAgreed, expected: '#,##0.00' },
    { column: TABLES.orders.columns.plastisol, expected: '0.0' },
    { column: TABLES.orders.columns.warnings, expected: '@' },
    { column: TABLES.orders.columns.cost, expected: '0.00' },
    { column: TABLES.orders.columns.margin, expected: '0.0%' },
  ])('numberFormat of $column.heading is $expected', ({ column, expected }) => {
    expect(numberFormat(column)).toBe(expected);
  });

  test('settingFormat shows shares as per cent and text as text', () => {
    expect(settingFormat(SETTINGS.overpour)).toBe('0%');
    expect(settingFormat(SETTINGS.cupFill)).toBe('0.0');
    expect(settingFormat(SETTINGS.units)).toBe('@');
    expect(settingFormat(SETTINGS.energyPrice)).toBe('0.0000');
    expect(settingFormat(SHOP_FIGURES.boilingPoint)).toBe('0.0');
  });
});
