import type { TypedRow } from '../../shared/book/layout/typedRow.ts';
import type { Shop } from '../../shared/book/settings/settings.ts';
import type { TABLES, TableKey } from '../../shared/book/tables.ts';
import { UNITS } from '../../shared/units/units.ts';
import { demoBenchTrials } from './demoBenchTrials.ts';
import { demoDoses } from './demoDoses.ts';
import { demoHeatTrials } from './demoHeatTrials.ts';
import { demoMaterials } from './demoMaterials.ts';
import { demoMolds } from './demoMolds.ts';
import { demoOrders } from './demoOrders.ts';
import { demoPatterns } from './demoPatterns.ts';
import { demoPayments } from './demoPayments.ts';
import { demoPeople } from './demoPeople.ts';
import { demoPlates } from './demoPlates.ts';
import { demoPourLog } from './demoPourLog.ts';
import { demoStockMoves } from './demoStockMoves.ts';
import { demoSupplies } from './demoSupplies.ts';

/** Settings of the invented shop that differ from the defaults, in engine units: 2,400 ft up, a cool room. */
export function demoSettings(): Partial<Shop> {
  return {
    shopName: 'Demo shop (invented)',
    elevation: 2400 * UNITS.ft.factor,
    roomTemperature: 20,
    minimumOrder: 40,
    salesTaxRate: 0.06,
    microwaveCircuit: 'Counter',
    quoteTerms:
      'Deposit with the order, the rest before shipping. Colors are mixed by hand and vary a little from lot to lot.',
  };
}

/** Rows of every table of the invented shop, in trade units. */
export function demoRows(): {
  readonly [Key in TableKey]: readonly TypedRow<(typeof TABLES)[Key]>[];
} {
  const orders = demoOrders();
  return {
    orders,
    molds: demoMolds(),
    patterns: demoPatterns(),
    doses: demoDoses(),
    materials: demoMaterials(),
    supplies: demoSupplies(),
    plates: demoPlates(),
    people: demoPeople(),
    pourLog: demoPourLog(orders),
    heatTrials: demoHeatTrials(),
    benchTrials: demoBenchTrials(),
    measuredFigures: [],
    quotes: [],
    stockMoves: demoStockMoves(),
    payments: demoPayments(),
    closedMonths: [],
  };
}

/** The invented shop as the data file that the menu item reads. */
export interface DemoShop {
  readonly settings: Partial<Shop>;
  readonly rows: ReturnType<typeof demoRows>;
}

export function demoShop(): DemoShop {
  return { settings: demoSettings(), rows: demoRows() };
}
