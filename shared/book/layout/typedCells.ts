import type { UnitSystem } from '../../units/measures.ts';
import type { Table } from '../column.ts';
import type { Place } from '../reading/findColumns.ts';
import type { CellValue } from '../reading/parseCell.ts';
import { tableCells } from './tableCells.ts';
import { type TypedRow, typedRecords } from './typedRow.ts';

/** Rows in trade units as cells, in the order and the units of the sheet's own headings. */
export function typedCells(
  table: Table,
  rows: readonly TypedRow<Table>[],
  sheet: { readonly places: readonly Place[]; readonly width: number; readonly system: UnitSystem },
): CellValue[][] {
  return tableCells(typedRecords(table, rows), sheet.places, sheet.width, sheet.system);
}
