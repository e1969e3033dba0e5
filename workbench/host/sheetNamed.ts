import type { ICellData, IRange, IStyleData, Worksheet } from '@univerjs/core';
import type { ISetRangeValuesMutationParams } from '@univerjs/sheets';
import type { Engine } from './engine.ts';
import { type Box, eachCell, parseA1, splitSheet } from './parseA1.ts';
import { core, sheets } from './univer.ts';

/** Changed cells of one sheet by row, then by column. */
export type CellChanges = Record<number, Record<number, ICellData>>;

export function sheetNamed(engine: Engine, name: string): Worksheet | undefined {
  // Sheet names do not differ by case alone, but are shown as typed.
  return engine.workbook
    .getSheets()
    .find((sheet) => sheet.getName().toLowerCase() === name.toLowerCase());
}

/**
 * The number the add-on knows a sheet by. The host's own sheets have numbers for ids; those a window inserts have text,
 * which makes a number above them, the same each time.
 */
export function sheetNumber(id: string): number {
  if (/^\d{1,6}$/.test(id)) return Number(id);
  const mixed = [...id].reduce((sum, sign) => (sum * 31 + sign.charCodeAt(0)) % 1_000_000_007, 7);
  return 1_000_000 + mixed;
}

/** An id that no sheet has. */
export function unusedSheetId(ids: readonly string[]): string {
  const numbers = ids.map(Number).filter((id) => Number.isInteger(id));
  return String(1 + Math.max(-1, ...numbers));
}

/** @throws Error when the sheet was deleted meanwhile */
export function sheetById(engine: Engine, id: string): Worksheet {
  const sheet = engine.workbook.getSheetBySheetId(id);
  if (!sheet) throw new Error('The sheet was deleted');
  return sheet;
}

export function sheetSize(sheet: Worksheet): { readonly rows: number; readonly columns: number } {
  return { rows: sheet.getRowCount(), columns: sheet.getColumnCount() };
}

/** A range named as in a formula; unnamed sheets mean `home`. */
export function findRange(
  engine: Engine,
  text: string,
  home: string,
): { readonly sheet: string; readonly box: Box } | undefined {
  const { sheet: name, cells } = splitSheet(text);
  const sheet = name === undefined ? sheetById(engine, home) : sheetNamed(engine, name);
  const box = sheet && parseA1(cells, sheetSize(sheet));
  return sheet && box && { sheet: sheet.getSheetId(), box };
}

/** A cell with its value, also when that value spilled in from a formula elsewhere. */
export function cellAt(
  engine: Engine,
  sheet: Worksheet,
  row: number,
  column: number,
): ICellData | undefined {
  const own = sheet.getCellMatrix().getValue(row, column) ?? undefined;
  if (own?.f || own?.si) return own;
  const spilled = engine.spilled(sheet.getSheetId())[row]?.[column];
  if (!spilled) return own;
  return { ...own, v: spilled.v ?? null, t: spilled.t ?? null };
}

export function styleAt(engine: Engine, sheet: Worksheet, row: number, column: number): IStyleData {
  const cell = sheet.getCellMatrix().getValue(row, column);
  return engine.workbook.getStyles().getStyleByCell(cell) ?? {};
}

/** The cell's number format; "" when it has none. */
export function patternAt(engine: Engine, sheet: Worksheet, row: number, column: number): string {
  const pattern = styleAt(engine, sheet, row, column).n?.pattern ?? '';
  return core.isDefaultFormat(pattern) ? '' : pattern;
}

/** Rows and columns up to the last cell with a value, spills included. */
export function usedSize(
  engine: Engine,
  sheet: Worksheet,
): { readonly rows: number; readonly columns: number } {
  let [rows, columns] = [0, 0];
  const count = (row: number, column: number) => {
    rows = Math.max(rows, row + 1);
    columns = Math.max(columns, column + 1);
  };
  sheet.getCellMatrix().forValue((row, column, cell) => {
    const filled = cell?.v !== undefined && cell.v !== null && cell.v !== '';
    if (filled || cell?.f || cell?.si) count(row, column);
  });
  // As on the platform an empty text that spilled in counts as content.
  new core.ObjectMatrix(engine.spilled(sheet.getSheetId())).forValue((row, column, cell) => {
    if (cell?.v !== undefined && cell.v !== null) count(row, column);
  });
  return { rows, columns };
}

/** One change for each cell of a box. */
export function changesFor(
  box: Box,
  change: (row: number, column: number) => ICellData | undefined,
): CellChanges {
  const changes: CellChanges = {};
  eachCell(box, (row, column) => {
    const cell = change(row, column);
    if (!cell) return;
    const cells = changes[row] ?? {};
    cells[column] = cell;
    changes[row] = cells;
  });
  return changes;
}

export function writeCells(engine: Engine, sheet: string, changes: CellChanges, origin = 'host') {
  const params: ISetRangeValuesMutationParams = {
    unitId: engine.unit,
    subUnitId: sheet,
    cellValue: changes,
  };
  engine.mutate(sheets.SetRangeValuesMutation.id, params, origin);
}

export function rangeOf(box: Box): IRange {
  return { ...box };
}

/** Inserts or removes whole rows or columns; formulas, merges and rules follow. */
export function changeLayout(
  engine: Engine,
  sheet: string,
  change: 'insert rows' | 'insert columns' | 'remove rows' | 'remove columns',
  box: Box,
): void {
  const command = {
    'insert rows': sheets.InsertRowByRangeCommand.id,
    'insert columns': sheets.InsertColByRangeCommand.id,
    'remove rows': sheets.RemoveRowByRangeCommand.id,
    'remove columns': sheets.RemoveColByRangeCommand.id,
  }[change];
  const target = { unitId: engine.unit, subUnitId: sheet };
  // Univer moves formulas for the active sheet, whatever sheet the command names.
  engine.command(sheets.SetWorksheetActiveOperation.id, target);
  const atStart = change === 'insert rows' ? box.startRow === 0 : box.startColumn === 0;
  const before = change === 'insert rows' ? core.Direction.UP : core.Direction.LEFT;
  const after = change === 'insert rows' ? core.Direction.DOWN : core.Direction.RIGHT;
  const done = engine.command(command, {
    ...target,
    range: rangeOf(box),
    direction: atStart ? before : after,
  });
  if (!done) throw new Error(`The workbook refused to ${change}`);
}
