import type { SetUpChange } from '../../shared/book/layout/setUpReport.ts';
import { findSheet, workbook } from '../platform/workbook.ts';
import { readMark } from './sheetMark.ts';

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

export interface EnsuredSheet {
  readonly sheet: Sheet;
  readonly isNew: boolean;
}

/**
 * The sheet of a table: by its name, else the one that was laid out as this table and renamed since, else a new one.
 * @param after the sheet it stands behind; the first of the workbook when absent
 */
export function ensureSheet(
  { name, table, after }: { readonly name: string; readonly table: string; readonly after?: Sheet },
  changes: SetUpChange[],
): EnsuredSheet {
  const named = findSheet(name);
  if (named) return { sheet: named, isNew: false };
  const marked = workbook()
    .getSheets()
    .find((sheet) => readMark(sheet).table === table);
  if (marked) {
    changes.push({ kind: 'renamed', from: marked.getName(), sheet: name });
    return { sheet: marked.setName(name), isNew: false };
  }
  changes.push({ kind: 'created', sheet: name });
  const made = workbook().insertSheet(name, after ? after.getIndex() : 0);
  return { sheet: made, isNew: true };
}

/** Cuts a new sheet's grid to the size it needs, or grows it. */
export function sizeGrid(sheet: Sheet, rows: number, columns: number): void {
  const extraRows = sheet.getMaxRows() - rows;
  const extraColumns = sheet.getMaxColumns() - columns;
  if (extraRows > 0) sheet.deleteRows(rows + 1, extraRows);
  if (extraRows < 0) sheet.insertRowsAfter(sheet.getMaxRows(), -extraRows);
  if (extraColumns > 0) sheet.deleteColumns(columns + 1, extraColumns);
  if (extraColumns < 0) sheet.insertColumnsAfter(sheet.getMaxColumns(), -extraColumns);
}
