import { changeLayout, rangeOf, sheetSize } from '../sheetNamed.ts';
import { SELF } from '../standIn/protocolTypes.ts';
import { sheets } from '../univer.ts';
import { answerMethod, type Methods, type Session, writeMethod } from './session.ts';
import { type Dimension, rowsOrColumns, sheetMutation } from './sheetMutation.ts';
import { type SheetRef, sheetOf } from './sheetOf.ts';
import { integerArgument, optionalIntegerArgument } from './textArgument.ts';

function insert(
  kind: Dimension,
  place: 'after' | 'before',
  counts: 'counted' | 'single' = 'counted',
) {
  return writeMethod<SheetRef>((session, ref, args) => {
    const at = integerArgument(args, 0) + (place === 'after' ? 1 : 0);
    const size = sheetSize(sheetOf(session, ref))[kind];
    if (at < 1 || at > size + 1) throw new Error(`Those ${kind} are out of bounds.`);
    const count = counts === 'single' ? 1 : integerArgument(args, 1);
    changeLayout(
      session.platform.engine,
      ref.sheet,
      `insert ${kind}`,
      rowsOrColumns(session, ref, kind, at, count),
    );
    return SELF;
  });
}

function remove(kind: Dimension) {
  return writeMethod<SheetRef>((session, ref, args) => {
    const [first, count] = [integerArgument(args, 0), optionalIntegerArgument(args, 1) ?? 1];
    const size = sheetSize(sheetOf(session, ref))[kind];
    if (first < 1 || first + count - 1 > size) throw new Error(`Those ${kind} are out of bounds.`);
    if (count === size) throw new Error(`You can't delete all the ${kind} on the sheet.`);
    const { xSplit, ySplit } = sheetOf(session, ref).getConfig().freeze;
    const still = kind === 'rows' ? ySplit : xSplit;
    const lost = Math.max(0, first + count - 1 - Math.max(still, first - 1));
    if (lost >= size - still)
      throw new Error(`Sorry, it is not possible to delete all non-frozen ${kind}.`);
    changeLayout(
      session.platform.engine,
      ref.sheet,
      `remove ${kind}`,
      rowsOrColumns(session, ref, kind, first, count),
    );
  });
}

function bandMutation(id: string, kind: Dimension) {
  return sheetMutation(id, (session, ref, args) => ({
    ranges: [
      rangeOf(
        rowsOrColumns(
          session,
          ref,
          kind,
          integerArgument(args, 0),
          optionalIntegerArgument(args, 1) ?? 1,
        ),
      ),
    ],
  }));
}

function sizeMutation(
  id: string,
  kind: Dimension,
  name: 'colWidth' | 'rowHeight',
  counts: 'one' | 'many',
) {
  return sheetMutation(id, (session, ref, args) => ({
    ranges: [
      rangeOf(
        rowsOrColumns(
          session,
          ref,
          kind,
          integerArgument(args, 0),
          counts === 'one' ? 1 : integerArgument(args, 1),
        ),
      ),
    ],
    [name]: integerArgument(args, counts === 'one' ? 1 : 2),
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

/** Rows, columns and their sizes. */
export const SHEET_LAYOUT: Methods<GoogleAppsScript.Spreadsheet.Sheet, SheetRef> = {
  getMaxRows: answerMethod((session, ref) => sheetSize(sheetOf(session, ref)).rows),
  getMaxColumns: answerMethod((session, ref) => sheetSize(sheetOf(session, ref)).columns),
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
  getColumnWidth: answerMethod((session, ref, args) =>
    sheetOf(session, ref).getColumnWidth(integerArgument(args, 0) - 1),
  ),
  getRowHeight: answerMethod((session, ref, args) =>
    sheetOf(session, ref).getRowHeight(integerArgument(args, 0) - 1),
  ),
  hideColumns: bandMutation(sheets.SetColHiddenMutation.id, 'columns'),
  showColumns: bandMutation(sheets.SetColVisibleMutation.id, 'columns'),
  hideRows: bandMutation(sheets.SetRowHiddenMutation.id, 'rows'),
  showRows: bandMutation(sheets.SetRowVisibleMutation.id, 'rows'),
  setFrozenRows: sheetMutation(sheets.SetFrozenMutation.id, (session, ref, args) =>
    frozen(session, ref, { ySplit: integerArgument(args, 0) }),
  ),
  setFrozenColumns: sheetMutation(sheets.SetFrozenMutation.id, (session, ref, args) =>
    frozen(session, ref, { xSplit: integerArgument(args, 0) }),
  ),
  getFrozenRows: answerMethod((session, ref) => sheetOf(session, ref).getConfig().freeze.ySplit),
  getFrozenColumns: answerMethod((session, ref) => sheetOf(session, ref).getConfig().freeze.xSplit),
};
