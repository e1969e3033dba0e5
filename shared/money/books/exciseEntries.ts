import { nameKey } from '../../book/bookIndex.ts';
import type { ExciseEntry } from '../excise/exciseQuarters.ts';
import type { Sale } from './booksTypes.ts';
import type { ClosedMonth } from './closedMonths.ts';
import type { FrozenOrder } from './frozenOrders.ts';

/** An entry and the order it is of. */
export interface OrderEntry extends ExciseEntry {
  readonly order: string;
}

/**
 * Sales and corrections as the summary of the tax takes them.
 *
 * A sale of a closed month stands as it was when the month was closed; where it is another now, the difference is a
 * correction entered on `day`, so that a quarter that was filed keeps its figures. Where the row of a closed month does
 * not list its orders, its sales stand as they are now.
 * @param day `yyyy-mm-dd`, the day the corrections are entered on
 */
export function exciseEntries(
  sales: readonly Sale[],
  closed: ReadonlyMap<string, ClosedMonth>,
  day: string,
): readonly OrderEntry[] {
  const frozen = new Map<string, FrozenOrder>();
  for (const { month, orders } of closed.values())
    for (const one of orders ?? []) frozen.set(nameKey(month, one.order), one);
  const entries: OrderEntry[] = [];
  for (const sale of sales) {
    const key = nameKey(sale.month, sale.order);
    const was = frozen.get(key);
    frozen.delete(key);
    if (was) entries.push(entryOf(was), ...corrections(was, sale, day));
    else if (closed.get(sale.month)?.orders)
      // A sale that came into a month after it was closed is a correction as a whole.
      entries.push({ ...entryOf(sale), day, corrects: sale.day });
    else entries.push(entryOf(sale));
  }
  // What is left was in a closed month and is not in it any more.
  for (const was of frozen.values()) entries.push(entryOf(was), takenBack(was, day));
  return entries;
}

type Taxed = Pick<Sale, 'order' | 'day' | 'goods'> & { readonly excise: ExciseEntry['excise'] };

function entryOf({ order, day, goods, excise }: Taxed): OrderEntry {
  return { order, day, price: goods, excise };
}

/** A sale taxed for another reason is taken back whole and entered anew, so that each sum moves by its own part. */
function corrections(was: FrozenOrder, sale: Sale, day: string): readonly OrderEntry[] {
  const { excise } = sale;
  const [price, base, tax] = [
    sale.goods - was.goods,
    excise.base - was.excise.base,
    excise.tax - was.excise.tax,
  ];
  if (excise.reason !== was.excise.reason)
    return [takenBack(was, day), { ...entryOf(sale), day, corrects: was.day }];
  if (price === 0 && base === 0 && tax === 0) return [];
  return [
    { order: was.order, day, corrects: was.day, price, excise: { ...was.excise, base, tax } },
  ];
}

function takenBack(was: FrozenOrder, day: string): OrderEntry {
  const { base, tax } = was.excise;
  return {
    order: was.order,
    day,
    corrects: was.day,
    price: 0 - was.goods,
    excise: { ...was.excise, base: 0 - base, tax: 0 - tax },
  };
}
