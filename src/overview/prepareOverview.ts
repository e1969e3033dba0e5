import { type Refused, refuse } from '../../shared/errors/refuse.ts';
import {
  CHART_SIZE,
  type OverviewCell,
  type OverviewChart,
  type OverviewStyle,
  type OverviewTab,
  ROW_HEIGHT,
} from '../../shared/paper/overview/overviewTypes.ts';
import { sizeGrid } from '../book/ensureSheet.ts';
import { readMark, writeMark } from '../book/sheetMark.ts';
import { safeText } from '../platform/safeText.ts';
import { findSheet, workbook } from '../platform/workbook.ts';

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

export const OVERVIEW = 'Overview';

/** The mark that tells the add-on's own sheet from one that somebody made. */
const MARK = 'overview';

const SIZES: Partial<Record<OverviewStyle, number>> = { title: 16, heading: 12, note: 9 };
const BOLD: readonly OverviewStyle[] = ['title', 'heading', 'head', 'number head', 'strong'];
const AT_RIGHT: readonly OverviewStyle[] = ['number head', 'money', 'count', 'share', 'number'];

/**
 * Makes ready to fill the sheet *Overview*; what stood there goes then, its charts too. A sheet of that name that the add-on did
 * not make is left alone.
 */
export function prepareOverview(tab: OverviewTab): (() => void) | Refused {
  const found = findSheet(OVERVIEW);
  if (found && readMark(found).table !== MARK && found.getLastRow() > 0)
    return refuse(
      '',
      `The sheet ${OVERVIEW} was not made by this add-on and would be overwritten: give it another name first.`,
    );
  return () => {
    const sheet = found ?? workbook().insertSheet(OVERVIEW, 0);
    writeMark(sheet, MARK, 1);
    empty(sheet, tab);
    writeCells(sheet, tab);
    for (const chart of tab.charts) insertChart(sheet, chart);
  };
}

function empty(sheet: Sheet, { rows, columnWidths }: OverviewTab): void {
  for (const chart of sheet.getCharts()) sheet.removeChart(chart);
  const all = sheet.getRange(1, 1, sheet.getMaxRows(), sheet.getMaxColumns());
  all.breakApart();
  all.clearDataValidations();
  sheet.clear();
  sizeGrid(sheet, rows.length, columnWidths.length);
  sheet.setHiddenGridlines(true);
}

function writeCells(sheet: Sheet, { rows, heights, wide, columnWidths, moneyPlaces }: OverviewTab) {
  const range = sheet.getRange(1, 1, rows.length, columnWidths.length);
  const each = <Value>(make: (cell: OverviewCell) => Value) => rows.map((line) => line.map(make));
  // The format comes first: a text written into a cell of numbers could be read as one.
  range.setNumberFormats(each(({ style }) => formatOf(style, moneyPlaces)));
  range.setValues(each(({ value }) => (typeof value === 'number' ? value : safeText(value))));
  range.setFontSizes(each(({ style }) => SIZES[style] ?? 10));
  range.setFontWeights(each(({ style }) => (BOLD.includes(style) ? 'bold' : 'normal')));
  range.setHorizontalAlignments(each(({ style }) => (AT_RIGHT.includes(style) ? 'right' : 'left')));
  range.setVerticalAlignment('middle').setFontColor('#000000').setBackground('#ffffff');
  range.setWrap(true);
  for (const row of wide) sheet.getRange(row, 1, 1, columnWidths.length).merge();
  columnWidths.forEach((width, index) => {
    sheet.setColumnWidth(index + 1, width);
  });
  rows.forEach((_, index) => {
    sheet.setRowHeight(index + 1, heights.get(index + 1) ?? ROW_HEIGHT);
  });
}

function formatOf(style: OverviewStyle, moneyPlaces: number): string {
  switch (style) {
    case 'money':
      return moneyPlaces === 0 ? '#,##0' : `#,##0.${'0'.repeat(moneyPlaces)}`;
    case 'count':
      return '0';
    case 'share':
      return '0.0%';
    case 'number':
      return '0.000';
    default:
      return '@';
  }
}

function insertChart(sheet: Sheet, { title, kind, columns, row }: OverviewChart): void {
  const fresh = sheet.newChart();
  let builder = (kind === 'lines' ? fresh.asLineChart() : fresh.asColumnChart())
    .setTitle(title)
    .setNumHeaders(1);
  for (const { row: first, column, rows } of columns)
    builder = builder.addRange(sheet.getRange(first, column, rows, 1));
  builder.setOption('width', CHART_SIZE.width).setOption('height', CHART_SIZE.height);
  sheet.insertChart(builder.setPosition(row, 1, 0, 0).build());
}
