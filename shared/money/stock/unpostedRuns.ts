import type { MoneyBook } from '../../book/book.ts';
import { nameKey } from '../../book/bookIndex.ts';
import { currentLogRows } from '../../book/currentLogRows.ts';
import type { Ledger } from './ledgerTypes.ts';

/** A run of the pour log. */
export interface LoggedRun {
  readonly order: string;
  readonly run: string;
}

/** Runs that were poured and of which nothing was taken out of stock yet, the last logged first. */
export function unpostedRuns(
  pourLog: MoneyBook['pourLog'],
  { moves }: Pick<Ledger, 'moves'>,
): readonly LoggedRun[] {
  const posted = new Set(
    moves.filter(({ reason }) => reason === 'used').map(({ run }) => nameKey(run)),
  );
  const runs = new Map<string, LoggedRun>();
  for (const { record } of currentLogRows(pourLog)) {
    const { order, run } = record;
    if (order === undefined || run === undefined || posted.has(nameKey(run))) continue;
    runs.set(nameKey(order, run), { order, run });
  }
  return [...runs.values()].reverse();
}
