import type { Cell, CellValue, Worksheet } from '@cj-tech-master/excelts';
import type { ICellData, ISheetDataValidationRule, IWorksheetData } from '@univerjs/core';
import { emptySheet } from '../emptyWorkbook.ts';
import { parseA1 } from '../parseA1.ts';
import { core } from '../univer.ts';
import { formulaFromFile } from './formulaToFile.ts';
import { ruleFromFile } from './ruleToFile.ts';
import { styleFromFile } from './styleToFile.ts';
import type { HiddenPart } from './writeHidden.ts';
import { CHARACTER, PADDING, POINT } from './writeSheet.ts';

const DAY = 86_400_000;
const EPOCH_SERIAL = 25_569;

type Part = HiddenPart['sheets'][number] | undefined;

/** One sheet of a file as Univer's data. */
export function readSheet(sheet: Worksheet, id: string, part: Part): Partial<IWorksheetData> {
  const empty = emptySheet(id, sheet.name);
  const cellData: Record<number, Record<number, ICellData>> = {};
  const inSpill = spillTest(sheet, part);
  sheet.eachRow({ includeEmpty: true }, (row, number) => {
    const cells: Record<number, ICellData> = {};
    row.eachCell({ includeEmpty: true }, (cell, column) => {
      const read = readCell(cell, inSpill(number - 1, column - 1));
      if (read) cells[column - 1] = read;
    });
    if (Object.keys(cells).length > 0) cellData[number - 1] = cells;
  });
  // A file of another program may have none, whatever the type says.
  const view: Worksheet['views'][number] | undefined = sheet.views?.[0];
  const [xSplit, ySplit] = view?.state === 'frozen' ? [view.xSplit ?? 0, view.ySplit ?? 0] : [0, 0];
  const tabColor = sheet.properties.tabColor?.argb;
  return {
    ...empty,
    cellData,
    ...readSizes(sheet),
    rowCount: part?.rows ?? Math.max(sheet.rowCount, 1000),
    columnCount: part?.columns ?? Math.max(sheet.columnCount, 26),
    hidden: sheet.state === 'visible' ? 0 : 1,
    showGridlines: view?.showGridLines === false ? 0 : 1,
    tabColor: tabColor ? `#${tabColor.slice(-6).toLowerCase()}` : '',
    freeze: {
      xSplit,
      ySplit,
      startRow: ySplit === 0 ? -1 : ySplit,
      startColumn: xSplit === 0 ? -1 : xSplit,
    },
    mergeData: (sheet.model.merges ?? []).flatMap((text) => {
      const box = parseA1(text, { rows: 1_048_576, columns: 16_384 });
      return box ? [{ ...box }] : [];
    }),
  };
}

/** Whether a cell's value is the cached one of a spilling formula elsewhere. */
function spillTest(sheet: Worksheet, part: Part): (row: number, column: number) => boolean {
  // After an edit in another program an extent may have no formula at its start: then its cells are values.
  const extents = (part?.spills ?? []).filter(
    (extent) => sheet.getCell(extent.startRow + 1, extent.startColumn + 1).formula,
  );
  return (row, column) =>
    extents.some(
      (extent) =>
        row >= extent.startRow &&
        row <= extent.endRow &&
        column >= extent.startColumn &&
        column <= extent.endColumn &&
        !(row === extent.startRow && column === extent.startColumn),
    );
}

function readCell(cell: Cell, spilled: boolean): ICellData | undefined {
  // Cells under a merge repeat the value of its first cell.
  const covered = cell.isMerged && cell.master !== cell;
  const style = styleFromFile(cell.style);
  const note = noteText(cell.note);
  const read: ICellData = {
    ...(covered ? {} : readValue(cell, spilled)),
    ...(style ? { s: style } : {}),
    ...(note && !covered ? { custom: { note } } : {}),
  };
  return Object.keys(read).length === 0 ? undefined : read;
}

function readValue(cell: Cell, spilled: boolean): ICellData {
  if (cell.formula) return { f: formulaFromFile(cell.formula) };
  return spilled ? {} : plainValue(cell.value);
}

function plainValue(value: CellValue): ICellData {
  const { CellValueType } = core;
  if (value === null || value === undefined) return {};
  if (typeof value === 'number') return { v: value, t: CellValueType.NUMBER };
  if (typeof value === 'boolean') return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  if (typeof value === 'string') return { v: value, t: CellValueType.STRING };
  if (value instanceof Date) {
    return { v: value.getTime() / DAY + EPOCH_SERIAL, t: CellValueType.NUMBER };
  }
  if ('richText' in value) return plainValue(value.richText.map((part) => part.text).join(''));
  if ('text' in value) return plainValue(value.text);
  if ('error' in value) return plainValue(value.error);
  return {};
}

function noteText(note: Cell['note']): string | undefined {
  if (typeof note === 'string') return note;
  return note?.texts?.map((part) => part.text).join('');
}

function readSizes(sheet: Worksheet): Partial<IWorksheetData> {
  const columnData: Record<number, { w?: number; hd?: 0 | 1 }> = {};
  for (let column = 1; column <= sheet.columnCount; column++) {
    const { width, hidden } = sheet.getColumn(column);
    if (width === undefined && !hidden) continue;
    columnData[column - 1] = {
      ...(width === undefined ? {} : { w: Math.round(width * CHARACTER + PADDING) }),
      ...(hidden ? { hd: 1 } : {}),
    };
  }
  const rowData: Record<number, { h?: number; hd?: 0 | 1 }> = {};
  sheet.eachRow({ includeEmpty: true }, (row, number) => {
    if (row.height === undefined && !row.hidden) return;
    rowData[number - 1] = {
      ...(row.height === undefined ? {} : { h: Math.round(row.height * POINT) }),
      ...(row.hidden ? { hd: 1 } : {}),
    };
  });
  const width = sheet.properties.defaultColWidth;
  return {
    columnData,
    rowData,
    ...(width === undefined ? {} : { defaultColumnWidth: Math.round(width * CHARACTER + PADDING) }),
  };
}

/** The rules of a sheet, each with its cells; rules alike on several ranges become one. */
export function rulesOf(
  sheet: Worksheet,
  size: { readonly rows: number; readonly columns: number },
): readonly Omit<ISheetDataValidationRule, 'uid'>[] {
  const found = new Map<string, Omit<ISheetDataValidationRule, 'uid'>>();
  for (const [key, form] of Object.entries(sheet.dataValidations.model)) {
    const box = parseA1(key.replace(/^range:/, ''), size);
    const rule = form && ruleFromFile(form);
    if (!box || !rule) continue;
    const same = JSON.stringify(rule);
    const ranges = [...(found.get(same)?.ranges ?? []), { ...box }];
    found.set(same, { ...rule, ranges });
  }
  return [...found.values()];
}
