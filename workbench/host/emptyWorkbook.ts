import type { IWorkbookData, IWorksheetData } from '@univerjs/core';
import { core } from './univer.ts';

/** A new tab of the platform: 1,000 rows by 26 columns. */
export function emptySheet(id: string, name: string): Partial<IWorksheetData> {
  return {
    id,
    name,
    rowCount: 1000,
    columnCount: 26,
    defaultColumnWidth: 100,
    defaultRowHeight: 21,
    cellData: {},
    rowData: {},
    columnData: {},
    mergeData: [],
    freeze: { xSplit: 0, ySplit: 0, startRow: -1, startColumn: -1 },
    hidden: 0,
    showGridlines: 1,
    tabColor: '',
    zoomRatio: 1,
    scrollTop: 0,
    scrollLeft: 0,
    rightToLeft: 0,
    rowHeader: { width: 46 },
    columnHeader: { height: 20 },
  };
}

export function emptyWorkbook(unit: string, name: string): IWorkbookData {
  return {
    id: unit,
    name,
    appVersion: '',
    locale: core.LocaleType.EN_US,
    styles: {},
    sheetOrder: ['0'],
    sheets: { '0': emptySheet('0', 'Sheet1') },
  };
}
