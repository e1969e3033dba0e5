import { packAmountText } from '../../money/packAmountText.ts';
import type { PurchaseLine } from '../../money/stock/purchaseList.ts';

/** Why a material is on the purchase list. */
export function purchaseReasonText({
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
    return `${packAmountText(-free, unit)} short for the open orders (${packAmountText(onHand, unit)} on hand, ${packAmountText(needed, unit)} needed), from order ${shortFrom.order} on${due}`;
  }
  if (onHand < 0)
    return `stock stands at ${packAmountText(onHand, unit)}: look at Stock moves first`;
  const level = isLow && reorderLevel !== undefined ? packAmountText(reorderLevel, unit) : '';
  return `${packAmountText(free, unit)} left after the open orders, reorder point ${level}`;
}
