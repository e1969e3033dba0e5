import type { Workbook } from '@cj-tech-master/excelts';
import type { IRange, ISheetDataValidationRule } from '@univerjs/core';
import type { PlatformState } from '../platformState.ts';

/** What an .xlsx file has no place for, kept as JSON in a very hidden sheet. */
export interface HiddenPart {
  /** Sheets in order; the ids are what formulas' extents and protections point to. */
  readonly sheets: readonly {
    readonly id: string;
    readonly name: string;
    readonly rows: number;
    readonly columns: number;
    /** Extents of spilling formulas: the cells in them, but the first, hold cached values only. */
    readonly spills: readonly IRange[];
    /** Rules the file has no form for. */
    readonly rules: readonly ISheetDataValidationRule[];
  }[];
  /** Files that were written before carry this key. */
  readonly extras: PlatformState;
}

export const HIDDEN_NAME = '_workbench';

/** Longest text of a cell in an .xlsx file. */
const CELL_LIMIT = 30_000;

export function writeHidden(workbook: Workbook, part: HiddenPart): void {
  const sheet = workbook.addWorksheet(HIDDEN_NAME);
  sheet.state = 'veryHidden';
  const json = JSON.stringify(part);
  for (let at = 0, row = 1; at < json.length; at += CELL_LIMIT, row++) {
    sheet.getCell(row, 1).value = json.slice(at, at + CELL_LIMIT);
  }
}

/** Undefined for a file that another program made. */
export function readHidden(workbook: Workbook): HiddenPart | undefined {
  const sheet = workbook.getWorksheet(HIDDEN_NAME);
  if (!sheet) return undefined;
  const pieces: string[] = [];
  for (let row = 1; row <= sheet.rowCount; row++)
    pieces.push(String(sheet.getCell(row, 1).value ?? ''));
  // Written by writeHidden in this form.
  return JSON.parse(pieces.join('')) as HiddenPart;
}
