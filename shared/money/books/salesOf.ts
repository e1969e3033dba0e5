import type { BooksBook } from '../../book/book.ts';
import { nameKey, type OrderRow, problemsAt } from '../../book/bookIndex.ts';
import type { Missing } from '../../book/missingCells.ts';
import { TABLES } from '../../book/tables.ts';
import { describe } from '../../errors/describe.ts';
import { InputError } from '../../errors/InputError.ts';
import type { CostIndex } from '../cost/costIndex.ts';
import { salesTaxOn } from '../price/salesTaxOn.ts';
import { soldAt } from '../price/soldAt.ts';
import { priceTerms } from '../priceTerms.ts';
import type { Ledger } from '../stock/ledgerTypes.ts';
import { toMinor } from '../toMinor.ts';
import type { CostOfGoods, Sale } from './booksTypes.ts';
import { costOfGoods, postedCosts } from './costOfGoods.ts';

/** Columns that a sale is made from: one that was refused must not pass for a blank one. */
const SALE_KEYS = ['shippedOn', 'priceAgreed', 'shipping', 'saleKind', 'exciseStatus'] as const;

export interface SalesFound {
  /** By day, then by row. */
  readonly sales: readonly Sale[];
  /** Shipped orders that are in no sum, and why. */
  readonly problems: readonly Missing[];
  /** What was taken to be so because the book does not say, in sentences. */
  readonly assumptions: readonly string[];
}

/**
 * Every order that was shipped, as the books hold it: the day of the sale is *Shipped on*, the sales are the price agreed
 * less the excise inside it.
 *
 * A shipped order that lacks its number or its price, is canceled, or has a cell that was refused, is left out and named.
 */
export function salesOf(
  book: BooksBook,
  costs: CostIndex,
  stock: Pick<Ledger, 'moves'>,
): SalesFound {
  const posted = postedCosts(stock);
  const assumed = new Set<string>();
  const sales: Sale[] = [];
  const problems: Missing[] = [];
  for (const row of book.orders) {
    const refused = refusals(costs, row);
    if (row.record.shippedOn === undefined && !refused.some(isShippedOn)) continue;
    const gaps = refused.length > 0 ? refused : gapsOf(costs, row);
    problems.push(...gaps);
    if (gaps.length > 0) continue;
    try {
      const own = posted.get(nameKey(row.record.order));
      sales.push(saleOf(book, row, costOfGoods(costs, row, own, assumed)));
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      problems.push(outOfSense(row, error));
    }
  }
  sales.sort((one, other) => compareText(one.day, other.day) || one.row - other.row);
  return { sales, problems, assumptions: [...assumed] };
}

/** What an order at its agreed price comes to for the customer. */
function invoiceOf({ shop }: Pick<BooksBook, 'shop'>, { record }: OrderRow) {
  const terms = priceTerms(shop, record, 'known pattern');
  const { goods, excise, net } = soldAt(record.priceAgreed ?? 0, 0, terms);
  const shipping = toMinor(terms.shipping, shop.currency, 'shipping');
  const salesTax = salesTaxOn(goods, excise, terms);
  return {
    goods,
    excise,
    net,
    shipping,
    salesTax,
    total: goods + excise.added + shipping + salesTax,
  };
}

function saleOf(book: BooksBook, row: OrderRow, cost: CostOfGoods): Sale {
  const {
    order = '',
    customer = '',
    shippedOn = '',
    mold = '',
    pattern = '',
    quantity,
  } = row.record;
  const { net, ...invoice } = invoiceOf(book, row);
  return {
    order,
    row: row.row,
    customer,
    day: shippedOn,
    month: shippedOn.slice(0, 7),
    mold,
    pattern,
    ...(quantity === undefined ? {} : { pieces: quantity }),
    ...invoice,
    sales: net,
    cost,
    margin: net - cost.total,
  };
}

function refusals({ index }: CostIndex, { row }: OrderRow): readonly Missing[] {
  const headings: readonly string[] = SALE_KEYS.map((key) => TABLES.orders.columns[key].heading);
  return problemsAt(index, 'Orders', row)
    .filter(({ heading }) => headings.includes(heading))
    .map(({ heading, error }) => ({ sheet: 'Orders', row, heading, text: describe(error) }));
}

/** A figure so large that no amount can be made of it. */
function outOfSense({ row }: OrderRow, error: InputError): Missing {
  const text = `${describe(error)}, so the order is not in the books`;
  return { sheet: 'Orders', row, heading: TABLES.orders.columns.priceAgreed.heading, text };
}

function isShippedOn({ heading }: Missing): boolean {
  return heading === TABLES.orders.columns.shippedOn.heading;
}

function gapsOf({ index }: CostIndex, { row, record }: OrderRow): readonly Missing[] {
  const { order, priceAgreed, status } = record;
  const gap = (heading: string, text: string) => [{ sheet: 'Orders', row, heading, text } as const];
  if (order === undefined)
    return gap('Order', 'this row was shipped without an order number, so it is not in the books');
  if (index.orders.get(nameKey(order))?.row !== row)
    return gap('Order', `order ${order} is there twice, so this row is not in the books`);
  if (status === 'canceled')
    return gap('Status', `order ${order} is canceled and was shipped, so it is not in the books`);
  if (priceAgreed === undefined)
    return gap(
      'Price agreed',
      `order ${order} was shipped without a price, so it is not in the books`,
    );
  return [];
}

export function compareText(one: string, other: string): number {
  return one < other ? -1 : one > other ? 1 : 0;
}
