import type { BookCells } from '../book/book.ts';
import type { RecordOf, Table } from '../book/column.ts';
import { tableCells } from '../book/layout/tableCells.ts';
import { findColumns, type Place } from '../book/reading/findColumns.ts';
import { TABLES, type TableKey } from '../book/tables.ts';
import { type Refused, refuse } from '../errors/refuse.ts';
import type { UnitSystem } from '../units/measures.ts';
import type { CellWrite, Write } from './write.ts';

/** What a cell gets: a number, a text that stays text, a day, or nothing. */
export type PlacedCell = number | '' | { readonly text: string } | { readonly day: string };

/** A block of cells, from its first row and column, counted from 1. */
export interface PlacedWrite {
  readonly kind: 'cells';
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly cells: readonly (readonly PlacedCell[])[];
  /** Of rows under a table: the row that was its last when it was read. */
  readonly below?: number;
}

type WholeWrite = Exclude<Write, { readonly kind: 'append' | 'change' | 'cell' }>;

/**
 * Finds the cells of every write before anything is written, each number in the unit of its heading. A table that lacks a column
 * is refused: what was meant for it would be lost.
 * @param cells - raw cells of the sheets that were read, heading row first
 */
export function placeWrites(
  writes: readonly Write[],
  cells: (key: TableKey) => BookCells['shop'],
  system: UnitSystem,
): readonly (PlacedWrite | WholeWrite)[] | Refused {
  const placed: (PlacedWrite | WholeWrite)[] = [];
  const ends = new Map<TableKey, number>();
  for (const write of writes) {
    switch (write.kind) {
      case 'append': {
        const values = cells(write.table);
        const found = appended(TABLES[write.table], write.records, values, system);
        if ('kind' in found) return found;
        const last = ends.get(write.table) ?? values.length;
        ends.set(write.table, last + write.records.length);
        placed.push({ ...block(TABLES[write.table], last + 1, 0, found), below: last });
        break;
      }
      case 'change': {
        const found = changed(write, cells(write.table), system);
        if ('kind' in found) return found;
        placed.push(...found);
        break;
      }
      case 'cell':
        placed.push(oneCell(write));
        break;
      default:
        placed.push(write);
    }
  }
  return placed;
}

function appended(
  table: Table,
  records: readonly RecordOf<Table>[],
  values: BookCells['shop'],
  system: UnitSystem,
): readonly (readonly PlacedCell[])[] | Refused {
  if (values.length === 0)
    return refuse(
      '',
      `The sheet ${table.sheet} is not there: choose Poursmith > Set up this workbook.`,
    );
  const { places, missing, unreadable } = findColumns(table, values[0] ?? []);
  const lacking = [...missing, ...unreadable].map(({ column }) => column.heading);
  if (lacking.length > 0) return lacks(table, lacking);
  const width = Math.max(...places.map(({ index }) => index + 1));
  return placedCells(table, records, places, width, system);
}

function changed(
  { table: key, row, cells }: Extract<Write, { readonly kind: 'change' }>,
  values: BookCells['shop'],
  system: UnitSystem,
): readonly PlacedWrite[] | Refused {
  const table: Table = TABLES[key];
  const { places } = findColumns(table, values[0] ?? []);
  const found = Object.keys(cells).map((name) => places.find((place) => place.key === name));
  const lacking = Object.keys(cells).filter((_, index) => found[index] === undefined);
  if (lacking.length > 0)
    return lacks(
      table,
      lacking.map((name) => table.columns[name]?.heading ?? name),
    );
  return found.flatMap((place) => {
    if (place === undefined) return [];
    const at = [{ ...place, index: 0 }];
    return block(table, row, place.index, placedCells(table, [cells], at, 1, system));
  });
}

function placedCells(
  table: Table,
  records: readonly RecordOf<Table>[],
  places: readonly Place[],
  width: number,
  system: UnitSystem,
): readonly (readonly PlacedCell[])[] {
  const days = places.flatMap(({ index, column }) => (column.kind === 'date' ? [index] : []));
  return tableCells<typeof table>(records, places, width, system).map((line) =>
    line.map((cell, index) => {
      if (typeof cell === 'number' || cell === '') return cell;
      return days.includes(index) ? { day: String(cell) } : { text: String(cell) };
    }),
  );
}

function block(
  { sheet }: Table,
  row: number,
  index: number,
  cells: PlacedWrite['cells'],
): PlacedWrite {
  return { kind: 'cells', sheet, row, column: index + 1, cells };
}

function oneCell({ sheet, row, column, value }: CellWrite): PlacedWrite {
  return { kind: 'cells', sheet, row, column, cells: [[value]] };
}

function lacks({ sheet }: Table, headings: readonly string[]): Refused {
  return refuse(
    '',
    `${sheet} lacks a readable column for ${headings.join(', ')}: choose Poursmith > Set up this workbook.`,
  );
}
