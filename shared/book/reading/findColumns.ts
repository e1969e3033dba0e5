import { InputError } from '../../errors/InputError.ts';
import type { UnitName } from '../../units/units.ts';
import type { Column, Table } from '../column.ts';
import { readHeading } from './headingOf.ts';
import type { CellValue } from './parseCell.ts';

/** Where a declared column stands on a sheet. */
export interface Place {
  readonly key: string;
  readonly column: Column;
  /** Counted from 0. */
  readonly index: number;
  /** The unit that its heading states. */
  readonly unit: UnitName | undefined;
}

export interface FoundColumns {
  readonly places: readonly Place[];
  readonly missing: readonly { readonly key: string; readonly column: Column }[];
  /** Columns whose heading is there and states no unit of theirs. */
  readonly unreadable: readonly {
    readonly key: string;
    readonly column: Column;
    readonly index: number;
    readonly error: InputError;
  }[];
}

/**
 * Finds the columns that a person or the add-on fills, by their headings, wherever they stand.
 * @param headings the sheet's first row
 */
export function findColumns(table: Table, headings: readonly CellValue[]): FoundColumns {
  const places: Place[] = [];
  const missing: { key: string; column: Column }[] = [];
  const unreadable: { key: string; column: Column; index: number; error: InputError }[] = [];
  for (const [key, column] of Object.entries(table.columns)) {
    if (column.kind === 'computed') continue;
    const index = headings.findIndex((text) => readHeading(column, String(text)) !== undefined);
    const read = readHeading(column, String(headings[index] ?? ''));
    if (read === undefined) missing.push({ key, column });
    else if (read === 'unreadable')
      unreadable.push({ key, column, index, error: wrongUnit(column, headings[index]) });
    else places.push({ key, column, index, unit: read.unit });
  }
  return { places, missing, unreadable };
}

function wrongUnit(column: Column, value: CellValue | undefined): InputError {
  return new InputError({
    field: `the heading ${column.heading}`,
    rule: { kind: 'form', wanted: 'followed by its unit in parentheses' },
    value,
  });
}
