import type { BooksBook } from '../../book/book.ts';
import { exciseTerms } from '../excise/exciseTerms.ts';
import type { Books, CostBasis } from './booksTypes.ts';
import { nextToClose } from './monthToClose.ts';

/** Orders that a page lists at most; the export has all. */
const LISTED = 100;

/** One sale as a list shows it; smallest units. */
export interface SaleLine {
  readonly order: string;
  readonly day: string;
  readonly sales: number;
  readonly cost: number;
  readonly margin: number;
  readonly basis: CostBasis;
}

/** The books as a page draws them: everything but the long tables. */
export interface BooksSummary extends Omit<Books, 'sales'> {
  /** The newest sales, newest first. */
  readonly latest: readonly SaleLine[];
  /** Sales that the list leaves out. */
  readonly older: number;
  /** The month that may be closed now. */
  readonly next?: string;
  /** Whether the shop keeps books of the excise at all. */
  readonly isExciseOn: boolean;
}

export function booksSummary(book: BooksBook, now: Books): BooksSummary {
  const { sales, ...rest } = now;
  const next = nextToClose(now);
  const latest = sales.slice(-LISTED).reverse();
  return {
    ...rest,
    latest: latest.map(({ order, day, sales: net, cost, margin }) => ({
      order,
      day,
      sales: net,
      cost: cost.total,
      margin,
      basis: cost.basis,
    })),
    older: sales.length - latest.length,
    ...(next === undefined ? {} : { next }),
    isExciseOn: exciseTerms(book.shop, {}).isOn,
  };
}
