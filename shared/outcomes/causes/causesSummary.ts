import type { Book } from '../../book/book.ts';
import { indexBook } from '../../book/bookIndex.ts';
import { replacedBy } from '../../book/currentLogRows.ts';
import { badRounds, type NamedRound, namedRound } from './badRounds.ts';
import { type RoundCauses, roundCauses } from './roundCauses.ts';

/** Everything that the view and the printed page of causes show. */
export interface CausesSummary {
  readonly shopName: string;
  /** The last rounds that came out bad, the last first */
  readonly rounds: readonly NamedRound[];
  /** The round that was asked for; absent where none came out bad and none was asked for */
  readonly shown?: RoundCauses;
  /** Row that was asked for, where a correction stands for it */
  readonly insteadOf?: number;
}

/** Rounds to choose from. */
const MOST = 20;

/**
 * Causes of one round, and the bad rounds to choose another from.
 * @param row - of *Pour log*; the last round that came out bad when left out
 * @returns undefined where *Pour log* has no such row
 */
export function causesSummary(book: Book, row?: number): CausesSummary | undefined {
  const bad = badRounds(book);
  const { shopName } = book.shop;
  const rounds = bad.slice(0, MOST).map(namedRound);
  const asked = row === undefined ? bad[0] : book.pourLog.find((one) => one.row === row);
  if (asked === undefined) return row === undefined ? { shopName, rounds } : undefined;
  const later = replacedBy(book.pourLog, asked.row);
  return {
    shopName,
    rounds,
    shown: roundCauses(indexBook(book), later ?? asked),
    ...(later === undefined ? {} : { insteadOf: asked.row }),
  };
}
