import { nameKey } from '../../book/bookIndex.ts';
import type { PostedMove } from '../stock/ledgerTypes.ts';
import type { MoneySums, MonthFigures, Sale, SinceClosing, YearFigures } from './booksTypes.ts';
import type { ClosedMonth } from './closedMonths.ts';
import { isForOrder } from './costOfGoods.ts';
import { compareText } from './salesOf.ts';

const NOTHING: MoneySums = {
  orders: 0,
  sales: 0,
  costOfGoods: 0,
  margin: 0,
  exciseBase: 0,
  exciseTax: 0,
};

/**
 * Sums of every month that has a sale or was closed. A closed month keeps its frozen figures, with what its orders say
 * now beside them.
 * @param otherStock what left stock for no order, by month, smallest units
 */
export function monthFigures(
  sales: readonly Sale[],
  closed: ReadonlyMap<string, ClosedMonth>,
  otherStock: ReadonlyMap<string, number>,
): readonly MonthFigures[] {
  const byMonth = new Map<string, Sale[]>();
  for (const sale of sales) {
    const own = byMonth.get(sale.month);
    if (own) own.push(sale);
    else byMonth.set(sale.month, [sale]);
  }
  const months = [...new Set([...byMonth.keys(), ...closed.keys()])].sort(compareText);
  return months.map((month) => {
    const own = byMonth.get(month) ?? [];
    const now = sumsOf(own);
    const other = { otherStock: otherStock.get(month) ?? 0 };
    const frozen = closed.get(month);
    if (frozen === undefined) return { month, state: 'open', ...now, ...other };
    const since = sinceClosing(frozen, own, now);
    const orders = frozen.orders?.length ?? now.orders;
    return { month, state: 'closed', orders, ...frozen.sums, ...other, since };
  });
}

/** Months added up by year. */
export function yearFigures(months: readonly MonthFigures[]): readonly YearFigures[] {
  const years = [...new Set(months.map(yearOf))];
  return years.map((year) => {
    const own = months.filter((figures) => yearOf(figures) === year);
    const changes = own.map(({ since }) => ({ ...NOTHING, ...since?.change }));
    const { orders: _orders, ...corrections } = changes.reduce(plus, NOTHING);
    return { year, ...own.reduce<MoneySums>(plus, NOTHING), corrections };
  });
}

function yearOf({ month }: MonthFigures): number {
  return Number(month.slice(0, 4));
}

/**
 * Value that left stock for no order, by month and unrounded: scrapped without one, lost in a count less found in one, and
 * what a purchase cost more than the stock used before it was reckoned at.
 */
export function otherStockCosts(moves: readonly PostedMove[]): ReadonlyMap<string, number> {
  const costs = new Map<string, number>();
  for (const { date, reason, order, cost } of moves) {
    if (cost === 0 || isForOrder(reason, order)) continue;
    const month = date.slice(0, 7);
    costs.set(month, (costs.get(month) ?? 0) + cost);
  }
  return costs;
}

function sumsOf(sales: readonly Sale[]): MoneySums {
  return sales.reduce<MoneySums>(
    (sums, { sales: net, cost, margin, excise }) =>
      plus(sums, {
        orders: 1,
        sales: net,
        costOfGoods: cost.total,
        margin,
        exciseBase: excise.base,
        exciseTax: excise.tax,
      }),
    NOTHING,
  );
}

function plus(one: MoneySums, other: MoneySums): MoneySums {
  return {
    orders: one.orders + other.orders,
    sales: one.sales + other.sales,
    costOfGoods: one.costOfGoods + other.costOfGoods,
    margin: one.margin + other.margin,
    exciseBase: one.exciseBase + other.exciseBase,
    exciseTax: one.exciseTax + other.exciseTax,
  };
}

function sinceClosing(
  { closedOn, who, stockValue, sums, orders }: ClosedMonth,
  sales: readonly Sale[],
  now: MoneySums,
): SinceClosing {
  const change = {
    sales: now.sales - sums.sales,
    costOfGoods: now.costOfGoods - sums.costOfGoods,
    margin: now.margin - sums.margin,
    exciseBase: now.exciseBase - sums.exciseBase,
    exciseTax: now.exciseTax - sums.exciseTax,
  };
  if (orders === undefined) return { closedOn, who, stockValue, change };
  return { closedOn, who, stockValue, change, orders: changedOrders(orders, sales) };
}

/** Orders of a closed month that are not as they were: changed, new, or gone from it. */
function changedOrders(
  frozen: NonNullable<ClosedMonth['orders']>,
  sales: readonly Sale[],
): readonly string[] {
  const before = new Map(frozen.map((one) => [nameKey(one.order), one]));
  const changed = sales.flatMap(({ order, sales: net, cost, goods, excise }) => {
    const was = before.get(nameKey(order));
    before.delete(nameKey(order));
    const isSame =
      was !== undefined &&
      was.sales === net &&
      was.cost === cost.total &&
      was.goods === goods &&
      was.excise.base === excise.base &&
      was.excise.tax === excise.tax &&
      was.excise.reason === excise.reason;
    return isSame ? [] : [order];
  });
  return [...changed, ...[...before.values()].map(({ order }) => order)];
}
