import type { CellValue, Workbook, Worksheet } from '@cj-tech-master/excelts';
import type { ICellData, Worksheet as UniverSheet } from '@univerjs/core';
import { cellContent } from '../cellContent.ts';
import type { Engine } from '../engine.ts';
import { formatA1 } from '../parseA1.ts';
import { cellAt } from '../sheetNamed.ts';
import { core } from '../univer.ts';
import { formulaToFile } from './formulaToFile.ts';
import { ruleToFile } from './ruleToFile.ts';
import { styleToFile, toArgb } from './styleToFile.ts';

/** Pixels of a column of so many characters, and of a row of so many points, at the default font. */
export const CHARACTER = 7;
export const PADDING = 5;
export const POINT = 4 / 3;

export function writeSheet(engine: Engine, workbook: Workbook, sheet: UniverSheet): void {
  const config = sheet.getConfig();
  const written = workbook.addWorksheet(sheet.getName());
  written.state = sheet.isSheetHidden() ? 'hidden' : 'visible';
  if (config.tabColor) written.properties.tabColor = { argb: toArgb(config.tabColor) };
  const { xSplit, ySplit } = config.freeze;
  const showGridLines = config.showGridlines === 1;
  written.views = [
    xSplit > 0 || ySplit > 0
      ? { state: 'frozen', xSplit, ySplit, showGridLines }
      : { state: 'normal', showGridLines },
  ];
  writeSizes(sheet, written);
  writeCellsOf(engine, sheet, written);
  for (const merge of sheet.getMergeData()) written.mergeCellsWithoutStyle(formatA1(merge));
  for (const rule of engine.validations(sheet.getSheetId())) {
    const form = ruleToFile(rule);
    if (!form) continue;
    for (const range of rule.ranges) {
      const at = formatA1(range);
      written.dataValidations.add(at.includes(':') ? `range:${at}` : at, form);
    }
  }
  const filter = engine.filterRange(sheet.getSheetId());
  if (filter) written.autoFilter = formatA1(filter);
}

function writeSizes(sheet: UniverSheet, written: Worksheet): void {
  const config = sheet.getConfig();
  written.properties.defaultColWidth = (config.defaultColumnWidth - PADDING) / CHARACTER;
  for (const [column, data] of Object.entries(config.columnData)) {
    const target = written.getColumn(Number(column) + 1);
    if (data?.w !== undefined) target.width = (data.w - PADDING) / CHARACTER;
    if (data?.hd === 1) target.hidden = true;
  }
  for (const [row, data] of Object.entries(config.rowData)) {
    const target = written.getRow(Number(row) + 1);
    // The library leaves out rows without cells and height, hidden or not.
    const height = data?.h ?? (data?.hd === 1 ? config.defaultRowHeight : undefined);
    if (height !== undefined) target.height = height / POINT;
    if (data?.hd === 1) target.hidden = true;
  }
}

function writeCellsOf(engine: Engine, sheet: UniverSheet, written: Worksheet): void {
  const styles = engine.workbook.getStyles();
  sheet.getCellMatrix().forValue((row, column, own) => {
    const cell = written.getCell(row + 1, column + 1);
    const style = styles.getStyleByCell(own);
    if (style && Object.keys(style).length > 0) cell.style = styleToFile(style);
    cell.value = valueToFile(own?.f ?? undefined, cellAt(engine, sheet, row, column));
    const note: unknown = own?.custom?.['note'];
    if (typeof note === 'string') cell.note = note;
  });
  new core.ObjectMatrix(engine.spilled(sheet.getSheetId())).forValue((row, column) => {
    const cell = cellAt(engine, sheet, row, column);
    if (!cell?.f) written.getCell(row + 1, column + 1).value = valueToFile(undefined, cell);
  });
}

/** Errors a file knows; others are shown as the nearest of them. */
const ERRORS: readonly string[] = [
  '#N/A',
  '#REF!',
  '#NAME?',
  '#DIV/0!',
  '#NULL!',
  '#VALUE!',
  '#NUM!',
];

function valueToFile(formula: string | undefined, cell: ICellData | undefined): CellValue {
  const content = cellContent(cell, '', 'UTC');
  // Without a number format there are no dates, so the content is plain.
  const plain = typeof content === 'object' ? null : content;
  if (formula === undefined) return plain === '' ? null : plain;
  if (typeof plain === 'string' && /^#[A-Z]+[!?/]/.test(plain)) {
    return { formula: formulaToFile(formula), result: { error: errorName(plain) } };
  }
  return { formula: formulaToFile(formula), result: plain ?? '' };
}

function errorName(shown: string): '#VALUE!' {
  // The type lists the names above; they are checked here.
  return (ERRORS.includes(shown) ? shown : '#VALUE!') as '#VALUE!';
}
