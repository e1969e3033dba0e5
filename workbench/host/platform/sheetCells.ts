import type { ICellData } from '@univerjs/core';
import { storedCell } from '../cellContent.ts';
import { changeLayout, changesFor, sheetSize, usedSize, writeCells } from '../sheetNamed.ts';
import { SELF } from '../standIn/protocolTypes.ts';
import { type Methods, type Session, writeMethod } from './session.ts';
import { rowsOrColumns, wholeSheet } from './sheetMutation.ts';
import { type SheetRef, sheetOf, writeChecked } from './sheetOf.ts';
import { arrayArgument, cellContentOf } from './textArgument.ts';

function clearing(cell: ICellData) {
  return writeMethod<SheetRef>((session, ref) => {
    const matrix = sheetOf(session, ref).getCellMatrix();
    const changes = changesFor(wholeSheet(session, ref), (row, column) =>
      matrix.getValue(row, column) ? { ...cell } : undefined,
    );
    writeCells(session.platform.engine, ref.sheet, changes);
    return SELF;
  });
}

const NO_CONTENT: ICellData = { v: null, f: null, si: null, t: null, p: null };

function appendRow(session: Session, ref: SheetRef, args: readonly unknown[]) {
  const { engine, zone } = session.platform;
  const row = arrayArgument(args, 0);
  const sheet = sheetOf(session, ref);
  const at = usedSize(engine, sheet).rows;
  const { rows, columns } = sheetSize(sheet);
  if (at >= rows)
    changeLayout(
      engine,
      ref.sheet,
      'insert rows',
      rowsOrColumns(session, ref, 'rows', rows + 1, 1),
    );
  if (row.length > columns) {
    const missing = rowsOrColumns(session, ref, 'columns', columns + 1, row.length - columns);
    changeLayout(engine, ref.sheet, 'insert columns', missing);
  }
  const box = { startRow: at, startColumn: 0, endRow: at, endColumn: row.length - 1 };
  const changes = changesFor(box, (_row, column) =>
    storedCell(cellContentOf(row[column]), '', zone),
  );
  writeChecked(session, ref.sheet, changes);
  return SELF;
}

/** Clearing a whole sheet, and adding a row below its content. */
export const SHEET_CELLS: Methods<GoogleAppsScript.Spreadsheet.Sheet, SheetRef> = {
  clear: clearing({ ...NO_CONTENT, s: null }),
  clearContents: clearing(NO_CONTENT),
  clearFormats: clearing({ s: null }),
  clearNotes: clearing({ custom: null }),
  appendRow: { effect: 'write below values', run: appendRow },
};
