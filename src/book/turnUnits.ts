import type { Column, Table } from '../../shared/book/column.ts';
import { findColumns } from '../../shared/book/reading/findColumns.ts';
import { headingOf, unitOf } from '../../shared/book/reading/headingOf.ts';
import { readTable } from '../../shared/book/reading/readTable.ts';
import type { UnitSystem } from '../../shared/units/measures.ts';
import { readCells } from '../platform/workbook.ts';
import { readHeadings } from './readHeadings.ts';

/**
 * Writes the shop's units into the headings of a sheet without rows that was laid out in the other system. Where there
 * are rows the headings stay, since the numbers below them were typed in those units.
 * @returns the columns whose headings changed
 */
export function turnUnits({
  sheet,
  table,
  system,
}: {
  readonly sheet: GoogleAppsScript.Spreadsheet.Sheet;
  readonly table: Table;
  readonly system: UnitSystem;
}): readonly Column[] {
  const { places } = findColumns(table, readHeadings(sheet).shown);
  const other = system === 'US' ? 'metric' : 'US';
  const telling = places.filter(({ column }) => unitOf(column, system) !== unitOf(column, other));
  // A heading that the user gave a unit of its own choice shows that somebody has been here.
  const isOther = telling.every(({ column, unit }) => unit === unitOf(column, other));
  if (telling.length === 0 || !isOther || readTable(table, readCells(table.sheet)).rows.length > 0)
    return [];
  for (const { column, index } of telling)
    sheet.getRange(1, index + 1).setValue(headingOf(column, system));
  return telling.map(({ column }) => column);
}
