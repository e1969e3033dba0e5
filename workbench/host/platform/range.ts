import type { ICellData } from '@univerjs/core';
import { type Box, formatA1 } from '../parseA1.ts';
import { changesFor, rangeOf, sheetById, writeCells } from '../sheetNamed.ts';
import { SELF } from '../standIn/protocolTypes.ts';
import { core, sheets, sheetsFilter } from '../univer.ts';
import { fromUniver } from './fromUniver.ts';
import { addProtection } from './protection.ts';
import { RANGE_FORMAT } from './rangeFormat.ts';
import { all, one, RANGE_VALUES } from './rangeValues.ts';
import { answerMethod, type Methods, type Session, uiMethod, writeMethod } from './session.ts';
import { NEW_RULE, type RuleRef, setRule } from './setRule.ts';
import {
  a1Of,
  columnsOf,
  type RangeRef,
  rangeMark,
  requireInside,
  rowsOf,
  sheetMark,
  sheetOf,
  writeChecked,
} from './sheetOf.ts';
import { sortRange } from './sortRange.ts';
import {
  integerArgument,
  matrixArgument,
  objectArgument,
  optionalIntegerArgument,
} from './textArgument.ts';

const NO_CONTENT: ICellData = { v: null, f: null, si: null, t: null, p: null };
const NO_FORMAT: ICellData = { s: null };
const NO_NOTE: ICellData = { custom: null };

function clearing(cell: ICellData) {
  return writeMethod<RangeRef>((session, ref) => {
    writeCells(
      session.platform.engine,
      ref.sheet,
      changesFor(ref.box, () => ({ ...cell })),
    );
    return SELF;
  });
}

function readRule(session: Session, ref: RangeRef, row: number, column: number) {
  const rule = session.platform.engine.validationAt(ref.sheet, row, column);
  return rule ? fromUniver(session, ref.sheet, rule) : null;
}

function ruleArgument(value: unknown): RuleRef | undefined {
  return value === null || value === undefined
    ? undefined
    : objectArgument([value], 0, 'DataValidation');
}

function setRules(session: Session, ref: RangeRef, args: readonly unknown[]) {
  const rows = matrixArgument(args, rowsOf(ref), columnsOf(ref));
  for (const [row, cells] of rows.entries()) {
    for (const [column, rule] of cells.entries()) {
      const startRow = ref.box.startRow + row;
      const startColumn = ref.box.startColumn + column;
      const box: Box = { startRow, startColumn, endRow: startRow, endColumn: startColumn };
      setRule(session, { sheet: ref.sheet, box }, ruleArgument(rule));
    }
  }
  return SELF;
}

function merge(session: Session, ref: RangeRef) {
  const { engine } = session.platform;
  const { startRow, startColumn } = ref.box;
  const rest = changesFor(ref.box, (row, column) =>
    row === startRow && column === startColumn ? undefined : { ...NO_CONTENT },
  );
  writeCells(engine, ref.sheet, rest);
  const params = { unitId: engine.unit, subUnitId: ref.sheet, ranges: [rangeOf(ref.box)] };
  engine.mutate(sheets.AddWorksheetMergeMutation.id, params, 'host');
  return SELF;
}

function breakApart(session: Session, ref: RangeRef) {
  const { engine } = session.platform;
  const ranges = sheetById(engine, ref.sheet)
    .getMergeData()
    .filter((range) => core.Rectangle.intersects(range, rangeOf(ref.box)));
  const params = { unitId: engine.unit, subUnitId: ref.sheet, ranges };
  engine.mutate(sheets.RemoveWorksheetMergeMutation.id, params, 'host');
  return SELF;
}

function insertCheckboxes(session: Session, ref: RangeRef) {
  const matrixOf = sheetOf(session, ref).getCellMatrix();
  setRule(session, ref, { ...NEW_RULE, criteria: 'CHECKBOX' });
  const changes = changesFor(ref.box, (row, column) => {
    const cell = matrixOf.getValue(row, column);
    if (cell?.f || (cell?.v !== undefined && cell.v !== null)) return undefined;
    return { v: 0, t: core.CellValueType.BOOLEAN };
  });
  writeChecked(session, ref.sheet, changes);
  return SELF;
}

function offset(session: Session, ref: RangeRef, args: readonly unknown[]) {
  const startRow = ref.box.startRow + integerArgument(args, 0);
  const startColumn = ref.box.startColumn + integerArgument(args, 1);
  const endRow = startRow + (optionalIntegerArgument(args, 2) ?? rowsOf(ref)) - 1;
  const endColumn = startColumn + (optionalIntegerArgument(args, 3) ?? columnsOf(ref)) - 1;
  const box = requireInside(sheetOf(session, ref), { startRow, startColumn, endRow, endColumn });
  return rangeMark(ref.sheet, box);
}

/** A cell inside the range, counted from 1. */
function cellOf(session: Session, ref: RangeRef, args: readonly unknown[]) {
  return offset(session, ref, [integerArgument(args, 0) - 1, integerArgument(args, 1) - 1, 1, 1]);
}

export function activate(session: Session, ref: RangeRef) {
  session.selection = { sheet: ref.sheet, box: ref.box };
  const sheet = sheetOf(session, ref).getName();
  session.platform.show(session.window, { kind: 'activate', sheet, range: formatA1(ref.box) });
  return SELF;
}

function createFilter(session: Session, ref: RangeRef) {
  const { engine } = session.platform;
  const params = { unitId: engine.unit, subUnitId: ref.sheet, range: rangeOf(ref.box) };
  engine.mutate(sheetsFilter.SetSheetsFilterRangeMutation.id, params, 'host');
  return { $object: 'Filter', ref: { sheet: ref.sheet } };
}

export const RANGE: Methods<GoogleAppsScript.Spreadsheet.Range, RangeRef> = {
  ...RANGE_VALUES,
  ...RANGE_FORMAT,
  getRow: answerMethod((_session, ref) => ref.box.startRow + 1),
  getColumn: answerMethod((_session, ref) => ref.box.startColumn + 1),
  getLastRow: answerMethod((_session, ref) => ref.box.endRow + 1),
  getLastColumn: answerMethod((_session, ref) => ref.box.endColumn + 1),
  getNumRows: answerMethod((_session, ref) => rowsOf(ref)),
  getNumColumns: answerMethod((_session, ref) => columnsOf(ref)),
  getWidth: answerMethod((_session, ref) => columnsOf(ref)),
  getHeight: answerMethod((_session, ref) => rowsOf(ref)),
  getA1Notation: answerMethod(a1Of),
  getSheet: answerMethod((_session, ref) => sheetMark(ref.sheet)),
  getCell: answerMethod(cellOf),
  offset: answerMethod(offset),
  clear: clearing({ ...NO_CONTENT, ...NO_FORMAT }),
  clearContent: clearing(NO_CONTENT),
  clearFormat: clearing(NO_FORMAT),
  clearNote: clearing(NO_NOTE),
  clearDataValidations: writeMethod((session, ref) => {
    setRule(session, ref, undefined);
    return SELF;
  }),
  setDataValidation: writeMethod((session, ref, args) => {
    setRule(session, ref, ruleArgument(args[0]));
    return SELF;
  }),
  setDataValidations: writeMethod(setRules),
  getDataValidation: answerMethod(one(readRule)),
  getDataValidations: answerMethod(all(readRule)),
  insertCheckboxes: writeMethod(insertCheckboxes),
  sort: { effect: 'write below values', run: sortRange },
  merge: writeMethod(merge),
  breakApart: writeMethod(breakApart),
  protect: writeMethod((session, ref) => addProtection(session, ref.sheet, ref.box)),
  activate: uiMethod(activate),
  createFilter: writeMethod(createFilter),
};
