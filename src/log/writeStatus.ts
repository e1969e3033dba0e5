import { findColumns } from '../../shared/book/reading/findColumns.ts';
import { type ORDER_STATUSES, ORDERS } from '../../shared/book/tables/orders.ts';
import { readHeadings } from '../book/readHeadings.ts';
import { findSheet } from '../platform/workbook.ts';

/** Writes the status of the order in a row of *Orders*; the row must have been found inside the same lock. */
export function writeStatus(row: number, status: (typeof ORDER_STATUSES)[number]): void {
  const sheet = findSheet(ORDERS.sheet);
  if (sheet === null) return;
  const { places } = findColumns(ORDERS, readHeadings(sheet).shown);
  const place = places.find(({ key }) => key === 'status');
  if (place) sheet.getRange(row, place.index + 1).setValue(status);
}
