import { type FoundColumns, findColumns } from '../../shared/book/findColumns.ts';
import type { CellValue } from '../../shared/book/parseCell.ts';
import { readShop } from '../../shared/book/readShop.ts';
import { settingCells } from '../../shared/book/settingCells.ts';
import { TABLES, type TableKey } from '../../shared/book/tables.ts';
import type { UnitSystem } from '../../shared/units/measures.ts';
import { demoCells, demoSettings } from '../../templates/demoShop/demoShop.ts';
import { safeText } from '../platform/safeText.ts';
import { findSheet, readCells, workbook } from '../platform/workbook.ts';
import { readHeadings } from './readHeadings.ts';

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type Written = string | number | boolean | Date;

/**
 * Writes the invented shop into the sheets of an empty book, one write a sheet.
 * @returns rows written
 */
export function fillEmptyBook(): number {
  const system = fillShop();
  let count = 0;
  for (const key of Object.keys(TABLES) as TableKey[]) count += fillTable(key, system); // keys of the one list of tables
  return count;
}

/** Settings that still hold their default take the invented shop's value; those the user changed stay. */
function fillShop(): UnitSystem {
  const cells = readCells('Shop');
  const values = settingCells(cells, demoSettings());
  const sheet = findSheet('Shop');
  if (sheet && values.length > 0)
    sheet
      .getRange(2, 2, values.length, 1)
      .setValues(values.map((value) => [typeof value === 'string' ? safeText(value) : value]));
  return readShop(cells).shop.units;
}

function fillTable(key: TableKey, system: UnitSystem): number {
  const sheet = findSheet(TABLES[key].sheet);
  if (sheet === null) return 0;
  const found = findColumns(TABLES[key], readHeadings(sheet).shown);
  const width = Math.max(0, ...found.places.map(({ index }) => index + 1));
  const rows = demoCells(key, found.places, width, system);
  const lacking = rows.length + 1 - sheet.getMaxRows();
  if (lacking > 0) sheet.insertRowsAfter(sheet.getMaxRows(), lacking);
  write(sheet, rows, found);
  return rows.length;
}

function write(sheet: Sheet, rows: readonly (readonly CellValue[])[], found: FoundColumns): void {
  const zone = workbook().getSpreadsheetTimeZone();
  const kinds = new Map(found.places.map(({ index, column }) => [index, column.kind] as const));
  const values = rows.map((row) =>
    row.map((cell, index): Written => {
      if (typeof cell !== 'string' || cell === '') return cell;
      return kinds.get(index) === 'date'
        ? Utilities.parseDate(cell, zone, 'yyyy-MM-dd')
        : safeText(cell);
    }),
  );
  sheet.getRange(2, 1, rows.length, rows[0]?.length ?? 1).setValues(values);
}
