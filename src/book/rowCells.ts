import type { RecordOf, Table } from '../../shared/book/column.ts';
import { tableCells } from '../../shared/book/layout/tableCells.ts';
import { findColumns } from '../../shared/book/reading/findColumns.ts';
import { type Refused, refuse } from '../../shared/errors/refuse.ts';
import type { UnitSystem } from '../../shared/units/measures.ts';
import { safeText } from '../platform/safeText.ts';
import { findSheet, workbook } from '../platform/workbook.ts';
import { readHeadings } from './readHeadings.ts';

/** Cells of a table's rows, found by their headings and ready to be written. */
export interface RowCells<Key extends string, Values> {
  readonly kind: 'found';
  /** Writes these cells of a row and no other; a value that is left out clears its cell. */
  readonly write: (row: number, values: Pick<Values, Key & keyof Values>) => void;
}

/**
 * Finds columns of a table before anything is written: one that is not there is refused, what was meant for it would be
 * lost. Call it inside the document lock.
 */
export function rowCells<T extends Table, Key extends keyof RecordOf<T> & string>(
  table: T,
  keys: readonly Key[],
  system: UnitSystem,
): RowCells<Key, RecordOf<T>> | Refused {
  const sheet = findSheet(table.sheet);
  const found = sheet && findColumns(table, readHeadings(sheet).shown);
  const places = keys.map((key) => found?.places.find((place) => place.key === key));
  const lacking = keys.filter((_, index) => places[index] === undefined);
  if (sheet === null || lacking.length > 0) {
    const headings = lacking.map((key) => table.columns[key]?.heading ?? key).join(', ');
    return refuse(
      '',
      `${table.sheet} lacks a readable column for ${headings}: choose Poursmith > Set up this workbook.`,
    );
  }
  return {
    kind: 'found',
    write: (row, values) => {
      for (const place of places) {
        if (place === undefined) continue;
        const at = [{ ...place, index: 0 }];
        const cell = tableCells<T>([values as RecordOf<T>], at, 1, system)[0]?.[0] ?? ''; // some cells of a record
        const isDay = place.column.kind === 'date' && cell !== '';
        const day = () =>
          Utilities.parseDate(String(cell), workbook().getSpreadsheetTimeZone(), 'yyyy-MM-dd');
        const written = isDay ? day() : typeof cell === 'string' ? safeText(cell) : cell;
        sheet.getRange(row, place.index + 1).setValue(written);
      }
    },
  };
}
