import type { Book } from '../book/book.ts';
import { nameKey } from '../book/bookIndex.ts';
import { currentLogRows, replacedBy } from '../book/currentLogRows.ts';
import type { PourLogRecord } from '../book/tables.ts';
import { type Refused, refuse } from '../errors/refuse.ts';

/** Rows that the form offers for correction. */
const MOST = 12;

/** The last rows of an order that count and carry an entry, the last logged first. */
export function correctable(book: Book, order: string): readonly LoggedEntry[] {
  return currentLogRows(book.pourLog)
    .filter(({ record }) => record.entry && nameKey(record.order) === nameKey(order))
    .slice(-MOST)
    .reverse()
    .map(entryOf);
}

export function entryOf({ row, record }: Book['pourLog'][number]): LoggedEntry {
  const { entry = '', run = '', loggedAt = '', who = '', good = 0, poured = 0, round } = record;
  const numbered = round === undefined ? {} : { round };
  return { entry, row, run, loggedAt, who, good, poured, ...numbered };
}

/** The row that an entry of the log stands in, if it may still be corrected for this order. */
export function rowToCorrect(
  book: Book,
  entry: string,
  order: string,
): { readonly kind: 'row'; readonly row: number; readonly record: PourLogRecord } | Refused {
  const found = book.pourLog.find(({ record }) => nameKey(record.entry) === nameKey(entry));
  if (found === undefined)
    return refuse('', `Pour log has no row with the entry ${entry}: it may have been deleted.`);
  const { row, record } = found;
  if (nameKey(record.order) !== nameKey(order))
    return refuse('', `Row ${row} of Pour log is of order ${record.order ?? ''}, not ${order}.`);
  const later = replacedBy(book.pourLog, row);
  if (later === undefined) return { kind: 'row', row, record };
  return refuse(
    '',
    `Row ${row} of Pour log was corrected by row ${later.row} already: correct that one.`,
  );
}

/** A row of the log that can be corrected. */
export interface LoggedEntry {
  readonly entry: string;
  /** On the sheet *Pour log* */
  readonly row: number;
  readonly run: string;
  readonly round?: number;
  readonly loggedAt: string;
  readonly who: string;
  readonly good: number;
  readonly poured: number;
}
