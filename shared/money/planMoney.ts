import type { OrderRow } from '../book/bookIndex.ts';
import { type Missing, type MissingCells, optional } from '../book/missingCells.ts';
import { TABLES } from '../book/tables.ts';
import { describe } from '../errors/describe.ts';
import { InputError } from '../errors/InputError.ts';
import { planRow } from '../plan/planOrder.ts';
import type { OrderPlan } from '../plan/planTypes.ts';
import { carriedCost, withWholeCost } from './carriedCost.ts';
import type { CostIndex } from './cost/costIndex.ts';
import type { OrderCost } from './cost/costLine.ts';
import { orderCost } from './cost/orderCost.ts';
import { moneyAssumptions } from './moneyAssumptions.ts';
import { patternMatching } from './patternMatching.ts';
import type { NoPrice, Price, PriceTerms } from './price/price.ts';
import { priceFrom } from './price/priceFrom.ts';
import { type SoldAt, soldAt } from './price/soldAt.ts';
import { priceTerms } from './priceTerms.ts';

/** What an order costs, what it would be quoted at now, and what is kept of the price agreed. Smallest units. */
export interface OrderMoney {
  readonly kind: 'money';
  readonly plan: OrderPlan;
  readonly matching: 'new pattern' | 'known pattern';
  readonly cost: OrderCost;
  /** The part of the cost that the price of the pieces carries: without work that is charged by itself. */
  readonly carried: number;
  readonly terms: PriceTerms;
  /** From the target margin. */
  readonly price: Price | NoPrice;
  /** At *Price agreed*; absent while none is. */
  readonly agreed?: SoldAt;
  /** What was taken to be so because the book does not say, in sentences. */
  readonly assumptions: readonly string[];
}

/** Everything that is missing, and what of it the plan itself can do without. */
export interface MoneyMissing {
  readonly kind: 'missing';
  readonly order: string;
  readonly row: number;
  readonly missing: readonly Missing[];
  readonly moneyGaps: readonly Missing[];
}

export type MoneyResult = OrderMoney | MoneyMissing;

/** Columns of *Orders* that a price is made from; one that was refused must not pass for a blank one. */
const MONEY_KEYS = [
  'priceAgreed',
  'rush',
  'discount',
  'shipping',
  'saleKind',
  'exciseStatus',
] as const;

/** The money of an order row, or everything that is missing with its place. The row need not stand on the sheet as it is. */
export function planMoney(costs: CostIndex, row: OrderRow): MoneyResult {
  const plan = planRow(costs.index, row);
  const gaps: MissingCells = {
    index: costs.index,
    system: costs.index.book.shop.units,
    missing: [],
  };
  for (const key of MONEY_KEYS) optional(gaps, TABLES.orders, row, key);
  const moneyGaps = gaps.missing;
  if (plan.kind === 'missing')
    return { ...plan, missing: [...plan.missing, ...moneyGaps], moneyGaps };
  if (moneyGaps.length > 0) return missing(plan, moneyGaps);
  try {
    return moneyOf(costs, row, plan);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return missing(plan, [{ sheet: 'Orders', row: plan.row, heading: '', text: describe(error) }]);
  }
}

function moneyOf(costs: CostIndex, row: OrderRow, plan: OrderPlan): OrderMoney {
  const { shop } = costs.index.book;
  const matching = patternMatching(costs.index, row, plan.version);
  const cost = orderCost(costs, plan, matching);
  const terms = priceTerms(shop, row.record, matching);
  const carried = carriedCost(costs, plan, cost, terms);
  const price = withWholeCost(priceFrom({ pieces: plan.quantity, cost: carried }, terms), cost);
  const { priceAgreed } = row.record;
  return {
    kind: 'money',
    plan,
    matching,
    cost,
    carried,
    terms,
    price,
    ...(priceAgreed === undefined ? {} : { agreed: soldAt(priceAgreed, cost.total, terms) }),
    assumptions: [...moneyAssumptions(costs.index), ...cost.assumptions],
  };
}

function missing({ order, row }: OrderPlan, gaps: readonly Missing[]): MoneyMissing {
  return { kind: 'missing', order, row, missing: gaps, moneyGaps: gaps };
}
