import type { IWorksheetData } from '@univerjs/core';
import { emptySheet } from '../emptyWorkbook.ts';
import { type Box, formatA1, quoteSheet } from '../parseA1.ts';
import { findRange, sheetById, sheetNamed, sheetNumber, unusedSheetId } from '../sheetNamed.ts';
import { formula, sheets } from '../univer.ts';
import { addMetadata, metadataOf } from './developerMetadata.ts';
import { protectionsOf } from './protection.ts';
import { activate } from './range.ts';
import { answerMethod, type Methods, type Session, uiMethod, writeMethod } from './session.ts';
import { NEW_RULE } from './setRule.ts';
import { type RangeRef, rangeMark, type SheetRef, sheetMark } from './sheetOf.ts';
import {
  integerArgument,
  objectArgument,
  optionalTextArgument,
  textArgument,
} from './textArgument.ts';

const FIRST_CELL: Box = { startRow: 0, startColumn: 0, endRow: 0, endColumn: 0 };

function unusedName(session: Session): string {
  const { engine } = session.platform;
  for (let count = engine.workbook.getSheets().length + 1; ; count++) {
    if (!sheetNamed(engine, `Sheet${count}`)) return `Sheet${count}`;
  }
}

/** `insertSheet()`, `insertSheet(name)`, `insertSheet(index)` or `insertSheet(name, index)`. */
function insertSheet(session: Session, _ref: null, args: readonly unknown[]) {
  const { engine } = session.platform;
  const name = typeof args[0] === 'string' ? args[0] : unusedName(session);
  if (sheetNamed(engine, name)) {
    throw new Error(`A sheet with the name "${name}" already exists. Please enter another name.`);
  }
  const at = args.find((arg): arg is number => typeof arg === 'number');
  const all = engine.workbook.getSheets();
  const id = unusedSheetId(all.map((sheet) => sheet.getSheetId()));
  // Univer fills the rest of the sheet's data in.
  const sheet = emptySheet(id, name) as IWorksheetData;
  const params = { unitId: engine.unit, index: at ?? all.length, sheet };
  engine.mutate(sheets.InsertSheetMutation.id, params, 'host');
  session.selection = { sheet: id, box: FIRST_CELL };
  return sheetMark(id);
}

function deleteSheet(session: Session, _ref: null, args: readonly unknown[]) {
  const { engine } = session.platform;
  const { sheet } = objectArgument<SheetRef>(args, 0, 'Sheet');
  const name = sheetById(engine, sheet).getName();
  const rest = engine.workbook.getSheets().filter((item) => item.getSheetId() !== sheet);
  const next = rest[0];
  if (!next) throw new Error("You can't remove all the sheets in a document.");
  const params = { unitId: engine.unit, subUnitId: sheet, subUnitName: name };
  engine.mutate(sheets.RemoveSheetMutation.id, params, 'host');
  if (session.selection.sheet === sheet) {
    session.selection = { sheet: next.getSheetId(), box: FIRST_CELL };
  }
}

function namedRange(session: Session, name: string) {
  const names = Object.values(session.platform.engine.definedNames());
  return names.find((item) => item.name.toLowerCase() === name.toLowerCase());
}

function getRangeByName(session: Session, _ref: null, args: readonly unknown[]) {
  const name = textArgument(args, 0);
  const target = namedRange(session, name)?.formulaOrRefString.replace(/^=/, '').replace(/\$/g, '');
  const found = findRange(session.platform.engine, target ?? name, session.selection.sheet);
  return found ? rangeMark(found.sheet, found.box) : null;
}

function setNamedRange(session: Session, _ref: null, args: readonly unknown[]) {
  const { engine } = session.platform;
  const name = textArgument(args, 0);
  if (!/^[A-Za-z_][A-Za-z0-9_]*$/.test(name)) throw new Error(`"${name}" is no valid range name`);
  const ref = objectArgument<RangeRef>(args, 1, 'Range');
  const cells = formatA1(ref.box).replace(/([A-Z]+)(\d+)/g, '$$$1$$$2');
  const params = {
    unitId: engine.unit,
    id: namedRange(session, name)?.id ?? session.platform.uuid(),
    name,
    formulaOrRefString: `${quoteSheet(sheetById(engine, ref.sheet).getName())}!${cells}`,
  };
  engine.mutate(formula.SetDefinedNameMutation.id, params, 'host');
}

function removeNamedRange(session: Session, _ref: null, args: readonly unknown[]) {
  const { engine } = session.platform;
  const found = namedRange(session, textArgument(args, 0));
  if (!found) throw new Error(`The range name "${textArgument(args, 0)}" does not exist`);
  const params = { ...found, unitId: engine.unit };
  engine.mutate(formula.RemoveDefinedNameMutation.id, params, 'host');
}

function getRange(session: Session, _ref: null, args: readonly unknown[]) {
  const found = findRange(session.platform.engine, textArgument(args, 0), session.selection.sheet);
  if (!found) throw new Error(`Range not found: ${textArgument(args, 0)}`);
  return rangeMark(found.sheet, found.box);
}

function setActiveSheet(session: Session, _ref: null, args: readonly unknown[]) {
  const { sheet } = objectArgument<SheetRef>(args, 0, 'Sheet');
  activate(session, { sheet, box: FIRST_CELL });
  return sheetMark(sheet);
}

const activeCell = (session: Session) => {
  const { sheet, box } = session.selection;
  return rangeMark(sheet, { ...box, endRow: box.startRow, endColumn: box.startColumn });
};

const selected = (session: Session) => rangeMark(session.selection.sheet, session.selection.box);

function toast(session: Session, _ref: null, args: readonly unknown[]) {
  const title = optionalTextArgument(args, 1) ?? '';
  session.platform.show(session.window, { kind: 'toast', title, text: textArgument(args, 0) });
}

function moveActiveSheet(session: Session, _ref: null, args: readonly unknown[]) {
  const { engine } = session.platform;
  const fromOrder = engine.workbook
    .getSheets()
    .findIndex((item) => item.getSheetId() === session.selection.sheet);
  const params = {
    unitId: engine.unit,
    subUnitId: session.selection.sheet,
    fromOrder,
    toOrder: Number(args[0]) - 1,
  };
  engine.mutate(sheets.SetWorksheetOrderMutation.id, params, 'host');
}

export const SPREADSHEET: Methods<GoogleAppsScript.Spreadsheet.Spreadsheet, null> = {
  getId: answerMethod((session) => session.platform.spreadsheetId),
  getName: answerMethod((session) => session.platform.engine.workbook.getName()),
  // Without a server there is no address; what is built from it stays recognizable.
  getUrl: answerMethod(
    (session) => `https://docs.google.com/spreadsheets/d/${session.platform.spreadsheetId}/edit`,
  ),
  getSpreadsheetTimeZone: answerMethod((session) => session.platform.zone),
  getSpreadsheetLocale: answerMethod((session) => session.platform.locale),
  getSheetByName: answerMethod((session, _ref, args) => {
    const name = textArgument(args, 0);
    const found = session.platform.engine.workbook
      .getSheets()
      .find((sheet) => sheet.getName() === name);
    return found ? sheetMark(found.getSheetId()) : null;
  }),
  getSheetById: answerMethod((session, _ref, args) => {
    const found = session.platform.engine.workbook
      .getSheets()
      .find((sheet) => sheetNumber(sheet.getSheetId()) === integerArgument(args, 0));
    return found ? sheetMark(found.getSheetId()) : null;
  }),
  getSheets: answerMethod((session) =>
    session.platform.engine.workbook.getSheets().map((sheet) => sheetMark(sheet.getSheetId())),
  ),
  getNumSheets: answerMethod((session) => session.platform.engine.workbook.getSheets().length),
  getActiveSheet: answerMethod((session) => sheetMark(session.selection.sheet)),
  getActiveRange: answerMethod(selected),
  getCurrentCell: answerMethod(activeCell),
  getRange: answerMethod(getRange),
  getRangeByName: answerMethod(getRangeByName),
  getProtections: answerMethod((session, _ref, args) =>
    protectionsOf(session, undefined, textArgument(args, 0)),
  ),
  getDeveloperMetadata: answerMethod((session) => metadataOf(session, undefined)),
  addDeveloperMetadata: writeMethod((session, _ref, args) => addMetadata(session, undefined, args)),
  insertSheet: writeMethod(insertSheet),
  deleteSheet: writeMethod(deleteSheet),
  moveActiveSheet: writeMethod(moveActiveSheet),
  setNamedRange: writeMethod(setNamedRange),
  removeNamedRange: writeMethod(removeNamedRange),
  rename: writeMethod((session, _ref, args) => {
    session.platform.engine.mutate(
      'sheet.mutation.set-workbook-name',
      { unitId: session.platform.engine.unit, name: textArgument(args, 0) },
      'host',
    );
  }),
  setActiveSheet: uiMethod(setActiveSheet),
  setActiveRange: uiMethod((session, _ref, args) => {
    activate(session, objectArgument<RangeRef>(args, 0, 'Range'));
    return args[0];
  }),
  toast: uiMethod(toast),
};

export const SPREADSHEET_APP: Methods<GoogleAppsScript.Spreadsheet.SpreadsheetApp, null> = {
  getActive: answerMethod(() => ({ $object: 'Spreadsheet', ref: null })),
  getActiveSpreadsheet: answerMethod(() => ({ $object: 'Spreadsheet', ref: null })),
  getActiveSheet: answerMethod((session) => sheetMark(session.selection.sheet)),
  getActiveRange: answerMethod(selected),
  getCurrentCell: answerMethod(activeCell),
  getUi: answerMethod(() => ({ $object: 'Ui', ref: null })),
  flush: { effect: 'values', run: () => undefined },
  newDataValidation: answerMethod(() => ({ $object: 'DataValidationBuilder', ref: NEW_RULE })),
  setActiveSheet: uiMethod(setActiveSheet),
};
