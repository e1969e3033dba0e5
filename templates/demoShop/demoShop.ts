import type { Table } from '../../shared/book/column.ts';
import type { Place } from '../../shared/book/findColumns.ts';
import type { CellValue } from '../../shared/book/parseCell.ts';
import type { Shop } from '../../shared/book/settings.ts';
import { tableCells } from '../../shared/book/tableCells.ts';
import { TABLES, type TableKey } from '../../shared/book/tables.ts';
import { type TradeRow, tradeRecords } from '../../shared/book/tradeRow.ts';
import type { UnitSystem } from '../../shared/units/measures.ts';
import { UNITS } from '../../shared/units/units.ts';
import { demoDoses } from './demoDoses.ts';
import { demoHeatTrials } from './demoHeatTrials.ts';
import { demoMaterials } from './demoMaterials.ts';
import { demoMolds } from './demoMolds.ts';
import { demoOrders } from './demoOrders.ts';
import { demoPatterns } from './demoPatterns.ts';
import { demoPlates } from './demoPlates.ts';
import { demoPourLog } from './demoPourLog.ts';
import { demoStockMoves } from './demoStockMoves.ts';

/** Settings of the invented shop that differ from the defaults, in engine units: 2,400 ft up, a cool room. */
export function demoSettings(): Partial<Shop> {
  return {
    shopName: 'Demo shop (invented)',
    elevation: 2400 * UNITS.ft.factor,
    roomTemperature: 20,
  };
}

/** Rows of every table of the invented shop, in trade units. */
export function demoRows(): {
  readonly [Key in TableKey]: readonly TradeRow<(typeof TABLES)[Key]>[];
} {
  const orders = demoOrders();
  return {
    orders,
    molds: demoMolds(),
    patterns: demoPatterns(),
    doses: demoDoses(),
    materials: demoMaterials(),
    plates: demoPlates(),
    pourLog: demoPourLog(orders),
    heatTrials: demoHeatTrials(),
    stockMoves: demoStockMoves(),
  };
}

/** One table's demo rows as cells, in the units of the sheet's own headings. */
export function demoCells(
  key: TableKey,
  places: readonly Place[],
  width: number,
  system: UnitSystem,
): CellValue[][] {
  const table: Table = TABLES[key];
  const rows: readonly TradeRow<Table>[] = demoRows()[key];
  return tableCells(tradeRecords(table, rows), places, width, system);
}
