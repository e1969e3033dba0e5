import {
  type RunSheetCells,
  TAB_STYLES,
  type TabBox,
  type TabCell,
} from '../../shared/paper/runSheet/tab/tabTypes.ts';
import { sizeGrid } from '../book/ensureSheet.ts';
import { safeText } from '../platform/safeText.ts';
import { findSheet, workbook } from '../platform/workbook.ts';

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

export const RUN_SHEET = 'Run sheet';

/**
 * Fills the sheet *Run sheet* with the cells of a run sheet; what stood there goes. Call it inside the document lock.
 * The grid is cut to what is printed, so that *File > Print* at "fit to page" gives one page.
 */
export function writeRunSheetTab(cells: RunSheetCells): void {
  const sheet = emptySheet(cells);
  writeCells(sheet, cells);
  for (const box of cells.merges) rangeOf(sheet, box).merge();
  for (const box of cells.frames) rangeOf(sheet, box).setBorder(true, true, true, true, true, true);
  for (const box of cells.ticks) rangeOf(sheet, box).insertCheckboxes();
}

function emptySheet({ rows, columnWidths }: RunSheetCells): Sheet {
  const found = findSheet(RUN_SHEET);
  const sheet = found ?? workbook().insertSheet(RUN_SHEET, workbook().getSheets().length);
  const all = sheet.getRange(1, 1, sheet.getMaxRows(), sheet.getMaxColumns());
  all.breakApart();
  all.clearDataValidations();
  sheet.clear();
  sizeGrid(sheet, rows.length, columnWidths.length);
  sheet.setHiddenGridlines(true);
  return sheet;
}

function writeCells(sheet: Sheet, { rows, columnWidths }: RunSheetCells): void {
  const range = sheet.getRange(1, 1, rows.length, columnWidths.length);
  const looks = rows.map(({ cells }) => cells.map(({ style }) => TAB_STYLES[style]));
  range.setValues(rows.map(({ cells }) => cells.map(written)));
  range.setFontSizes(looks.map((line) => line.map(({ size }) => size)));
  range.setFontWeights(looks.map((line) => line.map(({ weight }) => weight)));
  range.setWraps(rows.map(({ cells }) => cells.map(isWrapped)));
  range.setHorizontalAlignments(
    rows.map(({ cells }) => cells.map(({ style }) => (style === 'unit' ? 'right' : 'left'))),
  );
  range.setVerticalAlignment('middle').setFontColor('#000000').setBackground('#ffffff');
  columnWidths.forEach((width, index) => {
    sheet.setColumnWidth(index + 1, width);
  });
  rows.forEach(({ height }, index) => {
    sheet.setRowHeight(index + 1, height);
  });
}

function written({ value }: TabCell): string | boolean {
  return value === false ? false : safeText(value);
}

/** Items of a checklist run over the blank cells beside them; everything else stays in its cell. */
function isWrapped({ style }: TabCell): boolean {
  return style !== 'item' && style !== 'list name';
}

function rangeOf(sheet: Sheet, { row, column, rows, columns }: TabBox) {
  return sheet.getRange(row, column, rows, columns);
}
