import type { ICellData } from '@univerjs/core';
import type { Box } from '../a1.ts';
import {
  changeLayout,
  changesFor,
  findRange,
  rangeOf,
  sheetNamed,
  sheetSize,
  usedSize,
  writeCells,
} from '../book.ts';
import { storedCell } from '../cells.ts';
import { SELF } from '../standIn/protocol.ts';
import { sheets, sheetsFilter } from '../univer.ts';
import { content, flag, list, optionalText, optionalWhole, text, whole } from './args.ts';
import { addMetadata, metadataOf } from './metadata.ts';
import { addProtection, protectionsOf } from './protection.ts';
import { activate } from './range.ts';
import { rangeMark, requireInside, type SheetRef, sheetOf, writeChecked } from './refs.ts';
import { answer, type Methods, type Session, ui, values, write } from './session.ts';

/** Sheet ids are numbers for the add-on and text for Univer. */
export function sheetNumber(id: string): number {
  return Number(id);
}

function wholeSheet(session: Session, ref: SheetRef): Box {
  const { rows, columns } = sheetSize(sheetOf(session, ref));
  return { startRow: 0, startColumn: 0, endRow: rows - 1, endColumn: columns - 1 };
}

/** `getRange('A1:B2')` or `getRange(row, column, rows, columns)`, counted from 1. */
function getRange(session: Session, ref: SheetRef, args: readonly unknown[]) {
  const sheet = sheetOf(session, ref);
  if (typeof args[0] === 'string') {
    const found = findRange(session.platform.engine, args[0], ref.sheet);
    if (!found) throw new Error(`Range not found: ${args[0]}`);
    return rangeMark(found.sheet, found.box);
  }
  const startRow = whole(args, 0) - 1;
  const startColumn = whole(args, 1) - 1;
  const endRow = startRow + (optionalWhole(args, 2) ?? 1) - 1;
  const endColumn = startColumn + (optionalWhole(args, 3) ?? 1) - 1;
  return rangeMark(ref.sheet, requireInside(sheet, { startRow, startColumn, endRow, endColumn }));
}

function dataRange(session: Session, ref: SheetRef) {
  const { rows, columns } = usedSize(session.platform.engine, sheetOf(session, ref));
  const box = {
    startRow: 0,
    startColumn: 0,
    endRow: Math.max(rows, 1) - 1,
    endColumn: Math.max(columns, 1) - 1,
  };
  return rangeMark(ref.sheet, box);
}

type Kind = 'rows' | 'columns';

/** Whole rows or columns from a place counted from 1. */
function band(session: Session, ref: SheetRef, kind: Kind, first: number, count: number): Box {
  const box = wholeSheet(session, ref);
  if (count < 1) throw new Error(`The number of ${kind} must be at least 1.`);
  return kind === 'rows'
    ? { ...box, startRow: first - 1, endRow: first + count - 2 }
    : { ...box, startColumn: first - 1, endColumn: first + count - 2 };
}

function insert(kind: Kind, place: 'after' | 'before', counts: 'counted' | 'single' = 'counted') {
  return write<SheetRef>((session, ref, args) => {
    const at = whole(args, 0) + (place === 'after' ? 1 : 0);
    const size = sheetSize(sheetOf(session, ref))[kind];
    if (at < 1 || at > size + 1) throw new Error(`Those ${kind} are out of bounds.`);
    const count = counts === 'single' ? 1 : whole(args, 1);
    changeLayout(
      session.platform.engine,
      ref.sheet,
      `insert ${kind}`,
      band(session, ref, kind, at, count),
    );
    return SELF;
  });
}

function remove(kind: Kind) {
  return write<SheetRef>((session, ref, args) => {
    const [first, count] = [whole(args, 0), optionalWhole(args, 1) ?? 1];
    const size = sheetSize(sheetOf(session, ref))[kind];
    if (first < 1 || first + count - 1 > size) throw new Error(`Those ${kind} are out of bounds.`);
    if (count === size) throw new Error(`You can't delete all the ${kind} on the sheet.`);
    changeLayout(
      session.platform.engine,
      ref.sheet,
      `remove ${kind}`,
      band(session, ref, kind, first, count),
    );
  });
}

/** Runs a mutation that names one sheet. */
function sheetMutation(
  id: string,
  params: (session: Session, ref: SheetRef, args: readonly unknown[]) => object,
) {
  return write<SheetRef>((session, ref, args) => {
    const target = { unitId: session.platform.engine.unit, subUnitId: ref.sheet };
    session.platform.engine.mutate(id, { ...target, ...params(session, ref, args) }, 'host');
    return SELF;
  });
}

function bandMutation(id: string, kind: Kind) {
  return sheetMutation(id, (session, ref, args) => ({
    ranges: [rangeOf(band(session, ref, kind, whole(args, 0), optionalWhole(args, 1) ?? 1))],
  }));
}

/** As above for `hideColumn(range)`. */
function sizeMutation(
  id: string,
  kind: Kind,
  name: 'colWidth' | 'rowHeight',
  counts: 'one' | 'many',
) {
  return sheetMutation(id, (session, ref, args) => ({
    ranges: [
      rangeOf(band(session, ref, kind, whole(args, 0), counts === 'one' ? 1 : whole(args, 1))),
    ],
    [name]: whole(args, counts === 'one' ? 1 : 2),
  }));
}

function frozen(
  session: Session,
  ref: SheetRef,
  part: { readonly xSplit?: number; readonly ySplit?: number },
) {
  const now = { ...sheetOf(session, ref).getConfig().freeze, ...part };
  return {
    xSplit: now.xSplit,
    ySplit: now.ySplit,
    startRow: now.ySplit === 0 ? -1 : now.ySplit,
    startColumn: now.xSplit === 0 ? -1 : now.xSplit,
  };
}

function clearing(cell: ICellData) {
  return write<SheetRef>((session, ref) => {
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
  const row = list(args, 0);
  const sheet = sheetOf(session, ref);
  const at = usedSize(engine, sheet).rows;
  const { rows, columns } = sheetSize(sheet);
  if (at >= rows)
    changeLayout(engine, ref.sheet, 'insert rows', band(session, ref, 'rows', rows + 1, 1));
  if (row.length > columns) {
    const missing = band(session, ref, 'columns', columns + 1, row.length - columns);
    changeLayout(engine, ref.sheet, 'insert columns', missing);
  }
  const box = { startRow: at, startColumn: 0, endRow: at, endColumn: row.length - 1 };
  const changes = changesFor(box, (_row, column) => storedCell(content(row[column]), '', zone));
  writeChecked(session, ref.sheet, changes);
  return SELF;
}

function rename(session: Session, ref: SheetRef, args: readonly unknown[]) {
  const { engine } = session.platform;
  const name = text(args, 0);
  const other = sheetNamed(engine, name);
  if (other && other.getSheetId() !== ref.sheet) {
    throw new Error(`A sheet with the name "${name}" already exists. Please enter another name.`);
  }
  engine.command(sheets.SetWorksheetNameCommand.id, {
    unitId: engine.unit,
    subUnitId: ref.sheet,
    name,
  });
  return SELF;
}

export const SHEET: Methods<GoogleAppsScript.Spreadsheet.Sheet, SheetRef> = {
  getName: answer((session, ref) => sheetOf(session, ref).getName()),
  getSheetName: answer((session, ref) => sheetOf(session, ref).getName()),
  getSheetId: answer((_session, ref) => sheetNumber(ref.sheet)),
  getParent: answer(() => ({ $object: 'Spreadsheet', ref: null })),
  getIndex: answer(
    (session, ref) =>
      1 + session.platform.engine.workbook.getSheets().indexOf(sheetOf(session, ref)),
  ),
  getRange: answer(getRange),
  getDataRange: values(dataRange),
  getLastRow: values(
    (session, ref) => usedSize(session.platform.engine, sheetOf(session, ref)).rows,
  ),
  getLastColumn: values(
    (session, ref) => usedSize(session.platform.engine, sheetOf(session, ref)).columns,
  ),
  getMaxRows: answer((session, ref) => sheetSize(sheetOf(session, ref)).rows),
  getMaxColumns: answer((session, ref) => sheetSize(sheetOf(session, ref)).columns),
  getFrozenRows: answer((session, ref) => sheetOf(session, ref).getConfig().freeze.ySplit),
  getFrozenColumns: answer((session, ref) => sheetOf(session, ref).getConfig().freeze.xSplit),
  getColumnWidth: answer((session, ref, args) =>
    sheetOf(session, ref).getColumnWidth(whole(args, 0) - 1),
  ),
  getRowHeight: answer((session, ref, args) =>
    sheetOf(session, ref).getRowHeight(whole(args, 0) - 1),
  ),
  isSheetHidden: answer((session, ref) => sheetOf(session, ref).isSheetHidden() === 1),
  setName: write(rename),
  insertRowsAfter: insert('rows', 'after'),
  insertRowsBefore: insert('rows', 'before'),
  insertRowAfter: insert('rows', 'after', 'single'),
  insertRowBefore: insert('rows', 'before', 'single'),
  insertColumnsAfter: insert('columns', 'after'),
  insertColumnsBefore: insert('columns', 'before'),
  deleteRow: remove('rows'),
  deleteRows: remove('rows'),
  deleteColumn: remove('columns'),
  deleteColumns: remove('columns'),
  appendRow: write(appendRow),
  clear: clearing({ ...NO_CONTENT, s: null }),
  clearContents: clearing(NO_CONTENT),
  clearFormats: clearing({ s: null }),
  clearNotes: clearing({ custom: null }),
  setFrozenRows: sheetMutation(sheets.SetFrozenMutation.id, (session, ref, args) =>
    frozen(session, ref, { ySplit: whole(args, 0) }),
  ),
  setFrozenColumns: sheetMutation(sheets.SetFrozenMutation.id, (session, ref, args) =>
    frozen(session, ref, { xSplit: whole(args, 0) }),
  ),
  setColumnWidth: sizeMutation(
    sheets.SetWorksheetColWidthMutation.id,
    'columns',
    'colWidth',
    'one',
  ),
  setColumnWidths: sizeMutation(
    sheets.SetWorksheetColWidthMutation.id,
    'columns',
    'colWidth',
    'many',
  ),
  setRowHeight: sizeMutation(sheets.SetWorksheetRowHeightMutation.id, 'rows', 'rowHeight', 'one'),
  setRowHeights: sizeMutation(sheets.SetWorksheetRowHeightMutation.id, 'rows', 'rowHeight', 'many'),
  hideColumns: bandMutation(sheets.SetColHiddenMutation.id, 'columns'),
  showColumns: bandMutation(sheets.SetColVisibleMutation.id, 'columns'),
  hideRows: bandMutation(sheets.SetRowHiddenMutation.id, 'rows'),
  showRows: bandMutation(sheets.SetRowVisibleMutation.id, 'rows'),
  hideSheet: sheetMutation(sheets.SetWorksheetHideMutation.id, () => ({ hidden: 1 })),
  showSheet: sheetMutation(sheets.SetWorksheetHideMutation.id, () => ({ hidden: 0 })),
  setTabColor: sheetMutation(sheets.SetTabColorMutation.id, (_session, _ref, args) => ({
    color: optionalText(args, 0) ?? '',
  })),
  setHiddenGridlines: sheetMutation(sheets.ToggleGridlinesMutation.id, (_session, _ref, args) => ({
    showGridlines: flag(args, 0) ? 0 : 1,
  })),
  activate: ui((session, ref) =>
    activate(session, {
      sheet: ref.sheet,
      box: { startRow: 0, startColumn: 0, endRow: 0, endColumn: 0 },
    }),
  ),
  protect: write((session, ref) => addProtection(session, ref.sheet, undefined)),
  getProtections: answer((session, ref, args) => protectionsOf(session, ref.sheet, text(args, 0))),
  addDeveloperMetadata: write((session, ref, args) => addMetadata(session, ref.sheet, args)),
  getDeveloperMetadata: answer((session, ref) => metadataOf(session, ref.sheet)),
  getFilter: answer((session, ref) =>
    session.platform.engine.filterRange(ref.sheet) ? { $object: 'Filter', ref } : null,
  ),
};

export const FILTER: Methods<GoogleAppsScript.Spreadsheet.Filter, SheetRef> = {
  remove: sheetMutation(sheetsFilter.RemoveSheetsFilterMutation.id, () => ({})),
};
