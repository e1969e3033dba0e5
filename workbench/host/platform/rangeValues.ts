import type { ICellData } from '@univerjs/core';
import { type CellContent, cellContent, cellText, storedCell, typedCell } from '../cellContent.ts';
import { formulaForScript, formulaFromScript } from '../locale/formulaFromScript.ts';
import { cellAt, patternAt } from '../sheetNamed.ts';
import { SELF } from '../standIn/protocolTypes.ts';
import {
  answerMethod,
  type Method,
  type Methods,
  type Session,
  valuesMethod,
  writeMethod,
} from './session.ts';
import { columnsOf, mapCells, type RangeRef, rowsOf, sheetOf, writeEachCell } from './sheetOf.ts';
import { cellContentOf, matrixArgument, signatureError, textArgument } from './textArgument.ts';

type Range = GoogleAppsScript.Spreadsheet.Range;

type Read<Value> = (session: Session, ref: RangeRef, row: number, column: number) => Value;

const readContent: Read<CellContent> = (session, ref, row, column) => {
  const { platform } = session;
  const sheet = sheetOf(session, ref);
  const pattern = patternAt(platform.engine, sheet, row, column);
  return cellContent(cellAt(platform.engine, sheet, row, column), pattern, platform.zone);
};

const readText: Read<string> = (session, ref, row, column) => {
  const { engine } = session.platform;
  const sheet = sheetOf(session, ref);
  const pattern = patternAt(engine, sheet, row, column);
  return cellText(cellAt(engine, sheet, row, column), pattern);
};

const readFormula: Read<string> = (session, ref, row, column) =>
  formulaForScript(
    sheetOf(session, ref).getCellMatrix().getValue(row, column)?.f ?? '',
    session.platform.locale,
  );

/** A read of the first cell, and the same read of all cells. */
export function one<Value>(read: Read<Value>): Method<RangeRef>['run'] {
  return (session, ref) => read(session, ref, ref.box.startRow, ref.box.startColumn);
}

export function all<Value>(read: Read<Value>): Method<RangeRef>['run'] {
  return (session, ref) => mapCells(ref, (row, column) => read(session, ref, row, column));
}

type Cell = (session: Session, ref: RangeRef, value: unknown, pattern: string) => ICellData;

/** Writes the same value to every cell. */
export function same(cell: Cell): Method<RangeRef>['run'] {
  return (session, ref, args) => {
    const sheet = sheetOf(session, ref);
    writeEachCell(session, ref, (row, column) =>
      cell(session, ref, args[0], patternAt(session.platform.engine, sheet, row, column)),
    );
    return SELF;
  };
}

/** Writes one value for each cell, from rows as large as the range. */
export function each(cell: Cell): Method<RangeRef>['run'] {
  return (session, ref, args) => {
    const rows = matrixArgument(args, rowsOf(ref), columnsOf(ref));
    const sheet = sheetOf(session, ref);
    writeEachCell(session, ref, (row, column, index) =>
      cell(
        session,
        ref,
        rows[index.row]?.[index.column],
        patternAt(session.platform.engine, sheet, row, column),
      ),
    );
    return SELF;
  };
}

const storeContent: Cell = ({ platform }, _ref, value, pattern) => {
  const content = cellContentOf(value);
  const isFormula = typeof content === 'string' && content.startsWith('=');
  const stored = isFormula ? formulaFromScript(content, platform.locale) : content;
  return storedCell(stored, pattern, platform.zone);
};

/** Formula text; the platform takes it with or without the leading sign. */
const storeFormula: Cell = ({ platform }, _ref, value, pattern) => {
  const formula = textArgument([value], 0);
  if (formula === '') return typedCell('', pattern);
  const whole = formula.startsWith('=') ? formula : `=${formula}`;
  return typedCell(formulaFromScript(whole, platform.locale), pattern);
};

const storeNote: Cell = (_session, _ref, value) => {
  if (value === null || value === '') return { custom: null };
  if (typeof value !== 'string') throw signatureError([value]);
  return { custom: { note: value } };
};

const readNote: Read<string> = (session, ref, row, column) => {
  const note: unknown = sheetOf(session, ref).getCellMatrix().getValue(row, column)?.custom?.[
    'note'
  ];
  return typeof note === 'string' ? note : '';
};

export const RANGE_VALUES: Methods<Range, RangeRef> = {
  getValue: valuesMethod(one(readContent)),
  getValues: valuesMethod(all(readContent)),
  getDisplayValue: valuesMethod(one(readText)),
  getDisplayValues: valuesMethod(all(readText)),
  getFormula: answerMethod(one(readFormula)),
  getFormulas: answerMethod(all(readFormula)),
  getNote: answerMethod(one(readNote)),
  getNotes: answerMethod(all(readNote)),
  isBlank: valuesMethod((session, ref) =>
    mapCells(ref, (row, column) => readContent(session, ref, row, column)).every((row) =>
      row.every((value) => value === ''),
    ),
  ),
  isChecked: valuesMethod((session, ref) => {
    const ticks = mapCells(ref, (row, column) => readContent(session, ref, row, column)).flat();
    if (ticks.every((tick) => tick === true)) return true;
    return ticks.every((tick) => tick === false) ? false : null;
  }),
  setValue: writeMethod(same(storeContent)),
  setValues: writeMethod(each(storeContent)),
  setFormula: writeMethod(same(storeFormula)),
  setFormulas: writeMethod(each(storeFormula)),
  setNote: writeMethod(same(storeNote)),
  setNotes: writeMethod(each(storeNote)),
};
