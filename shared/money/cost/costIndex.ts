import type { MoneyBook } from '../../book/book.ts';
import { type BookIndex, indexBook } from '../../book/bookIndex.ts';
import { ledger } from '../stock/ledger.ts';
import { type UnitCost, unitCosts } from '../stock/unitCosts.ts';

/** By `nameKey` of the material; one without a price is not in it. */
export type UnitCosts = ReadonlyMap<string, UnitCost>;

export type SupplyRow = MoneyBook['supplies'][number];

/** A book arranged for look-ups, with what everything costs. */
export interface CostIndex {
  readonly index: BookIndex;
  readonly supplies: readonly SupplyRow[];
  readonly prices: UnitCosts;
}

/** Walks the book once, for the money of any number of its orders. */
export function indexCosts(book: MoneyBook): CostIndex {
  const { supplies, stockMoves, materials } = book;
  const prices = unitCosts(ledger(stockMoves, materials), materials);
  return { index: indexBook(book), supplies, prices };
}
