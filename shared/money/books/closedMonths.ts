import type { BooksBook } from '../../book/book.ts';
import type { Missing } from '../../book/missingCells.ts';
import type { Row } from '../../book/reading/readTable.ts';
import type { CLOSED_MONTHS } from '../../book/tables/closedMonths.ts';
import { toMinor } from '../toMinor.ts';
import type { MoneySums } from './booksTypes.ts';
import { type FrozenOrder, frozenOrders } from './frozenOrders.ts';

/** A month as it was closed, in smallest units. */
export interface ClosedMonth {
  readonly row: number;
  readonly month: string;
  readonly closedOn: string;
  readonly who: string;
  readonly sums: Omit<MoneySums, 'orders'>;
  readonly stockValue: number;
  /** Undefined where the row does not list them. */
  readonly orders?: readonly FrozenOrder[];
}

/** No shop's month is larger; a row beyond was spoiled by hand. */
const LARGEST = 1e10;

export interface ClosedFound {
  /** By month; the first row of a month stands. */
  readonly closed: ReadonlyMap<string, ClosedMonth>;
  readonly problems: readonly Missing[];
}

/** The rows of *Closed months* that can be read; a second row of a month, and one that was spoiled by hand, are named. */
export function closedMonths({
  closedMonths: rows,
  shop,
}: Pick<BooksBook, 'closedMonths' | 'shop'>): ClosedFound {
  const closed = new Map<string, ClosedMonth>();
  const problems: Missing[] = [];
  for (const row of rows) {
    const { month } = row.record;
    const isNamed = month !== undefined && isMonth(month);
    if (!isNamed) problems.push(gap(row.row, 'must be a month such as 2026-11'));
    else if (closed.has(month))
      problems.push(gap(row.row, `${month} is closed in row ${closed.get(month)?.row} already`));
    else {
      const read = closedMonth(row, month, shop);
      if (read === undefined)
        problems.push(gap(row.row, 'must be followed by amounts that make sense'));
      else closed.set(month, read);
    }
  }
  return { closed, problems };
}

/** Whether a text is a year and month, `2026-11`. */
export function isMonth(text: string): boolean {
  return /^\d{4}-(0[1-9]|1[0-2])$/.test(text);
}

function closedMonth(
  { row, record }: Row<typeof CLOSED_MONTHS>,
  month: string,
  { currency }: BooksBook['shop'],
): ClosedMonth | undefined {
  const { sales = 0, costOfGoods = 0, margin = 0, exciseBase = 0, exciseTax = 0 } = record;
  const { stockValue = 0 } = record;
  const amounts = [sales, costOfGoods, margin, exciseBase, exciseTax, stockValue];
  if (amounts.some((amount) => Math.abs(amount) > LARGEST)) return undefined;
  const minor = (amount: number) => toMinor(amount, currency, 'a closed month');
  const orders = frozenOrders(record.orders);
  return {
    row,
    month,
    closedOn: record.closedOn ?? '',
    who: record.who ?? '',
    sums: {
      sales: minor(sales),
      costOfGoods: minor(costOfGoods),
      margin: minor(margin),
      exciseBase: minor(exciseBase),
      exciseTax: minor(exciseTax),
    },
    stockValue: minor(stockValue),
    ...(orders === undefined ? {} : { orders }),
  };
}

function gap(row: number, text: string): Missing {
  return { sheet: 'Closed months', row, heading: 'Month', text };
}
