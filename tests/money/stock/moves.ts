import type { MaterialRow } from '../../../shared/book/bookIndex.ts';
import type { MaterialRecord } from '../../../shared/book/tables.ts';
import type { MoveRow } from '../../../shared/money/stock/ledgerTypes.ts';

type MoveRecord = MoveRow['record'];

/** Rows of *Stock moves* from row 2 on, one a day of 2026 unless they say otherwise. */
export function moveRows(...records: readonly MoveRecord[]): readonly MoveRow[] {
  return records.map((record, index) =>
    Object.freeze({
      row: index + 2,
      record: Object.freeze({ material: 'Black', date: dayOf(index), ...record }),
    }),
  );
}

/** The day so many days after New Year. */
export function dayOf(days: number): string {
  return new Date(Date.UTC(2026, 0, 1 + days)).toISOString().slice(0, 10);
}

export function bought(amount: number, money: number, more: MoveRecord = {}): MoveRecord {
  return { reason: 'purchase', amount, money, ...more };
}

export function used(amount: number, more: MoveRecord = {}): MoveRecord {
  return { reason: 'used', amount: -amount, ...more };
}

export function counted(amount: number, more: MoveRecord = {}): MoveRecord {
  return { reason: 'counted', amount, ...more };
}

export function materialRows(...records: readonly MaterialRecord[]): readonly MaterialRow[] {
  return records.map((record, index) => ({ row: index + 2, record }));
}

export const BLACK = materialRows({ material: 'Black', packUnit: 'fl oz', packSize: 4 });
