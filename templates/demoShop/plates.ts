import type { PLATES } from '../../shared/book/tables/plates.ts';
import type { TradeRow } from '../../shared/book/tradeRow.ts';

/** Invented plates. Inches, watts, °F, minutes. */
// biome-ignore format: one row a line
export const DEMO_PLATES: readonly TradeRow<typeof PLATES>[] = [
  { plate: 'Griddle A', kind: 'thin griddle', usableLength: 20, usableWidth: 10, watts: 1500, lowestSetting: 200, highestSetting: 400, warmUp: 9, contactConductance: 96, notes: 'Conductance from trial T-1. Left rear corner runs cool.' },
  { plate: 'Bench plate B', kind: 'flat thick plate', usableLength: 18, usableWidth: 12, watts: 1800, lowestSetting: 150, highestSetting: 450, warmUp: 14 },
];
