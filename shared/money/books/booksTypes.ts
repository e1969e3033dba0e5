import type { CurrencyCode } from '../../book/currencies.ts';
import type { Missing } from '../../book/missingCells.ts';
import type { ExciseLine } from '../excise/exciseLine.ts';
import type { ExciseQuarter, ExciseSums } from '../excise/exciseQuarters.ts';

/**
 * Where a cost comes from: `posted` is stock used for the order with the plan's work; `partly posted` takes what was not
 * posted from the plan; `planned` is the plan alone; `stock only` has no plan, so that work, electricity and overhead lack;
 * `unknown` has neither.
 */
export type CostBasis = 'posted' | 'partly posted' | 'planned' | 'stock only' | 'unknown';

/** What an order cost to make, in smallest units; `total` is the sum of the other three exactly. */
export interface CostOfGoods {
  readonly basis: CostBasis;
  /** Used and scrapped for the order, at the ledger's cost. */
  readonly stock: number;
  /** Materials that the plan takes and nobody posted, at today's prices. */
  readonly unposted: number;
  /** Work, electricity, wear and overhead of the plan. */
  readonly making: number;
  readonly total: number;
}

/** One order that was shipped; amounts in smallest units. */
export interface Sale {
  readonly order: string;
  /** On the sheet *Orders*. */
  readonly row: number;
  readonly customer: string;
  /** Shipped on, `yyyy-mm-dd`. */
  readonly day: string;
  /** `yyyy-mm` */
  readonly month: string;
  readonly mold: string;
  readonly pattern: string;
  readonly pieces?: number;
  /** Price agreed: excise inside it is in it. */
  readonly goods: number;
  readonly excise: ExciseLine;
  readonly shipping: number;
  readonly salesTax: number;
  /** What the customer owes: goods + excise added + shipping + sales tax. */
  readonly total: number;
  /** Goods less the excise inside them; shipping and taxes pass through. */
  readonly sales: number;
  readonly cost: CostOfGoods;
  /** Sales less cost. */
  readonly margin: number;
}

/** Sums over a time, in smallest units. */
export interface MoneySums {
  readonly orders: number;
  readonly sales: number;
  readonly costOfGoods: number;
  readonly margin: number;
  readonly exciseBase: number;
  readonly exciseTax: number;
}

/** One closed month beside what its orders say now. */
export interface SinceClosing {
  readonly closedOn: string;
  readonly who: string;
  readonly stockValue: number;
  /** Now less frozen. */
  readonly change: Omit<MoneySums, 'orders'>;
  /** Orders that are not as they were; undefined where the row does not list them. */
  readonly orders?: readonly string[];
}

export interface MonthFigures extends MoneySums {
  /** `yyyy-mm` */
  readonly month: string;
  readonly state: 'open' | 'closed';
  /** Only of a closed month: its figures above are the frozen ones. */
  readonly since?: SinceClosing;
  /** What left stock in the month for no order: lost in counts, scrapped, or dearer than was reckoned. */
  readonly otherStock: number;
}

/** Months added up; with `corrections` they are what the orders of the year say now. */
export interface YearFigures extends MoneySums {
  readonly year: number;
  /** Changes of its closed months since they were closed. */
  readonly corrections: Omit<MoneySums, 'orders'>;
}

/** What one order still owes, or has too much; smallest units. */
export interface OpenAmount {
  readonly order: string;
  readonly customer: string;
  readonly total: number;
  readonly paid: number;
  /** Total less paid; below 0 is overpaid. */
  readonly open: number;
  /** Days since the sale. */
  readonly days: number;
}

/** Ages in days since the sale; the last has no end. */
export const AGES = ['0-30', '31-60', '61-90', 'over 90'] as const;
export type Age = (typeof AGES)[number];

export interface Receivable {
  /** As of this day. */
  readonly day: string;
  /** Shipped and not paid in full, oldest first. */
  readonly open: readonly OpenAmount[];
  readonly byAge: Readonly<Record<Age, number>>;
  /** Sum of `open`. */
  readonly total: number;
  /** Shipped and paid beyond what is owed; `open` is below 0. */
  readonly overpaid: readonly OpenAmount[];
  /** Paid on orders that are not shipped yet. */
  readonly held: readonly { readonly order: string; readonly paid: number }[];
  readonly heldTotal: number;
}

export interface Books {
  readonly currency: CurrencyCode;
  /** The day they are as of, `yyyy-mm-dd`. */
  readonly day: string;
  /** By day, then by row. */
  readonly sales: readonly Sale[];
  readonly months: readonly MonthFigures[];
  readonly years: readonly YearFigures[];
  readonly quarters: readonly ExciseQuarter[];
  readonly exciseYears: readonly (ExciseSums & { readonly year: number })[];
  readonly receivable: Receivable;
  readonly stockValue: number;
  /** Rows that are not in the books, or not as they should be. */
  readonly problems: readonly Missing[];
  /** What was taken to be so because the book does not say, in sentences. */
  readonly assumptions: readonly string[];
}
