import type { OrderPlan } from '../plan/planTypes.ts';
import type { CostIndex } from './cost/costIndex.ts';
import type { OrderCost } from './cost/costLine.ts';
import { orderCost } from './cost/orderCost.ts';
import { gainOf } from './price/marginOfMarkup.ts';
import type { NoPrice, Price, PriceTerms } from './price/price.ts';

/**
 * The cost that the price of a piece has to carry: where a new pattern's colors are charged for, their work is not in it too.
 * @returns smallest units
 */
export function carriedCost(
  costs: CostIndex,
  plan: OrderPlan,
  cost: OrderCost,
  { colorMatchCharge }: Pick<PriceTerms, 'colorMatchCharge'>,
): number {
  return colorMatchCharge > 0 ? orderCost(costs, plan, 'known pattern').total : cost.total;
}

/** The price with the margin that the whole cost leaves, work on the colors included. */
export function withWholeCost(price: Price | NoPrice, { total }: OrderCost): Price | NoPrice {
  if (price.kind === 'no price') return price;
  const { margin: _margin, markup: _markup, ...rest } = price;
  return { ...rest, cost: total, ...gainOf(price.net, total) };
}
