import type { MoneyBook } from '../../book/book.ts';
import { indexBook } from '../../book/bookIndex.ts';
import { orderUses } from './orderUses.ts';
import { byDue, type OpenNeed } from './shortfall.ts';

/** Orders that are to be poured: those agreed on, or those still asked for as well. */
export type WhichOrders = 'accepted' | 'asked too';

export interface OpenNeeds {
  readonly needs: readonly OpenNeed[];
  /** Open orders, or materials of them, that could not be counted, and why. */
  readonly uncounted: readonly { readonly order: string; readonly text: string }[];
  /** What was taken because Materials does not say. */
  readonly assumptions: readonly string[];
}

/** What every open order takes, in the order they are due. */
export function openNeeds(book: MoneyBook, which: WhichOrders): OpenNeeds {
  const index = indexBook(book);
  const needs: OpenNeed[] = [];
  const uncounted: { order: string; text: string }[] = [];
  const assumptions = new Set<string>();
  const statuses: readonly (string | undefined)[] = ['accepted', 'planned'];
  const open = book.orders.filter(
    ({ record }) =>
      statuses.includes(record.status) ||
      (which === 'asked too' && (record.status === 'asked' || record.status === undefined)),
  );
  for (const row of [...open].sort(byDue)) {
    const order = row.record.order ?? '';
    const found = orderUses(index, row, book.supplies);
    if (found.kind === 'missing')
      for (const { sheet, row: place, text } of found.missing) {
        const where = place === undefined ? sheet : `${sheet} row ${place}`;
        uncounted.push({ order, text: `${where}: ${text}` });
      }
    else {
      needs.push({ order, due: row.record.due, uses: found.uses });
      for (const text of found.gaps) uncounted.push({ order, text });
      for (const text of found.assumptions) assumptions.add(text);
    }
  }
  return { needs, uncounted, assumptions: [...assumptions] };
}
