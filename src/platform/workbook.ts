import type { CellValue } from '../../shared/book/reading/parseCell.ts';
import { plainDates } from './plainDates.ts';

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;

/** The open workbook. Call only inside an entry point: at load no service may be touched. */
export function workbook(): Spreadsheet {
  return SpreadsheetApp.getActiveSpreadsheet();
}

/** The workbook's own zone, in which its dates are read. */
export function spreadsheetZone(): string {
  return workbook().getSpreadsheetTimeZone();
}

export function findSheet(name: string): Sheet | null {
  return workbook().getSheetByName(name);
}

/**
 * Every filled cell of a sheet from A1, one read; blank is "", a date is its day as `yyyy-mm-dd` in the workbook's zone, a time alone
 * `hh:mm`.
 * @param dateText - shared where several sheets are read, so that each day is asked for once
 */
export function readCells(
  name: string,
  dateText = plainDates(spreadsheetZone),
): readonly (readonly CellValue[])[] {
  const sheet = findSheet(name);
  if (sheet === null || sheet.getLastRow() === 0) return [];
  const values = sheet.getRange(1, 1, sheet.getLastRow(), sheet.getLastColumn()).getValues();
  return values.map((row) => row.map((cell) => plainCell(cell, dateText)));
}

function plainCell(cell: unknown, dateText: (date: Date) => string): CellValue {
  if (typeof cell === 'string' || typeof cell === 'number' || typeof cell === 'boolean')
    return cell;
  if (Object.prototype.toString.call(cell) === '[object Date]') return dateText(cell as Date); // checked on the line above
  return '';
}
