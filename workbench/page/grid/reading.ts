import type { Workbook } from '@univerjs/core';
import { parseA1 } from '../../host/parseA1.ts';
import type { Grid } from './gridTypes.ts';

/** A sheet and cells by their names. */
export function locate(workbook: Workbook, name: string, range: string) {
  const sheet = workbook.getSheetBySheetName(name);
  if (!sheet) throw new Error(`there is no sheet ${name}`);
  const box = parseA1(range, { rows: sheet.getRowCount(), columns: sheet.getColumnCount() });
  if (!box) throw new Error(`there is no range ${range} in ${name}`);
  return { sheet, box };
}

/** What the grid shows, read from its copy of the workbook. */
export function reading(workbook: Workbook): Pick<Grid, 'shown' | 'note' | 'values' | 'sheets'> {
  return {
    sheets: () => workbook.getSheets().map((sheet) => sheet.getName()),
    shown: (name, cell) => {
      const { sheet, box } = locate(workbook, name, cell);
      return String(sheet.getCell(box.startRow, box.startColumn)?.v ?? '');
    },
    values: (id, { startRow, endRow, startColumn, endColumn }) => {
      const sheet = workbook.getSheetBySheetId(id);
      return Array.from({ length: endRow - startRow + 1 }, (_row, row) =>
        Array.from({ length: endColumn - startColumn + 1 }, (_column, column) => {
          // Raw: the other way of reading gives a number as the text that its format shows.
          const value = sheet?.getCellRaw(startRow + row, startColumn + column)?.v ?? '';
          return typeof value === 'boolean' ? String(value) : value;
        }),
      );
    },
    note: (name, cell) => {
      const { sheet, box } = locate(workbook, name, cell);
      const note: unknown = sheet.getCellRaw(box.startRow, box.startColumn)?.custom?.['note'];
      return typeof note === 'string' && note !== '' ? note : undefined;
    },
  };
}
