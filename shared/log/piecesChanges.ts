import type { Book } from '../book/book.ts';
import { type BookIndex, indexBook, nameKey } from '../book/bookIndex.ts';
import { planPieces } from '../plan/amounts/planPieces.ts';
import { findOrder } from '../plan/facts/findOrder.ts';

const OPEN: readonly (string | undefined)[] = [undefined, 'asked', 'accepted', 'planned'];

/**
 * What an entry of the log changes for next time: pieces to pour for every open order of its mold and pattern, and for the
 * entry's own order as if it were poured again.
 * @param order - the entry's order
 */
export function piecesChanges(before: Book, after: Book, order: string): readonly PiecesChange[] {
  const own = before.orders.find(({ record }) => nameKey(record.order) === nameKey(order))?.record;
  if (own === undefined) return [];
  const pair = nameKey(own.mold, own.pattern);
  const [was, is] = [indexBook(before), indexBook(after)];
  return before.orders.flatMap(({ row, record }) => {
    const isOwn = nameKey(record.order) === nameKey(order);
    const isAlike = nameKey(record.mold, record.pattern) === pair;
    if (!isOwn && !(isAlike && OPEN.includes(record.status))) return [];
    const [old, now] = [piecesOf(was, row), piecesOf(is, row)];
    if (old === undefined || now === undefined) return [];
    const { order: name = '', quantity = 0 } = record;
    return [{ order: name, quantity, before: old, after: now }];
  });
}

/** Undefined when the row lacks something, which its plan says, or when no number of pieces would do. */
function piecesOf(index: BookIndex, rowNumber: number): number | undefined {
  const row = index.book.orders.find((one) => one.row === rowNumber);
  const found = row && findOrder(index, row);
  if (found?.kind !== 'found') return undefined;
  const planned = planPieces(index, found.facts);
  return planned.kind === 'pieces' ? planned.pieces.toPour : undefined;
}

/** Pieces to pour for an open order of the same mold and pattern, before and after the entry. */
export interface PiecesChange {
  readonly order: string;
  readonly quantity: number;
  readonly before: number;
  readonly after: number;
}
