import type { Book } from '../../shared/book/book.ts';
import type { PourLogRecord } from '../../shared/book/tables.ts';
import { demoBook } from '../../templates/demoShop/demoBook.ts';

/** The invented shop; made once, nothing changes it. */
export const DEMO = demoBook();

/** A good round of three layers in an open mold: top at the target, cups as planned, the next layer a minute and a half on. */
const GOOD_ROUND: PourLogRecord = Object.freeze({
  run: 'R-1',
  round: 1,
  order: '1002',
  mold: 'Wedge tail 4.5 in',
  pattern: 'Dusk line',
  version: 1,
  moldTop: 101,
  pour1: 166,
  pour2: 167,
  pour3: 166,
  gap12: 90,
  gap23: 90,
  poured: 12,
  good: 12,
});

/** The invented shop with these rows alone in its log, from row 2 on. */
export function logOf(...records: readonly PourLogRecord[]): Book {
  return { ...DEMO, pourLog: records.map((record, index) => ({ row: index + 2, record })) };
}

/** The good round with changes. */
export function round(changes: Partial<PourLogRecord>): PourLogRecord {
  return Object.freeze({ ...GOOD_ROUND, ...changes });
}
