import type { Table } from '../../shared/book/column.ts';
import type { Place } from '../../shared/book/findColumns.ts';
import type { CellValue } from '../../shared/book/parseCell.ts';
import type { Shop } from '../../shared/book/settings.ts';
import { tableCells } from '../../shared/book/tableCells.ts';
import { TABLES, type TableKey } from '../../shared/book/tables.ts';
import { type TradeRow, tradeRecords } from '../../shared/book/tradeRow.ts';
import type { UnitSystem } from '../../shared/units/measures.ts';
import { UNITS } from '../../shared/units/units.ts';
import { DEMO_DOSES } from './doses.ts';
import { DEMO_HEAT_TRIALS } from './heatTrials.ts';
import { DEMO_MATERIALS } from './materials.ts';
import { DEMO_MOLDS } from './molds.ts';
import { DEMO_ORDERS } from './orders.ts';
import { DEMO_PATTERNS } from './patterns.ts';
import { DEMO_PLATES } from './plates.ts';
import { demoPourLog } from './pourLog.ts';
import { DEMO_STOCK_MOVES } from './stockMoves.ts';

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
  return {
    orders: DEMO_ORDERS,
    molds: DEMO_MOLDS,
    patterns: DEMO_PATTERNS,
    doses: DEMO_DOSES,
    materials: DEMO_MATERIALS,
    plates: DEMO_PLATES,
    pourLog: demoPourLog(),
    heatTrials: DEMO_HEAT_TRIALS,
    stockMoves: DEMO_STOCK_MOVES,
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
