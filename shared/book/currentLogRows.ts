import type { Book } from './book.ts';

type LogRows = Book['pourLog'];

/**
 * Rows of the pour log that count, one for each round: a row that a later one corrects gives its place and its time to the
 * correction. Of several corrections of the same row the last counts. A row that names itself, a later row or no row at all
 * replaces nothing.
 * @param pourLog in the order of the sheet
 */
export function currentLogRows(pourLog: LogRows): LogRows {
  if (pourLog.every(({ record }) => record.corrects === undefined)) return pourLog;
  const { first, last } = corrections(pourLog);
  return pourLog.flatMap((one) => {
    if (first.has(one.row)) return [];
    const counted = last.get(one.row);
    if (counted === undefined) return [one];
    const { loggedAt } = one.record;
    const record = loggedAt === undefined ? counted.record : { ...counted.record, loggedAt };
    return [{ row: counted.row, record }];
  });
}

/**
 * The row that stands for a row of the sheet today: its last correction.
 * @returns undefined when nothing corrects it
 */
export function replacedBy(pourLog: LogRows, row: number): LogRows[number] | undefined {
  const { first, last } = corrections(pourLog);
  const counted = last.get(first.get(row) ?? row);
  return counted?.row === row ? undefined : counted;
}

/** For each correcting row the row of the round it is about; for each of those the row that counts. */
function corrections(pourLog: LogRows): {
  readonly first: ReadonlyMap<number, number>;
  readonly last: ReadonlyMap<number, LogRows[number]>;
} {
  const first = new Map<number, number>();
  const last = new Map<number, LogRows[number]>();
  const byEntry = new Map<string, number>();
  for (const one of pourLog) {
    const { entry, corrects } = one.record;
    const old = corrects === undefined ? undefined : byEntry.get(entryKey(corrects));
    if (old !== undefined) {
      first.set(one.row, old);
      last.set(old, one);
    }
    // A row copied on the sheet keeps its entry: the first of them is the one meant.
    if (entry !== undefined && !byEntry.has(entryKey(entry)))
      byEntry.set(entryKey(entry), old ?? one.row);
  }
  return { first, last };
}

function entryKey(entry: string): string {
  return entry.trim().toLowerCase();
}
