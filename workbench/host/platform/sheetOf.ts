import type { ICellData, Worksheet } from '@univerjs/core';
import { type Box, columnName, formatA1 } from '../parseA1.ts';
import { type CellChanges, changesFor, sheetById, sheetSize, writeCells } from '../sheetNamed.ts';
import type { ObjectMark } from '../standIn/protocolTypes.ts';
import { checkValidation } from './checkValidation.ts';
import type { Session } from './session.ts';

/** What the platform's objects point to. */
export interface SheetRef {
  readonly sheet: string;
}

export interface RangeRef extends SheetRef {
  readonly box: Box;
}

export function sheetMark(sheet: string): ObjectMark {
  return { $object: 'Sheet', ref: { sheet } satisfies SheetRef };
}

export function rangeMark(sheet: string, box: Box): ObjectMark {
  return { $object: 'Range', ref: { sheet, box } satisfies RangeRef };
}

export function sheetOf(session: Session, ref: SheetRef): Worksheet {
  return sheetById(session.platform.engine, ref.sheet);
}

export function rowsOf(ref: RangeRef): number {
  return ref.box.endRow - ref.box.startRow + 1;
}

export function columnsOf(ref: RangeRef): number {
  return ref.box.endColumn - ref.box.startColumn + 1;
}

/** @throws Error when a range reaches beyond the sheet */
export function requireInside(sheet: Worksheet, box: Box): Box {
  const { rows, columns } = sheetSize(sheet);
  if (box.startRow < 0 || box.startColumn < 0) {
    throw new Error('The starting row or column of the range is too small.');
  }
  if (box.endRow < box.startRow)
    throw new Error('The number of rows in the range must be at least 1.');
  if (box.endColumn < box.startColumn) {
    throw new Error('The number of columns in the range must be at least 1.');
  }
  if (box.endRow >= rows || box.endColumn >= columns) {
    throw new Error('The coordinates of the range are outside the dimensions of the sheet.');
  }
  return box;
}

/** Reads every cell of a range into rows. */
export function mapCells<Value>(
  ref: RangeRef,
  read: (row: number, column: number) => Value,
): readonly (readonly Value[])[] {
  return Array.from({ length: rowsOf(ref) }, (_row, row) =>
    Array.from({ length: columnsOf(ref) }, (_column, column) =>
      read(ref.box.startRow + row, ref.box.startColumn + column),
    ),
  );
}

/**
 * Changes every cell of a range.
 *
 * @throws Error when a value breaks a rule that rejects it, before anything is written
 */
export function writeEachCell(
  session: Session,
  ref: RangeRef,
  cell: (row: number, column: number, index: { row: number; column: number }) => ICellData,
): void {
  const { box } = ref;
  const changes = changesFor(box, (row, column) =>
    cell(row, column, { row: row - box.startRow, column: column - box.startColumn }),
  );
  writeChecked(session, ref.sheet, changes);
}

export function writeChecked(session: Session, sheet: string, changes: CellChanges): void {
  checkValidation(session, sheet, changes);
  writeCells(session.platform.engine, sheet, changes);
}

/** A1 text; whole columns or rows as the platform writes them. */
export function a1Of(session: Session, ref: RangeRef): string {
  const { rows } = sheetSize(sheetOf(session, ref));
  const { startRow, endRow, startColumn, endColumn } = ref.box;
  const tall = startRow === 0 && endRow === rows - 1 && rows > 1;
  return tall ? `${columnName(startColumn)}:${columnName(endColumn)}` : formatA1(ref.box);
}
