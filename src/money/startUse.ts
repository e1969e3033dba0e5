import type { MoneyBook } from '../../shared/book/book.ts';
import { MONEY_TABLES } from '../../shared/book/book.ts';
import { nameKey } from '../../shared/book/bookIndex.ts';
import type { RunOfOrder, UseForm } from '../../shared/commands/stockCommands.ts';
import type { Refused } from '../../shared/errors/refuse.ts';
import { unknownOrder } from '../../shared/log/orderToLog.ts';
import { ledger } from '../../shared/money/stock/ledger.ts';
import type { Ledger } from '../../shared/money/stock/ledgerTypes.ts';
import { runUse } from '../../shared/money/stock/runUse.ts';
import { readBookNow } from '../platform/readBookNow.ts';
import { NEEDED_TEXT, readPayload } from '../sidebar/readPayload.ts';

export const RUN_OF_ORDER = { order: NEEDED_TEXT, run: NEEDED_TEXT } as const;

/**
 * Page call: what a logged run takes out of stock by plan, and what was taken out for it already.
 * @param payload `{ order, run }`
 */
export function startUse(payload: unknown): UseForm | Refused {
  const read = readPayload<RunOfOrder>(RUN_OF_ORDER, payload);
  if (read.kind === 'refused') return read;
  const book = readBookNow(MONEY_TABLES);
  return formOfUse(book, ledger(book.stockMoves, book.materials), read.value);
}

/** The use of a run as a page shows it. */
export function formOfUse(book: MoneyBook, stock: Ledger, asked: RunOfOrder): UseForm | Refused {
  const row = book.orders.find(({ record }) => nameKey(record.order) === nameKey(asked.order));
  if (row === undefined) return { kind: 'refused', problems: [unknownOrder(asked.order)] };
  const use = runUse(book, stock, row, asked.run);
  if (use.kind === 'use') return { ...use, kind: 'ok' };
  return { kind: 'refused', problems: use.because.map((text) => ({ field: '', text })) };
}
