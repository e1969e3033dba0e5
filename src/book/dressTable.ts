import type { Column } from '../../shared/book/column.ts';
import { headingNote } from '../../shared/book/headingNote.ts';
import { COMPUTED_COLOR, FREEZE_FROM_COLUMNS, LAYOUT_VERSION } from '../../shared/book/layout.ts';
import { numberFormat } from '../../shared/book/numberFormat.ts';
import type { UnitName } from '../../shared/units/units.ts';
import { columnRule } from './columnRule.ts';
import type { LaidTable } from './layOutTable.ts';
import { writeMark } from './sheetMark.ts';
import { styleHeadings } from './styleHeadings.ts';

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/**
 * Formats, notes, widths and drop-downs of a sheet's known columns. Values and unknown columns stay as they are.
 * @param scope every known column, or only those that were added just now
 */
export function dressTable(
  { key, sheet, found, computed, table, added }: LaidTable,
  scope: 'all' | 'added',
): void {
  const isMeant = (column: Column) => scope === 'all' || added.includes(column);
  for (const { column, index, unit } of found.places)
    if (isMeant(column)) dressColumn(sheet, column, index, unit);
  for (const { column, index } of computed)
    if (isMeant(column)) dressColumn(sheet, column, index, undefined);
  if (scope === 'added') return;
  sheet.setFrozenRows(1);
  if (Object.keys(table.columns).length >= FREEZE_FROM_COLUMNS) sheet.setFrozenColumns(1);
  writeMark(sheet, key, LAYOUT_VERSION);
}

function dressColumn(
  sheet: Sheet,
  column: Column,
  index: number,
  unit: UnitName | undefined,
): void {
  const note = headingNote(column, unit);
  const heading = sheet.getRange(1, index + 1);
  if (column.kind === 'computed') styleHeadings(heading, COMPUTED_COLOR);
  else styleHeadings(heading);
  heading.setNote(note);
  sheet.setColumnWidth(index + 1, column.width);
  const cells = sheet.getRange(2, index + 1, sheet.getMaxRows() - 1, 1);
  cells.setNumberFormat(numberFormat(column)).setVerticalAlignment('top');
  if (column.kind === 'computed' && column.places === undefined) cells.setWrap(true);
  const rule = columnRule(column, note);
  if (rule) cells.setDataValidation(rule);
}
