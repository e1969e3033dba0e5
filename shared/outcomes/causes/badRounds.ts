import type { Book } from '../../book/book.ts';
import { currentLogRows } from '../../book/currentLogRows.ts';
import { DEFECT_KEYS, TEAR_KEYS } from '../../book/tables/pourLog.ts';
import type { PourLogRecord } from '../../book/tables.ts';

/** A round of the log as a list names it. */
export interface NamedRound {
  /** Of *Pour log* */
  readonly row: number;
  /** `R-1002 round 1` */
  readonly label: string;
  /** As the log has it; `""` where blank */
  readonly loggedAt: string;
  readonly poured: number;
  readonly good: number;
}

/** Rounds with a bad piece or a joint that gave way, the last first. */
export function badRounds({ pourLog }: Pick<Book, 'pourLog'>): Book['pourLog'] {
  return currentLogRows(pourLog)
    .filter(({ record }) => isBad(record))
    .reverse();
}

/** Whether something of a row came out bad. */
export function isBad(record: PourLogRecord): boolean {
  const { poured, good } = record;
  return (
    (poured !== undefined && good !== undefined && good < poured) ||
    DEFECT_KEYS.some((key) => (record[key] ?? 0) > 0) ||
    (['tearTest', ...TEAR_KEYS] as const).some(
      (key) => record[key] === 'peels clean' || record[key] === 'tears in part',
    )
  );
}

export function namedRound({ row, record }: Book['pourLog'][number]): NamedRound {
  const { run = '', round, loggedAt = '', poured = 0, good = 0 } = record;
  const place = round === undefined ? `row ${row}` : `round ${round}`;
  return { row, label: run === '' ? place : `${run} ${place}`, loggedAt, poured, good };
}
