import type { PurchaseLine } from '../../shared/money/stock/purchaseList.ts';
import { sayAmount } from './stockWords.ts';

/** Why a material is on the purchase list. */
export function reasonWords({
  onHand,
  needed,
  free,
  shortFrom,
  isLow,
  reorderLevel,
  unit,
}: PurchaseLine): string {
  if (shortFrom) {
    const due = shortFrom.due === undefined ? '' : `, due ${shortFrom.due}`;
    return `${sayAmount(-free, unit)} short for the open orders (${sayAmount(onHand, unit)} on hand, ${sayAmount(needed, unit)} needed), from order ${shortFrom.order} on${due}`;
  }
  if (onHand < 0) return `stock stands at ${sayAmount(onHand, unit)}: look at Stock moves first`;
  const level = isLow && reorderLevel !== undefined ? sayAmount(reorderLevel, unit) : '';
  return `${sayAmount(free, unit)} left after the open orders, reorder point ${level}`;
}
