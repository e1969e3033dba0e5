import type { CellValue } from '../../shared/book/reading/parseCell.ts';

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;

/** The open workbook. Call only inside an entry point: at load no service may be touched. */
export function workbook(): Spreadsheet {
  return SpreadsheetApp.getActiveSpreadsheet();
}

export function findSheet(name: string): Sheet | null {
  return workbook().getSheetByName(name);
}

/** Every filled cell of a sheet from A1, one read; blank is "", a date is its day as `yyyy-mm-dd` in the workbook's zone. */
export function readCells(name: string): readonly (readonly CellValue[])[] {
  const sheet = findSheet(name);
  if (sheet === null || sheet.getLastRow() === 0) return [];
  const zone = workbook().getSpreadsheetTimeZone();
  const values = sheet.getRange(1, 1, sheet.getLastRow(), sheet.getLastColumn()).getValues();
  return values.map((row) => row.map((cell) => plainCell(cell, zone)));
}

function plainCell(cell: unknown, zone: string): CellValue {
  if (typeof cell === 'string' || typeof cell === 'number' || typeof cell === 'boolean')
    return cell;
  if (Object.prototype.toString.call(cell) === '[object Date]')
    return Utilities.formatDate(cell as Date, zone, 'yyyy-MM-dd'); // checked on the line above
  return '';
}
