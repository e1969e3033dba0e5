import { findRange, sheetNamed, sheetNumber, usedSize } from '../sheetNamed.ts';
import { SELF } from '../standIn/protocolTypes.ts';
import { sheets, sheetsFilter } from '../univer.ts';
import { addMetadata, metadataOf } from './developerMetadata.ts';
import { chartsOf, insertChart, newChart, removeChart } from './embeddedChart.ts';
import { addProtection, protectionsOf } from './protection.ts';
import { activate } from './range.ts';
import {
  answerMethod,
  type Methods,
  type Session,
  uiMethod,
  valuesMethod,
  writeMethod,
} from './session.ts';
import { SHEET_CELLS } from './sheetCells.ts';
import { SHEET_LAYOUT } from './sheetLayout.ts';
import { sheetMutation } from './sheetMutation.ts';
import { rangeMark, requireInside, type SheetRef, sheetOf } from './sheetOf.ts';
import {
  booleanArgument,
  integerArgument,
  optionalIntegerArgument,
  optionalTextArgument,
  textArgument,
} from './textArgument.ts';

/** `getRange('A1:B2')` or `getRange(row, column, rows, columns)`, counted from 1. */
function getRange(session: Session, ref: SheetRef, args: readonly unknown[]) {
  const sheet = sheetOf(session, ref);
  if (typeof args[0] === 'string') {
    const found = findRange(session.platform.engine, args[0], ref.sheet);
    if (!found) throw new Error(`Range not found: ${args[0]}`);
    return rangeMark(found.sheet, found.box);
  }
  const startRow = integerArgument(args, 0) - 1;
  const startColumn = integerArgument(args, 1) - 1;
  const endRow = startRow + (optionalIntegerArgument(args, 2) ?? 1) - 1;
  const endColumn = startColumn + (optionalIntegerArgument(args, 3) ?? 1) - 1;
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

function rename(session: Session, ref: SheetRef, args: readonly unknown[]) {
  const { engine } = session.platform;
  const name = textArgument(args, 0);
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
  ...SHEET_LAYOUT,
  ...SHEET_CELLS,
  getName: answerMethod((session, ref) => sheetOf(session, ref).getName()),
  getSheetName: answerMethod((session, ref) => sheetOf(session, ref).getName()),
  getSheetId: answerMethod((_session, ref) => sheetNumber(ref.sheet)),
  getParent: answerMethod(() => ({ $object: 'Spreadsheet', ref: null })),
  getIndex: answerMethod(
    (session, ref) =>
      1 + session.platform.engine.workbook.getSheets().indexOf(sheetOf(session, ref)),
  ),
  getRange: answerMethod(getRange),
  getDataRange: valuesMethod(dataRange),
  getLastRow: valuesMethod(
    (session, ref) => usedSize(session.platform.engine, sheetOf(session, ref)).rows,
  ),
  getLastColumn: valuesMethod(
    (session, ref) => usedSize(session.platform.engine, sheetOf(session, ref)).columns,
  ),
  isSheetHidden: answerMethod((session, ref) => sheetOf(session, ref).isSheetHidden() === 1),
  setName: writeMethod(rename),
  hideSheet: sheetMutation(sheets.SetWorksheetHideMutation.id, () => ({ hidden: 1 })),
  showSheet: sheetMutation(sheets.SetWorksheetHideMutation.id, () => ({ hidden: 0 })),
  setTabColor: sheetMutation(sheets.SetTabColorMutation.id, (_session, _ref, args) => ({
    color: optionalTextArgument(args, 0) ?? '',
  })),
  setHiddenGridlines: sheetMutation(sheets.ToggleGridlinesMutation.id, (_session, _ref, args) => ({
    showGridlines: booleanArgument(args, 0) ? 0 : 1,
  })),
  activate: uiMethod((session, ref) =>
    activate(session, {
      sheet: ref.sheet,
      box: { startRow: 0, startColumn: 0, endRow: 0, endColumn: 0 },
    }),
  ),
  protect: writeMethod((session, ref) => addProtection(session, ref.sheet, undefined)),
  getProtections: answerMethod((session, ref, args) =>
    protectionsOf(session, ref.sheet, textArgument(args, 0)),
  ),
  newChart: answerMethod((_session, ref) => newChart(ref.sheet)),
  insertChart: writeMethod((session, ref, args) => insertChart(session, ref.sheet, args)),
  getCharts: answerMethod((session, ref) => chartsOf(session, ref.sheet)),
  removeChart: writeMethod((session, _ref, args) => removeChart(session, args)),
  addDeveloperMetadata: writeMethod((session, ref, args) => addMetadata(session, ref.sheet, args)),
  getDeveloperMetadata: answerMethod((session, ref) => metadataOf(session, ref.sheet)),
  getFilter: answerMethod((session, ref) =>
    session.platform.engine.filterRange(ref.sheet) ? { $object: 'Filter', ref } : null,
  ),
};

export const FILTER: Methods<GoogleAppsScript.Spreadsheet.Filter, SheetRef> = {
  remove: sheetMutation(sheetsFilter.RemoveSheetsFilterMutation.id, () => ({})),
};
