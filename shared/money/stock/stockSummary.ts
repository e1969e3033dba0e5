import type { MoneyBook } from '../../book/book.ts';
import type { CurrencyCode } from '../../book/currencies.ts';
import type { Missing } from '../../book/missingCells.ts';
import type { PackUnit } from '../packAmount.ts';
import { toMinor } from '../toMinor.ts';
import { ledger } from './ledger.ts';
import type { MaterialStock } from './ledgerTypes.ts';
import { openNeeds } from './openNeeds.ts';
import { type PurchaseList, purchaseList } from './purchaseList.ts';
import { type Supply, shortfall } from './shortfall.ts';
import { stockProblems } from './stockProblems.ts';
import { lotValues, stockValues } from './stockValues.ts';
import { type LoggedRun, unpostedRuns } from './unpostedRuns.ts';

/** One material on hand; money in smallest units. */
export interface StockLine {
  readonly material: string;
  readonly unit?: PackUnit;
  readonly onHand: number;
  readonly value: number;
  /** For one pack unit, in the currency, unrounded: a rate. */
  readonly average?: number;
  readonly reorderLevel?: number;
  /** On hand is at or below the reorder point. */
  readonly isLow: boolean;
  readonly negative?: MaterialStock['negative'];
  readonly lots: readonly { readonly lot: string; readonly left: number; readonly value: number }[];
  /** The last count that did not find what was expected. */
  readonly lastDifference?: {
    readonly row: number;
    readonly date: string;
    readonly expected: number;
    readonly counted: number;
    readonly value: number;
  };
}

export interface StockSummary {
  readonly currency: CurrencyCode;
  readonly total: number;
  readonly lines: readonly StockLine[];
  readonly purchases: PurchaseList;
  readonly uncounted: readonly { readonly order: string; readonly text: string }[];
  readonly assumptions: readonly string[];
  /** Rows to mend, in the order they came up, no more than {@link MOST_PROBLEMS}. */
  readonly problems: readonly Missing[];
  /** All of them. */
  readonly problemCount: number;
  /** Runs of which nothing was taken out yet, the last logged first, no more than {@link MOST_RUNS}. */
  readonly unposted: readonly LoggedRun[];
}

/** A page lists no more than these. */
const MOST_PROBLEMS = 100;
const MOST_RUNS = 20;

/** Everything that the stock view, the purchase list and the sheet functions show of a book. */
export function stockSummary(book: MoneyBook): StockSummary {
  const { currency } = book.shop;
  const stock = ledger(book.stockMoves, book.materials);
  const { needs, uncounted, assumptions } = openNeeds(book, 'accepted');
  const supplies = shortfall(needs, stock, book.materials);
  const { total, values } = stockValues(stock, currency);
  const byKey = new Map(supplies.map((supply) => [supply.key, supply]));
  const lines = [...stock.stocks.values()]
    .filter(({ moveCount }) => moveCount > 0)
    .map((one) => lineOf(one, values.get(one.key) ?? 0, byKey.get(one.key), currency));
  const problems = stockProblems(stock, book);
  return {
    currency,
    total,
    lines,
    purchases: purchaseList(supplies, currency),
    uncounted,
    assumptions,
    problems: problems.slice(0, MOST_PROBLEMS),
    problemCount: problems.length,
    unposted: unpostedRuns(book.pourLog, stock).slice(0, MOST_RUNS),
  };
}

function lineOf(
  stock: MaterialStock,
  value: number,
  supply: Supply | undefined,
  currency: CurrencyCode,
): StockLine {
  const { material, unit, onHand, average, negative, counts } = stock;
  const level = supply?.reorderLevel;
  const off = counts.filter(({ difference }) => difference !== 0).pop();
  const minor = lotValues(stock, currency);
  return {
    material,
    ...(unit === undefined ? {} : { unit }),
    onHand,
    value,
    ...(average === undefined ? {} : { average }),
    ...(level === undefined ? {} : { reorderLevel: level }),
    isLow: level !== undefined && onHand <= level,
    ...(negative === undefined ? {} : { negative }),
    lots: stock.lots.map(({ lot, left }, index) => ({ lot, left, value: minor[index] ?? 0 })),
    ...(off === undefined
      ? {}
      : {
          lastDifference: {
            row: off.row,
            date: off.date,
            expected: off.expected,
            counted: off.counted,
            value: toMinor(off.value, currency, 'difference'),
          },
        }),
  };
}
