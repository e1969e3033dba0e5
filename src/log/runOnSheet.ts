import { readCells } from '../platform/workbook.ts';
import { RUN_SHEET } from '../runSheet/writeRunSheetTab.ts';

/** Texts of the sheet *Run sheet*; its run id is one of them. Empty when no run sheet was made yet. */
export function runOnSheet(): readonly string[] {
  return readCells(RUN_SHEET).flatMap((row) => row.map(String));
}
