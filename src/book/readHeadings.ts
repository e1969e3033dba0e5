import type { CellValue } from '../../shared/book/reading/parseCell.ts';

export interface Headings {
  /** Shown values of the first row, up to the last that is not blank. */
  readonly shown: readonly CellValue[];
  /** Formulas of the same cells, "" where there is none. */
  readonly formulas: readonly string[];
}

export function readHeadings(sheet: GoogleAppsScript.Spreadsheet.Sheet): Headings {
  const range = sheet.getRange(1, 1, 1, sheet.getMaxColumns());
  const shown = (range.getDisplayValues()[0] ?? []).map(String);
  const formulas = range.getFormulas()[0] ?? [];
  let count = shown.length;
  while (count > 0 && shown[count - 1] === '' && !formulas[count - 1]) count--;
  return { shown: shown.slice(0, count), formulas: formulas.slice(0, count) };
}
