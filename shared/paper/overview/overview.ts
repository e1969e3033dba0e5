import type { BooksBook, DayBook } from '../../book/book.ts';
import { currentLogRows } from '../../book/currentLogRows.ts';
import { dayAfter } from '../../book/reading/daysBetween.ts';
import { type WeekCapacity, weekCapacity } from '../../day/shop/weekCapacity.ts';
import { books } from '../../money/books/books.ts';
import { type BooksSummary, booksSummary } from '../../money/books/booksSummary.ts';
import { compareText } from '../../money/books/salesOf.ts';
import { byDue } from '../../money/stock/shortfall.ts';
import { type StockSummary, stockSummary } from '../../money/stock/stockSummary.ts';
import { type QualitySummary, qualitySummary } from '../../outcomes/quality/qualitySummary.ts';
import type { UnitSystem } from '../../units/measures.ts';

/** Orders due within so many days are listed. */
export const DAYS_AHEAD = 14;

/** States of an order that is still to leave the shop. */
const OPEN: readonly (string | undefined)[] = ['accepted', 'planned', 'poured', 'packed'];

interface DueOrder {
  readonly order: string;
  readonly due: string;
  readonly customer: string;
  readonly mold: string;
  readonly pattern: string;
  readonly pieces?: number;
  readonly status: string;
  readonly isLate: boolean;
}

/** Pieces that came out of one month's rounds. */
interface MonthYield {
  readonly month: string;
  readonly poured: number;
  readonly good: number;
}

/** Everything that the sheet *Overview* shows. */
export interface Overview {
  readonly shopName: string;
  readonly day: string;
  readonly system: UnitSystem;
  readonly due: readonly DueOrder[];
  readonly week: WeekCapacity;
  readonly books: BooksSummary;
  readonly stock: Pick<StockSummary, 'total' | 'purchases' | 'uncounted'>;
  readonly yields: readonly MonthYield[];
  /** Of all molds and patterns, a point a round. */
  readonly quality: QualitySummary;
}

/** What the overview is made from. */
type OverviewBook = BooksBook & Pick<DayBook, 'people'>;

/** @param day `yyyy-mm-dd` */
export function overview(book: OverviewBook, day: string): Overview {
  const { total, purchases, uncounted } = stockSummary(book);
  return {
    shopName: book.shop.shopName,
    day,
    system: book.shop.units,
    due: dueOrders(book, day),
    week: weekCapacity(book, day),
    books: booksSummary(book, books(book, day)),
    stock: { total, purchases, uncounted },
    yields: monthYields(book),
    quality: qualitySummary(book, day, { points: 'rounds' }),
  };
}

/** Orders that are agreed on, not shipped, and due by {@link DAYS_AHEAD} days from now, late ones included. */
function dueOrders({ orders }: BooksBook, day: string): readonly DueOrder[] {
  const last = dayAfter(day, DAYS_AHEAD);
  return orders
    .filter(
      ({ record: { due, status, shippedOn } }) =>
        shippedOn === undefined && due !== undefined && due <= last && OPEN.includes(status),
    )
    .sort(byDue)
    .map(({ record }) => {
      const { order = '', due = '', customer = '', mold = '', pattern = '', quantity } = record;
      return {
        ...{ order, due, customer, mold, pattern, status: record.status ?? '', isLate: due < day },
        ...(quantity === undefined ? {} : { pieces: quantity }),
      };
    });
}

/** Good pieces of all poured by the month they were logged in; rows that contradict themselves are left out. */
function monthYields({ pourLog }: Pick<BooksBook, 'pourLog'>): readonly MonthYield[] {
  const months = new Map<string, { poured: number; good: number }>();
  for (const { record } of currentLogRows(pourLog)) {
    const { loggedAt = '', poured, good } = record;
    const month = /^\d{4}-\d\d/.exec(loggedAt)?.[0];
    if (month === undefined || poured === undefined || good === undefined || good > poured)
      continue;
    const own = months.get(month) ?? { poured: 0, good: 0 };
    months.set(month, { poured: own.poured + poured, good: own.good + good });
  }
  return [...months]
    .map(([month, sums]) => ({ month, ...sums }))
    .sort((one, other) => compareText(one.month, other.month));
}
