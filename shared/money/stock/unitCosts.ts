import { type MaterialRow, nameKey } from '../../book/bookIndex.ts';
import type { Ledger } from './ledgerTypes.ts';

export interface UnitCost {
  /** Money for one pack unit, unrounded. */
  readonly perPackUnit: number;
  readonly from: 'stock' | 'list price';
}

/**
 * What one pack unit of every material costs: the weighted average of what is in stock, or was last; the list price in
 * Materials where nothing was bought yet. A material without either is not in it.
 */
export function unitCosts(
  { stocks }: Ledger,
  materials: readonly MaterialRow[],
): ReadonlyMap<string, UnitCost> {
  const costs = new Map<string, UnitCost>();
  for (const { record } of materials) {
    const key = nameKey(record.material);
    const { packPrice, packSize } = record;
    if (key !== '' && packPrice !== undefined && packSize !== undefined && !costs.has(key))
      costs.set(key, { perPackUnit: packPrice / packSize, from: 'list price' });
  }
  for (const [key, { average }] of stocks)
    if (average !== undefined) costs.set(key, { perPackUnit: average, from: 'stock' });
  return costs;
}
