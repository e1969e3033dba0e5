import type { ICellData, Worksheet } from '@univerjs/core';
import { type CellContent, cellContent, isDateMark } from '../cellContent.ts';
import type { Box } from '../parseA1.ts';
import { cellAt, changesFor, patternAt, writeCells } from '../sheetNamed.ts';
import { SELF } from '../standIn/protocolTypes.ts';
import type { Session } from './session.ts';
import { type RangeRef, rowsOf, sheetOf } from './sheetOf.ts';
import { arrayArgument, booleanArgument, integerArgument, signatureError } from './textArgument.ts';

interface SortKey {
  /** From 0 */
  readonly column: number;
  readonly sign: 1 | -1;
}

/** Sorts the rows of a range by columns of the sheet; rows alike keep their order, blanks come last, as on the platform. */
export function sortRange(session: Session, ref: RangeRef, args: readonly unknown[]) {
  const { engine, zone } = session.platform;
  const { box } = ref;
  const keys = keysOf(args);
  const sheet = sheetOf(session, ref);
  const valueAt = (row: number, column: number) =>
    cellContent(cellAt(engine, sheet, row, column), patternAt(engine, sheet, row, column), zone);
  const rows = Array.from({ length: rowsOf(ref) }, (_, index) => box.startRow + index);
  const values = new Map(rows.map((row) => [row, keys.map(({ column }) => valueAt(row, column))]));
  const sorted = rows.slice().sort((one, other) => {
    for (const [place, { sign }] of keys.entries()) {
      const order = compare(values.get(one)?.[place] ?? '', values.get(other)?.[place] ?? '', sign);
      if (order !== 0) return order;
    }
    return one - other;
  });
  const copies = rows.map((_, index) => rowCopy(sheet, sorted[index] ?? 0, box));
  writeCells(
    engine,
    ref.sheet,
    changesFor(box, (row, column) => copies[row - box.startRow]?.[column - box.startColumn]),
  );
  return SELF;
}

/** Contents and formats of a row, whole, so that nothing of what stood at its new place stays. */
function rowCopy(sheet: Worksheet, row: number, { startColumn, endColumn }: Box): ICellData[] {
  return Array.from({ length: endColumn - startColumn + 1 }, (_, index) => {
    const cell = sheet.getCellMatrix().getValue(row, startColumn + index);
    if (cell?.f || cell?.si) throw new Error('The stand-in sorts no formulas');
    const { v = null, t = null, s = null, p = null, custom = null } = cell ?? {};
    return { v, t, s, p, custom, f: null, si: null };
  });
}

/** A column's number, or `{ column, ascending }`, or a list of them. */
function keysOf(args: readonly unknown[]): readonly SortKey[] {
  const [given] = args;
  return (Array.isArray(given) ? arrayArgument(args, 0) : [given]).map((one) => {
    if (typeof one === 'number') return { column: integerArgument([one], 0) - 1, sign: 1 };
    if (typeof one !== 'object' || one === null || !('column' in one)) throw signatureError(args);
    const isDown = 'ascending' in one && !booleanArgument([one.ascending], 0);
    return { column: integerArgument([one.column], 0) - 1, sign: isDown ? -1 : 1 };
  });
}

/** Numbers and dates before texts before truth values; blanks last whichever way. */
function compare(one: CellContent, other: CellContent, sign: 1 | -1): number {
  if (one === '' || other === '') return Number(one === '') - Number(other === '');
  const kinds = kindOf(one) - kindOf(other);
  if (kinds !== 0) return sign * kinds;
  if (typeof one === 'string') return sign * one.localeCompare(String(other));
  return sign * (numberOf(one) - numberOf(other));
}

function kindOf(value: CellContent): number {
  if (typeof value === 'string') return 1;
  return typeof value === 'boolean' ? 2 : 0;
}

function numberOf(value: CellContent): number {
  return isDateMark(value) ? value.$date : Number(value);
}
