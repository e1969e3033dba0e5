import type { Book } from '../book/book.ts';

type LogRows = Book['pourLog'];

/**
 * Rows of the pour log that count: those that no later row corrects. Of several rows that correct the same one the last
 * counts. A row that names itself, a later row or no row at all replaces nothing.
 * @param pourLog in the order of the sheet
 */
export function countedRows(pourLog: LogRows): LogRows {
  const replaced = replacedRows(pourLog);
  return replaced.size === 0 ? pourLog : pourLog.filter(({ row }) => !replaced.has(row));
}

/** Rows of the sheet that a later row replaces, and the last row that does. */
export function replacedRows(pourLog: LogRows): ReadonlyMap<number, number> {
  const replaced = new Map<number, number>();
  if (pourLog.every(({ record }) => record.corrects === undefined)) return replaced;
  const standing = new Map<string, readonly number[]>();
  for (const { row, record } of pourLog) {
    const old = record.corrects === undefined ? undefined : entryKey(record.corrects);
    const rows = (old !== undefined && standing.get(old)) || [];
    for (const one of rows) replaced.set(one, row);
    // The next correction of the same entry replaces this one too.
    if (old !== undefined && rows.length > 0) standing.set(old, [...rows, row]);
    if (record.entry === undefined) continue;
    const own = entryKey(record.entry);
    standing.set(own, [...(standing.get(own) ?? []), row]);
  }
  return replaced;
}

function entryKey(entry: string): string {
  return entry.trim().toLowerCase();
}
