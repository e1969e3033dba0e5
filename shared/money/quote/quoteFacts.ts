import type { OrderRow } from '../../book/bookIndex.ts';
import { breakQuantities } from '../../book/settings/breakQuantities.ts';
import type { Shop } from '../../book/settings/settings.ts';
import type { CostIndex } from '../cost/costIndex.ts';
import type { OrderCost } from '../cost/costLine.ts';
import { type MoneyMissing, type OrderMoney, planMoney } from '../planMoney.ts';

/** What a quantity costs to make, in smallest units, or why that is not known. */
export interface QuantityCost {
  readonly quantity: number;
  /** The part that the price of the pieces carries, and the whole. */
  readonly carried?: number;
  readonly cost?: number;
  readonly because?: string;
}

/** Everything that a quote is made from but the terms of the sale. Of the shop's own: none of the costs is for a customer. */
export interface QuoteFacts {
  readonly order: string;
  readonly customer: string;
  readonly mold: string;
  readonly pattern: string;
  readonly version: number;
  /** In the order they are poured. */
  readonly layers: readonly string[];
  readonly quantity: number;
  readonly due?: string;
  readonly matching: OrderMoney['matching'];
  readonly pieces: { readonly toPour: number; readonly rounds: number };
  readonly cost: OrderCost;
  /** The quantity asked for and those of the price table, from the fewest up. */
  readonly quantities: readonly QuantityCost[];
  readonly shop: Shop;
  readonly assumptions: readonly string[];
}

export type QuoteFactsResult = QuoteFacts | MoneyMissing;

/**
 * What an order row costs, at its quantity and at those of the price table, each really planned.
 * @param row - need not stand on the sheet
 */
export function quoteFacts(costs: CostIndex, row: OrderRow): QuoteFactsResult {
  const money = planMoney(costs, row);
  if (money.kind === 'missing') return money;
  const { plan, cost, matching, assumptions } = money;
  const { order, mold, pattern, version, quantity, due, pieces } = plan;
  const { shop } = costs.index.book;
  const listed = breakQuantities(shop.breakQuantities);
  const quantities = [...new Set([...listed, quantity])].sort((one, other) => one - other);
  return {
    order,
    customer: row.record.customer ?? '',
    mold,
    pattern,
    version,
    layers: plan.layers.map(({ layer }) => layer),
    quantity,
    ...(due === undefined ? {} : { due }),
    matching,
    pieces: { toPour: pieces.toPour, rounds: pieces.rounds },
    cost,
    quantities: quantities.map((one) => quantityCost(costs, row, money, one)),
    shop,
    assumptions,
  };
}

function quantityCost(
  costs: CostIndex,
  row: OrderRow,
  own: OrderMoney,
  quantity: number,
): QuantityCost {
  const asked = { ...row, record: { ...row.record, quantity, priceAgreed: undefined } };
  const money = quantity === own.plan.quantity ? own : planMoney(costs, asked);
  if (money.kind === 'missing') return { quantity, because: money.missing[0]?.text ?? '' };
  return { quantity, carried: money.carried, cost: money.cost.total };
}
