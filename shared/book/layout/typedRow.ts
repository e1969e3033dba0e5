import type {
  ChoiceColumn,
  ClockColumn,
  Column,
  ComputedColumn,
  RecordOf,
  Table,
} from '../column.ts';
import { headingOf } from '../reading/headingOf.ts';
import type { CellValue } from '../reading/parseCell.ts';
import { readTable } from '../reading/readTable.ts';

type TradeCell<C extends Column> = C extends ClockColumn
  ? string
  : C extends { readonly kind: 'number' | 'money' }
    ? number
    : C extends ChoiceColumn
      ? C['choices'][number]
      : string;

/** A row as a shop writes it: US trade units, clock times as text, days as `yyyy-mm-dd`. */
export type TypedRow<T extends Table> = {
  readonly [Key in keyof T['columns'] as T['columns'][Key] extends ComputedColumn
    ? never
    : Key]?: TradeCell<T['columns'][Key]>;
};

/** The cells of a row in the order of `Columns`; null is blank, and blanks at the end are left out. */
export type TypedLine<T extends Table, Columns extends readonly (keyof T['columns'])[]> = {
  readonly [Index in keyof Columns]?: TradeCell<T['columns'][Columns[Index]]> | null;
};

/** Lines as rows keyed by their columns. */
export function typedRows<T extends Table, const Columns extends readonly (keyof T['columns'])[]>(
  columns: Columns,
  lines: readonly TypedLine<T, Columns>[],
): readonly TypedRow<T>[] {
  return lines.map((line) => {
    const row: Record<string, unknown> = {};
    columns.forEach((column, index) => {
      const cell = line[index];
      if (cell !== undefined && cell !== null) row[String(column)] = cell;
    });
    return row as TypedRow<T>; // each cell has its own column's type
  });
}

/**
 * Rows in trade units as records in engine units, through the reader that reads the sheet itself.
 * @throws InputError for the first value that the reader refuses
 */
export function typedRecords<T extends Table>(
  table: T,
  rows: readonly TypedRow<T>[],
): readonly RecordOf<T>[] {
  const columns = Object.entries(table.columns).filter(([, { kind }]) => kind !== 'computed');
  const cells = rows.map((row) => {
    const values = row as Readonly<Record<string, CellValue | undefined>>; // a row is keyed by its columns
    return columns.map(([key]) => values[key] ?? '');
  });
  const headings = columns.map(([, column]) => headingOf(column, 'US'));
  const { rows: read, problems } = readTable(table, [headings, ...cells]);
  const [first] = problems;
  if (first) throw first.error;
  return read.map(({ record }) => record);
}
