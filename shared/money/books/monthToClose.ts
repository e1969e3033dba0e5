import type { BooksBook } from '../../book/book.ts';
import type { ClosedMonthRecord } from '../../book/tables.ts';
import { describe } from '../../errors/describe.ts';
import { ledger } from '../stock/ledger.ts';
import { orderedMoves } from '../stock/orderedMoves.ts';
import { stockValues } from '../stock/stockValues.ts';
import { fromMinor } from '../toMinor.ts';
import type { Books, MonthFigures } from './booksTypes.ts';
import { isMonth } from './closedMonths.ts';
import { frozenText } from './frozenOrders.ts';

/** A row for *Closed months*, or why there is none to write. */
export type MonthToClose =
  | { readonly kind: 'record'; readonly record: ClosedMonthRecord }
  /** It was closed before; nothing is written. */
  | { readonly kind: 'closed' }
  | { readonly kind: 'refused'; readonly field: 'month' | ''; readonly text: string };

/**
 * The row that freezes a month. It must be over, and every earlier month with sales must be closed.
 * @param now the books as they are
 * @param asked `month` as `yyyy-mm`, `who` in initials
 */
export function monthToClose(
  book: BooksBook,
  now: Books,
  { month, who }: { readonly month: string; readonly who: string },
): MonthToClose {
  if (!isMonth(month)) {
    const rule = { kind: 'form', wanted: 'a month such as 2026-11' } as const;
    return {
      kind: 'refused',
      field: 'month',
      text: describe({ field: 'month', rule, value: month }),
    };
  }
  const figures = now.months.find((one) => one.month === month);
  if (figures?.state === 'closed') return { kind: 'closed' };
  if (month >= now.day.slice(0, 7))
    return refused(`${month} is not over: it can be closed from ${monthAfter(month)}-01 on`);
  if (figures === undefined) return refused(`${month} has no sales to close`);
  const earlier = now.months.find((one) => one.month < month && one.state === 'open');
  if (earlier) return refused(`${earlier.month} has sales and is not closed yet: close it first`);
  return { kind: 'record', record: recordOf(book, now, figures, who) };
}

/** The month that is to be closed next: the first with sales that is over and open. */
export function nextToClose({ months, day }: Pick<Books, 'months' | 'day'>): string | undefined {
  const open = months.find(({ state }) => state === 'open');
  return open && open.month < day.slice(0, 7) ? open.month : undefined;
}

/** The text that makes a month's row one of a kind. */
function entryOfMonth(month: string): string {
  return `closed ${month}`;
}

function recordOf(
  book: BooksBook,
  now: Books,
  figures: MonthFigures,
  who: string,
): ClosedMonthRecord {
  const { currency } = now;
  const { month } = figures;
  const text = frozenText(now.sales.filter((sale) => sale.month === month));
  const amount = (minor: number) => fromMinor(minor, currency);
  const notes = notesOf(now, text === '');
  return {
    entry: entryOfMonth(month),
    month,
    closedOn: now.day,
    ...(who === '' ? {} : { who }),
    sales: amount(figures.sales),
    costOfGoods: amount(figures.costOfGoods),
    margin: amount(figures.margin),
    exciseBase: amount(figures.exciseBase),
    exciseTax: amount(figures.exciseTax),
    stockValue: amount(stockValueAfter(book, month)),
    ...(text === '' ? {} : { orders: text }),
    ...(notes === '' ? {} : { notes }),
  };
}

function notesOf({ problems }: Books, isLong: boolean): string {
  const left = problems.filter(({ sheet }) => sheet === 'Orders').map(({ row }) => `row ${row}`);
  const parts = [
    ...(left.length === 0 ? [] : [`To mend in Orders when it was closed: ${left.join(', ')}.`]),
    ...(isLong ? ['Too many orders to list: later changes show in the sums only.'] : []),
  ];
  return parts.join(' ');
}

/** Stock at the end of a month, at the weighted average of the moves up to then. */
function stockValueAfter({ stockMoves, materials, shop }: BooksBook, month: string): number {
  const end = monthAfter(month);
  const before = orderedMoves(stockMoves).filter(({ date }) => date < end);
  const stock = ledger(
    before.map(({ move, date }) => ({ ...move, record: { ...move.record, date } })),
    materials,
  );
  return stockValues(stock, shop.currency).total;
}

function monthAfter(month: string): string {
  const [year = 0, number = 1] = month.split('-').map(Number);
  const next = number === 12 ? [year + 1, 1] : [year, number + 1];
  return next.map((part, index) => String(part).padStart(index === 0 ? 4 : 2, '0')).join('-');
}

function refused(text: string): MonthToClose {
  return { kind: 'refused', field: 'month', text };
}
