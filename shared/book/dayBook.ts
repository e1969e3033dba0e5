import { type Book, type BookCells, PLAN_TABLES, readBook } from './book.ts';
import type { CellValue } from './reading/parseCell.ts';
import { type Row, readTable, type TableRead } from './reading/readTable.ts';
import { TABLES } from './tables.ts';

/** The tables that a pour day is planned from. */
export const DAY_TABLES = [...PLAN_TABLES, 'people'] as const;

/** Raw cells of each sheet, heading row first; a sheet that is not there has none. */
export type DayCells = BookCells & Readonly<Record<'people', readonly (readonly CellValue[])[]>>;

/** The book with its people. */
export interface DayBook extends Book {
  readonly people: readonly Row<typeof TABLES.people>[];
}

/** Reads every table. */
export function readDayBook(cells: DayCells): DayBook {
  const book = readBook(cells);
  const { rows, problems } = readPeople(cells.people);
  return { ...book, people: rows, problems: [...book.problems, ...problems] };
}

/** A book from before there was the sheet *People* has none. */
export function readPeople(cells: DayCells['people']): TableRead<typeof TABLES.people> {
  return cells.length === 0 ? { rows: [], problems: [] } : readTable(TABLES.people, cells);
}
