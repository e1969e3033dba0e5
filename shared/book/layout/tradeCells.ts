import type { UnitSystem } from '../../units/measures.ts';
import type { Table } from '../column.ts';
import type { Place } from '../reading/findColumns.ts';
import type { CellValue } from '../reading/parseCell.ts';
import { tableCells } from './tableCells.ts';
import { type TradeRow, tradeRecords } from './tradeRow.ts';

/** Rows in trade units as cells, in the order and the units of the sheet's own headings. */
export function tradeCells(
  table: Table,
  rows: readonly TradeRow<Table>[],
  sheet: { readonly places: readonly Place[]; readonly width: number; readonly system: UnitSystem },
): CellValue[][] {
  return tableCells(tradeRecords(table, rows), sheet.places, sheet.width, sheet.system);
}
