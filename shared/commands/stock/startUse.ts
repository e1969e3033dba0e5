import { MONEY_TABLES, type MoneyBook } from '../../book/book.ts';
import type { Refused } from '../../errors/refuse.ts';
import { ledger } from '../../money/stock/ledger.ts';
import type { Ledger } from '../../money/stock/ledgerTypes.ts';
import { runUse } from '../../money/stock/runUse.ts';
import { isRefused, readCommand } from '../command.ts';
import { orderInBook } from '../orderInBook.ts';
import { NEEDED_TEXT } from '../readPayload.ts';
import type { RunOfOrder, UseForm } from '../stockCommands.ts';

export const RUN_OF_ORDER = { order: NEEDED_TEXT, run: NEEDED_TEXT } as const;

/** What a logged run takes out of stock by plan, and what was taken out for it already. */
export const startUse = readCommand<'startUse', (typeof MONEY_TABLES)[number]>({
  payload: RUN_OF_ORDER,
  tables: MONEY_TABLES,
  answer: (asked, book) => formOfUse(book, ledger(book.stockMoves, book.materials), asked),
});

/** The use of a run as a page shows it. */
export function formOfUse(book: MoneyBook, stock: Ledger, asked: RunOfOrder): UseForm | Refused {
  const row = orderInBook(book, asked.order);
  if (isRefused(row)) return row;
  const use = runUse(book, stock, row, asked.run);
  if (use.kind === 'use') return { ...use, kind: 'ok' };
  return { kind: 'refused', problems: use.because.map((text) => ({ field: '', text })) };
}
