import type { OrderRow } from '../runSheet/bookIndex.ts';
import type { CostIndex } from './cost/costIndex.ts';
import { type MoneyResult, type OrderMoney, planMoney } from './planMoney.ts';
import { breakQuantities } from './price/breakQuantities.ts';
import { type PriceBreak, priceBreaks } from './price/priceBreaks.ts';

/**
 * Prices of an order at the shop's break quantities and at its own, each really planned: one set-up, and the rounds, cups and
 * spare pieces of that quantity.
 * @param row - of the order that `money` is of
 */
export function planBreaks(
  costs: CostIndex,
  row: OrderRow,
  money: OrderMoney,
): readonly PriceBreak[] {
  const own = money.plan.quantity;
  const listed = breakQuantities(costs.index.book.shop.breakQuantities);
  const quantities = [...new Set([...listed, own])].sort((one, other) => one - other);
  const planned = new Map<number, MoneyResult>(
    quantities.map((quantity) => [
      quantity,
      quantity === own
        ? money
        : planMoney(costs, { ...row, record: { ...row.record, quantity, priceAgreed: undefined } }),
    ]),
  );
  const costAt = (quantity: number) => {
    const at = planned.get(quantity);
    if (at?.kind === 'money') return at.carried;
    return { kind: 'no price', because: at?.missing[0]?.text ?? '' } as const;
  };
  return priceBreaks(quantities, costAt, money.terms).map((one) => {
    const at = planned.get(one.quantity);
    return at?.kind === 'money' ? { ...one, price: at.price } : one;
  });
}
