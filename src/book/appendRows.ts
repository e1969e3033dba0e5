import type { RecordOf, Table } from '../../shared/book/column.ts';
import { tableCells } from '../../shared/book/layout/tableCells.ts';
import { findColumns } from '../../shared/book/reading/findColumns.ts';
import { type Refused, refuse } from '../../shared/errors/refuse.ts';
import type { UnitSystem } from '../../shared/units/measures.ts';
import { safeText } from '../platform/safeText.ts';
import { findSheet, workbook } from '../platform/workbook.ts';
import { readHeadings } from './readHeadings.ts';

/**
 * Writes rows under the last of a table, each number in the unit of its heading. Call it inside the document lock.
 * A sheet that lacks a column is refused: what was meant for it would be lost.
 * @returns the first row written
 */
export function appendRows<T extends Table>(
  table: T,
  records: readonly RecordOf<T>[],
  system: UnitSystem,
): { readonly kind: 'appended'; readonly row: number } | Refused {
  const sheet = findSheet(table.sheet);
  if (sheet === null)
    return refuse(
      '',
      `The sheet ${table.sheet} is not there: choose Poursmith > Set up this workbook.`,
    );
  const { places, missing, unreadable } = findColumns(table, readHeadings(sheet).shown);
  const lacking = [...missing, ...unreadable].map(({ column }) => column.heading);
  if (lacking.length > 0)
    return refuse(
      '',
      `${table.sheet} lacks a readable column for ${lacking.join(', ')}: choose Poursmith > Set up this workbook.`,
    );
  const width = Math.max(...places.map(({ index }) => index + 1));
  const days = places.flatMap(({ index, column }) => (column.kind === 'date' ? [index] : []));
  const zone = workbook().getSpreadsheetTimeZone();
  const cells = tableCells(records, places, width, system).map((line) =>
    line.map((cell, index) => {
      if (typeof cell !== 'string' || cell === '') return cell;
      return days.includes(index) ? Utilities.parseDate(cell, zone, 'yyyy-MM-dd') : safeText(cell);
    }),
  );
  const row = sheet.getLastRow() + 1;
  const lackingRows = row + cells.length - 1 - sheet.getMaxRows();
  if (lackingRows > 0) sheet.insertRowsAfter(sheet.getMaxRows(), lackingRows);
  sheet.getRange(row, 1, cells.length, width).setValues(cells);
  return { kind: 'appended', row };
}
