import { InputError } from '../../errors/InputError.ts';
import type { Column, RecordOf, SheetName, Table } from '../column.ts';
import { type FoundColumns, findColumns, type Place } from './findColumns.ts';
import { type CellValue, parseCell } from './parseCell.ts';

/** Something on a sheet that the user should mend, and where. */
export interface CellProblem {
  readonly sheet: SheetName | 'Shop';
  /** Row on the sheet, 1 is the heading; absent when a whole column is missing. */
  readonly row?: number;
  readonly heading: string;
  readonly error: InputError;
}

export interface Row<T extends Table> {
  /** Row on the sheet, 2 is the first under the heading. */
  readonly row: number;
  readonly record: RecordOf<T>;
}

export interface TableRead<T extends Table> {
  readonly rows: readonly Row<T>[];
  readonly problems: readonly CellProblem[];
}

/**
 * Records of a sheet. Columns are found by their heading, wherever they stand; units come from the headings.
 * A cell that is refused is absent from its record and listed as a problem; the other cells of the row are kept.
 * @param values the sheet from its heading row down, blank as ""
 */
export function readTable<T extends Table>(
  table: T,
  values: readonly (readonly CellValue[])[],
): TableRead<T> {
  const found = findColumns(table, values[0] ?? []);
  const { places } = found;
  const problems: CellProblem[] = [...headingProblems(table, found)];
  const rows: Row<T>[] = [];
  values.slice(1).forEach((cells, index) => {
    if (places.every((place) => isBlank(cells[place.index]))) return;
    rows.push({ row: index + 2, record: recordOf(table, cells, places, index + 2, problems) });
  });
  return { rows, problems };
}

function headingProblems(
  table: Table,
  { missing, unreadable }: FoundColumns,
): readonly CellProblem[] {
  return [
    ...missing.map(({ column }) => ({
      sheet: table.sheet,
      heading: column.heading,
      error: missingColumn(table, column),
    })),
    ...unreadable.map(({ column, error }) => ({
      sheet: table.sheet,
      row: 1,
      heading: column.heading,
      error,
    })),
  ];
}

function missingColumn(table: Table, column: Column): InputError {
  return new InputError({
    field: `the column ${column.heading}`,
    rule: { kind: 'known', where: table.sheet },
    value: '',
  });
}

function recordOf<T extends Table>(
  table: T,
  cells: readonly CellValue[],
  places: readonly Place[],
  row: number,
  problems: CellProblem[],
): RecordOf<T> {
  const record: Record<string, string | number> = {};
  for (const { key, column, index, unit } of places) {
    const value = cells[index];
    if (value === undefined || isBlank(value)) continue;
    try {
      record[key] = parseCell(value, column, { field: column.heading.toLowerCase(), unit });
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      problems.push({ sheet: table.sheet, row, heading: column.heading, error });
    }
  }
  return record as RecordOf<T>; // each key was parsed by its own column's kind
}

function isBlank(value: CellValue | undefined): boolean {
  return value === undefined || (typeof value === 'string' && value.trim() === '');
}
