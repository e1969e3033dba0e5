import type { IWorksheetData } from '@univerjs/core';
import { emptySheet } from '../emptyWorkbook.ts';
import { type Box, formatA1, quoteSheet } from '../parseA1.ts';
import { findRange, sheetById, sheetNamed, sheetNumber, unusedSheetId } from '../sheetNamed.ts';
import { formula, sheets } from '../univer.ts';
import { addMetadata, metadataOf } from './developerMetadata.ts';
import { optionalText, pointed, text, whole } from './optionalText.ts';
import { protectionsOf } from './protection.ts';
import { activate } from './range.ts';
import { answer, type Methods, type Session, ui, write } from './session.ts';
import { NEW_RULE } from './setRule.ts';
import { type RangeRef, rangeMark, type SheetRef, sheetMark } from './sheetOf.ts';

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
  const { sheet } = pointed<SheetRef>(args, 0, 'Sheet');
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
  const name = text(args, 0);
  const target = namedRange(session, name)?.formulaOrRefString.replace(/^=/, '').replace(/\$/g, '');
  const found = findRange(session.platform.engine, target ?? name, session.selection.sheet);
  return found ? rangeMark(found.sheet, found.box) : null;
}

function setNamedRange(session: Session, _ref: null, args: readonly unknown[]) {
  const { engine } = session.platform;
  const name = text(args, 0);
  if (!/^[A-Za-z_][A-Za-z0-9_]*$/.test(name)) throw new Error(`"${name}" is no valid range name`);
  const ref = pointed<RangeRef>(args, 1, 'Range');
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
  const found = namedRange(session, text(args, 0));
  if (!found) throw new Error(`The range name "${text(args, 0)}" does not exist`);
  const params = { ...found, unitId: engine.unit };
  engine.mutate(formula.RemoveDefinedNameMutation.id, params, 'host');
}

function getRange(session: Session, _ref: null, args: readonly unknown[]) {
  const found = findRange(session.platform.engine, text(args, 0), session.selection.sheet);
  if (!found) throw new Error(`Range not found: ${text(args, 0)}`);
  return rangeMark(found.sheet, found.box);
}

function setActiveSheet(session: Session, _ref: null, args: readonly unknown[]) {
  const { sheet } = pointed<SheetRef>(args, 0, 'Sheet');
  activate(session, { sheet, box: FIRST_CELL });
  return sheetMark(sheet);
}

const activeCell = (session: Session) => {
  const { sheet, box } = session.selection;
  return rangeMark(sheet, { ...box, endRow: box.startRow, endColumn: box.startColumn });
};

const selected = (session: Session) => rangeMark(session.selection.sheet, session.selection.box);

function toast(session: Session, _ref: null, args: readonly unknown[]) {
  const title = optionalText(args, 1) ?? '';
  session.platform.show(session.window, { kind: 'toast', title, text: text(args, 0) });
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
  getId: answer((session) => session.platform.spreadsheetId),
  getName: answer((session) => session.platform.engine.workbook.getName()),
  // Without a server there is no address; what is built from it stays recognizable.
  getUrl: answer(
    (session) => `https://docs.google.com/spreadsheets/d/${session.platform.spreadsheetId}/edit`,
  ),
  getSpreadsheetTimeZone: answer((session) => session.platform.zone),
  getSpreadsheetLocale: answer(() => 'en_US'),
  getSheetByName: answer((session, _ref, args) => {
    const name = text(args, 0);
    const found = session.platform.engine.workbook
      .getSheets()
      .find((sheet) => sheet.getName() === name);
    return found ? sheetMark(found.getSheetId()) : null;
  }),
  getSheetById: answer((session, _ref, args) => {
    const found = session.platform.engine.workbook
      .getSheets()
      .find((sheet) => sheetNumber(sheet.getSheetId()) === whole(args, 0));
    return found ? sheetMark(found.getSheetId()) : null;
  }),
  getSheets: answer((session) =>
    session.platform.engine.workbook.getSheets().map((sheet) => sheetMark(sheet.getSheetId())),
  ),
  getNumSheets: answer((session) => session.platform.engine.workbook.getSheets().length),
  getActiveSheet: answer((session) => sheetMark(session.selection.sheet)),
  getActiveRange: answer(selected),
  getCurrentCell: answer(activeCell),
  getRange: answer(getRange),
  getRangeByName: answer(getRangeByName),
  getProtections: answer((session, _ref, args) => protectionsOf(session, undefined, text(args, 0))),
  getDeveloperMetadata: answer((session) => metadataOf(session, undefined)),
  addDeveloperMetadata: write((session, _ref, args) => addMetadata(session, undefined, args)),
  insertSheet: write(insertSheet),
  deleteSheet: write(deleteSheet),
  moveActiveSheet: write(moveActiveSheet),
  setNamedRange: write(setNamedRange),
  removeNamedRange: write(removeNamedRange),
  rename: write((session, _ref, args) => {
    session.platform.engine.mutate(
      'sheet.mutation.set-workbook-name',
      { unitId: session.platform.engine.unit, name: text(args, 0) },
      'host',
    );
  }),
  setActiveSheet: ui(setActiveSheet),
  setActiveRange: ui((session, _ref, args) => {
    activate(session, pointed<RangeRef>(args, 0, 'Range'));
    return args[0];
  }),
  toast: ui(toast),
};

export const SPREADSHEET_APP: Methods<GoogleAppsScript.Spreadsheet.SpreadsheetApp, null> = {
  getActive: answer(() => ({ $object: 'Spreadsheet', ref: null })),
  getActiveSpreadsheet: answer(() => ({ $object: 'Spreadsheet', ref: null })),
  getActiveSheet: answer((session) => sheetMark(session.selection.sheet)),
  getActiveRange: answer(selected),
  getCurrentCell: answer(activeCell),
  getUi: answer(() => ({ $object: 'Ui', ref: null })),
  flush: { effect: 'values', run: () => undefined },
  newDataValidation: answer(() => ({ $object: 'DataValidationBuilder', ref: NEW_RULE })),
  setActiveSheet: ui(setActiveSheet),
};
