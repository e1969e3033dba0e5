import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Column, Table } from '../../../shared/book/column.ts';
import { tableCells } from '../../../shared/book/layout/tableCells.ts';
import { findColumns } from '../../../shared/book/reading/findColumns.ts';
import { headingOf } from '../../../shared/book/reading/headingOf.ts';
import { readTable } from '../../../shared/book/reading/readTable.ts';
import { TABLES } from '../../../shared/book/tables.ts';

type Value = string | number;

/** A cell's value in engine units, inside the column's bounds. */
function anyValue(column: Column): fc.Arbitrary<Value> {
  switch (column.kind) {
    case 'number': {
      const { greaterThan, atLeast, lessThan, atMost, whole } = column.bounds ?? {};
      const low = atLeast ?? greaterThan ?? -1e3;
      const high = atMost ?? lessThan ?? low + 1e3;
      if (whole) return fc.integer({ min: Math.ceil(low), max: Math.floor(high) });
      // A bound itself may move by a last binary digit on the way through another unit.
      return fc
        .double({ min: 0.001, max: 0.999, noNaN: true })
        .map((part) => low + part * (high - low));
    }
    case 'money':
      return fc
        .integer({ min: column.bounds?.greaterThan === undefined ? 0 : 1, max: 1e7 })
        .map((cents) => cents / 100);
    case 'clock':
      return fc.integer({ min: 0, max: 1439 });
    case 'choice':
      return fc.constantFrom(...column.choices);
    case 'date':
      return fc
        .date({ min: new Date('2000-01-01'), max: new Date('2099-12-31'), noInvalidDate: true })
        .map((date) => date.toISOString().slice(0, 10));
    default:
      return fc
        .string({ minLength: 1 })
        .map((text) => text.trim())
        .filter((text) => text !== '' && !text.startsWith('#'));
  }
}

function inputs(table: Table): readonly (readonly [string, Column])[] {
  return Object.entries(table.columns).filter(([, { kind }]) => kind !== 'computed');
}

function anyRecord(table: Table): fc.Arbitrary<Record<string, Value>> {
  const [first, ...rest] = inputs(table);
  const required = first ? [first[0]] : [];
  const model = Object.fromEntries(
    [first, ...rest].flatMap((one) => (one ? [[one[0], anyValue(one[1])]] : [])),
  );
  return fc.record(model, { requiredKeys: required });
}

describe('tableCells', () => {
  test.each(
    Object.entries(TABLES).flatMap(([key, table]) => [
      { key, table, system: 'US' as const },
      { key, table, system: 'metric' as const },
    ]),
  )(
    'tableCells of $key in $system units, read again, gives the records we began with',
    ({ table, system }) => {
      const shape: Table = table;
      fc.assert(
        fc.property(
          fc.array(anyRecord(shape), { minLength: 1, maxLength: 4 }),
          fc.shuffledSubarray(
            inputs(shape).map(([, column]) => headingOf(column, system)),
            {
              minLength: inputs(shape).length,
            },
          ),
          (records, headings) => {
            const { places } = findColumns(shape, headings);
            const cells = tableCells(records, places, headings.length, system);
            const { rows, problems } = readTable(shape, [headings, ...cells]);
            expect(problems).toEqual([]);
            expect(rows).toHaveLength(records.length);
            rows.forEach(({ record }, index) => {
              expectSame(shape, record, records[index] ?? {});
            });
          },
        ),
        { numRuns: 30 },
      );
    },
  );

  test('tableCells leaves absent values and unknown columns blank', () => {
    const headings = ['Cavities', 'mine', 'Mold', 'Owned'];
    const { places } = findColumns(TABLES.molds, headings);
    expect(tableCells([{ mold: 'A', owned: 2 }], places, 4, 'US')).toEqual([['', '', 'A', 2]]);
  });
});

type AnyRecord = Readonly<Record<string, Value | undefined>>;

function expectSame(table: Table, read: AnyRecord, begun: AnyRecord): void {
  expect(Object.keys(read).sort()).toEqual(Object.keys(begun).sort());
  for (const [key, value] of Object.entries(begun)) {
    if (typeof value !== 'number') {
      expect(read[key]).toBe(value);
      continue;
    }
    const column = table.columns[key];
    const isTemperature = column?.kind === 'number' && column.measure?.startsWith('temperature');
    // Cells hold 12 figures; a temperature's zero lies elsewhere in another unit.
    const size = isTemperature ? Math.abs(value) + 1000 : Math.abs(value);
    expect(read[key]).toBeNear(value, { absolute: 1e-11 * size });
  }
}
