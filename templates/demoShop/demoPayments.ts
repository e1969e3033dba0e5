import { type TypedLine, type TypedRow, typedRows } from '../../shared/book/layout/typedRow.ts';
import type { PAYMENTS } from '../../shared/book/tables/payments.ts';

/** What stands in a line, in order. */
const COLUMNS = ['entry', 'date', 'order', 'kind', 'money', 'method', 'notes'] as const;

// biome-ignore format: one row a line
const LINES: readonly TypedLine<typeof PAYMENTS, typeof COLUMNS>[] = [
  ['P-01', '2026-10-27', '1001', 'deposit', 124.75, 'card'],
  ['P-02', '2026-10-30', '1002', 'deposit', 86, 'transfer'],
  ['P-03', '2026-11-03', '1003', 'deposit', 132.25, 'card'],
  ['P-04', '2026-11-06', '1004', 'deposit', 79.5, 'cash'],
  ['P-05', '2026-11-09', '1001', 'payment', 124.75, 'card'],
  ['P-06', '2026-11-11', '1005', 'deposit', 88, 'check'],
  ['P-07', '2026-11-13', '1006', 'deposit', 70, 'transfer'],
  ['P-08', '2026-11-17', '1007', 'deposit', 89.6, 'card'],
  ['P-09', '2026-11-19', '1008', 'deposit', 94.75, 'check'],
  ['P-10', '2026-11-20', '1002', 'payment', 90, 'transfer', 'Rounded up by the customer.'],
  ['P-11', '2026-11-23', '1009', 'deposit', 76.75, 'card'],
  ['P-12', '2026-11-25', '1011', 'deposit', 60, 'card'],
  ['P-13', '2026-11-27', '1011', 'refund', 60, 'card', 'Order canceled.'],
];

/** Invented payments; money in the workbook's currency. */
export function demoPayments(): readonly TypedRow<typeof PAYMENTS>[] {
  return typedRows<typeof PAYMENTS, typeof COLUMNS>(COLUMNS, LINES);
}
