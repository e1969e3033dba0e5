import { typedCells } from '../../shared/book/layout/typedCells.ts';
import { findColumns } from '../../shared/book/reading/findColumns.ts';
import type { CellValue } from '../../shared/book/reading/parseCell.ts';
import { readShop } from '../../shared/book/settings/readShop.ts';
import { settingCells } from '../../shared/book/settings/settingCells.ts';
import { TABLES, type TableKey } from '../../shared/book/tables.ts';
import type { UnitSystem } from '../../shared/units/measures.ts';
import type { DemoShop } from '../../templates/demoShop/demoShop.ts';
import { readDataPage } from '../platform/readDataPage.ts';
import { safeText } from '../platform/safeText.ts';
import { findSheet, readCells, workbook } from '../platform/workbook.ts';
import { readHeadings } from './readHeadings.ts';

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type Written = string | number | boolean | Date;

interface SheetWrite {
  readonly sheet: Sheet;
  readonly row: number;
  readonly column: number;
  readonly values: Written[][];
}

/**
 * Writes the invented shop into the sheets of an empty book, one write a sheet.
 * @returns rows written
 */
export function fillEmptyBook(): number {
  const { units } = readShop(readCells('Shop')).shop;
  const demo = readDataPage('DemoShop') as DemoShop; // the build wrote it; every cell is read and checked on its way in
  const keys = Object.keys(TABLES) as TableKey[]; // keys of the one list of tables
  const tables = keys.flatMap((key) => tableWrite(key, demo, units));
  // Everything is read before the first write: a read in between would compute every formula again.
  for (const one of [...shopWrite(demo), ...tables]) write(one);
  return tables.reduce((count, { values }) => count + values.length, 0);
}

/** Settings that still hold their default take the invented shop's value; those the user changed stay, and so do formulas. */
function shopWrite(demo: DemoShop): readonly SheetWrite[] {
  const sheet = findSheet('Shop');
  if (sheet === null) return [];
  const values = settingCells(readCells('Shop'), demo.settings);
  if (values.length === 0) return [];
  const formulas = sheet.getRange(2, 2, values.length, 1).getFormulas();
  const cells = values.map((value, index) => [formulas[index]?.[0] || written(value)]);
  return [{ sheet, row: 2, column: 2, values: cells }];
}

function tableWrite(key: TableKey, demo: DemoShop, system: UnitSystem): readonly SheetWrite[] {
  const sheet = findSheet(TABLES[key].sheet);
  if (sheet === null) return [];
  const { places } = findColumns(TABLES[key], readHeadings(sheet).shown);
  const width = Math.max(1, ...places.map(({ index }) => index + 1));
  const days = new Set(
    places.flatMap(({ index, column }) => (column.kind === 'date' ? [index] : [])),
  );
  const zone = workbook().getSpreadsheetTimeZone();
  const values = typedCells(TABLES[key], demo.rows[key], { places, width, system }).map((row) =>
    row.map((cell, index) =>
      days.has(index) && typeof cell === 'string' && cell !== ''
        ? Utilities.parseDate(cell, zone, 'yyyy-MM-dd')
        : written(cell),
    ),
  );
  return [{ sheet, row: 2, column: 1, values }];
}

function written(cell: CellValue): Written {
  return typeof cell === 'string' ? safeText(cell) : cell;
}

function write({ sheet, row, column, values }: SheetWrite): void {
  if (values.length === 0) return;
  const lacking = row + values.length - 1 - sheet.getMaxRows();
  if (lacking > 0) sheet.insertRowsAfter(sheet.getMaxRows(), lacking);
  sheet.getRange(row, column, values.length, values[0]?.length ?? 1).setValues(values);
}
