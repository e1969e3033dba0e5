import type { Column, Table } from '../../shared/book/column.ts';
import { NEW_ROWS } from '../../shared/book/layout/layoutVersion.ts';
import type { SetUpChange } from '../../shared/book/layout/setUpReport.ts';
import { type FoundColumns, findColumns } from '../../shared/book/reading/findColumns.ts';
import { type ComputedPlace, findComputed } from '../../shared/book/reading/findComputed.ts';
import { headingOf } from '../../shared/book/reading/headingOf.ts';
import type { TableKey } from '../../shared/book/tables.ts';
import { describe } from '../../shared/errors/describe.ts';
import type { UnitSystem } from '../../shared/units/measures.ts';
import { ensureSheet, sizeGrid } from './ensureSheet.ts';
import { readHeadings } from './readHeadings.ts';
import { turnUnits } from './turnUnits.ts';

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** A sheet of the book that has all its columns. */
export interface LaidTable {
  readonly key: TableKey;
  readonly table: Table;
  readonly sheet: Sheet;
  readonly found: FoundColumns;
  readonly computed: readonly ComputedPlace[];
  readonly isNew: boolean;
  /** Columns that were not there before. */
  readonly added: readonly Column[];
  /** Columns whose headings took other units just now. */
  readonly turned: readonly Column[];
}

/**
 * Makes sure that a table's sheet exists and has every declared column. A column that is missing is put in after the
 * last known one; nothing below the headings is touched.
 */
export function layOutTable(
  { key, table, after }: { readonly key: TableKey; readonly table: Table; readonly after: Sheet },
  system: UnitSystem,
  changes: SetUpChange[],
): LaidTable {
  const { sheet, isNew } = ensureSheet({ name: table.sheet, table: key, after }, changes);
  if (isNew) sizeGrid(sheet, NEW_ROWS, Object.keys(table.columns).length);
  const turned = isNew ? [] : turnUnits({ sheet, table, system });
  if (turned.length > 0) changes.push({ kind: 'units', sheet: table.sheet, system });
  const before = look(sheet, table);
  addInputs(sheet, before, system);
  const added = [...before.found.missing.map(({ column }) => column), ...addComputed(sheet, table)];
  if (!isNew)
    for (const { heading } of added) changes.push({ kind: 'column', sheet: table.sheet, heading });
  for (const { error } of before.found.unreadable)
    changes.push({ kind: 'left', because: `In ${table.sheet}, ${describe(error)}.` });
  return { key, table, sheet, ...look(sheet, table), isNew, added, turned };
}

interface Look {
  readonly found: FoundColumns;
  readonly computed: readonly ComputedPlace[];
}

function look(sheet: Sheet, table: Table): Look {
  const { shown, formulas } = readHeadings(sheet);
  const { places } = findComputed(table, shown, formulas);
  return { found: findColumns(table, shown), computed: places };
}

/** Writes the headings that are not there, side by side, behind the last column that people fill. */
function addInputs(sheet: Sheet, { found }: Look, system: UnitSystem): void {
  const { missing, places, unreadable } = found;
  if (missing.length === 0) return;
  const known = [...places, ...unreadable].map(({ index }) => index + 1);
  const last = Math.max(known.length > 0 ? 0 : lastHeading(sheet), ...known);
  if (last > 0) sheet.insertColumnsAfter(last, missing.length);
  const range = sheet.getRange(1, last + 1, sheet.getMaxRows(), missing.length);
  range.clearDataValidations();
  sheet
    .getRange(1, last + 1, 1, missing.length)
    .setValues([missing.map(({ column }) => headingOf(column, system))]);
}

/** Makes room for the columns that fill themselves; their formulas, which are their headings, come when every sheet stands. */
function addComputed(sheet: Sheet, table: Table): readonly Column[] {
  const { shown, formulas } = readHeadings(sheet);
  const { places, missing } = findComputed(table, shown, formulas);
  if (missing.length === 0) return missing;
  const inputs = findColumns(table, shown).places;
  const last = Math.max(...[...inputs, ...places].map(({ index }) => index + 1));
  const isRoom = shown.length <= last && sheet.getMaxColumns() >= last + missing.length;
  if (!isRoom) sheet.insertColumnsAfter(last, missing.length);
  sheet.getRange(1, last + 1, sheet.getMaxRows(), missing.length).clearDataValidations();
  sheet.getRange(1, last + 1, 1, missing.length).setValues([missing.map(({ heading }) => heading)]);
  return missing;
}

function lastHeading(sheet: Sheet): number {
  return readHeadings(sheet).shown.length;
}
