import { nameKey } from '../../book/bookIndex.ts';
import type { CostIndex, SupplyRow } from './costIndex.ts';
import type { CostLine } from './costLine.ts';
import { type DraftLines, noPrice } from './materialLines.ts';

interface Supplied {
  readonly mold: string;
  /** Good pieces that the customer gets. */
  readonly quantity: number;
  readonly packPieces: number;
}

/**
 * Hooks, bags, labels and the like: for each piece ordered, for each pack of them begun, or once.
 *
 * Pieces that are poured and do not come out good get none.
 */
export function supplyLines(
  { index, supplies, prices }: CostIndex,
  supplied: Supplied,
): DraftLines {
  const lines: Omit<CostLine, 'minor'>[] = [];
  const assumptions: string[] = [];
  for (const { row, record } of supplies) {
    const { mold, material, amount, per } = record;
    if (mold !== undefined && nameKey(mold) !== nameKey(supplied.mold)) {
      if (!index.molds.has(nameKey(mold)))
        assumptions.push(`Supplies row ${row} is for ${mold}, which is not in Molds.`);
      continue;
    }
    if (material === undefined || amount === undefined || per === undefined) {
      assumptions.push(`Supplies row ${row} is not complete, so it counts as 0.`);
      continue;
    }
    const listed = index.materials.get(nameKey(material))?.record;
    if (listed === undefined)
      assumptions.push(`${material} in Supplies row ${row} is not in Materials.`);
    const price = prices.get(nameKey(material));
    if (price === undefined) assumptions.push(noPrice(material));
    const rate = price && { rate: price.perPackUnit, from: price.from };
    const unit = listed?.packUnit && { unit: listed.packUnit };
    const all = amount * timesOf(per, supplied);
    lines.push({
      key: 'supplies',
      label: `${material}, per ${per}`,
      amount: all,
      ...unit,
      ...rate,
    });
  }
  return { lines, assumptions };
}

function timesOf(
  per: NonNullable<SupplyRow['record']['per']>,
  { quantity, packPieces }: Supplied,
): number {
  if (per === 'order') return 1;
  return per === 'piece' ? quantity : Math.ceil(quantity / packPieces);
}
