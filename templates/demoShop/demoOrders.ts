import { type TypedLine, type TypedRow, typedRows } from '../../shared/book/layout/typedRow.ts';
import type { ORDERS } from '../../shared/book/tables/orders.ts';

/** What stands in a line, in order. */
const COLUMNS = [
  'order',
  'date',
  'due',
  'customer',
  'mold',
  'pattern',
  'version',
  'quantity',
  'plate',
  'moldsInUse',
  'pourOn',
  'firstPour',
  'priceAgreed',
  'status',
  'notes',
  'rush',
  'discount',
  'shipping',
  'saleKind',
  'exciseStatus',
  'quote',
  'quotedOn',
  'validUntil',
  'acceptedOn',
  'shippedOn',
] as const;

// biome-ignore format: one row a line
const LINES: readonly TypedLine<typeof ORDERS, typeof COLUMNS>[] = [
  ['1001', '2026-10-26', '2026-11-09', 'Customer 104', 'Round stick 5 in', 'Slate over pearl', 1, 150, 'Griddle A', 2, '2026-11-03', '9:00 am', 240, 'shipped', null, null, null, 9.5, 'wholesale', 'taxable', 'Q-1001', '2026-10-26', '2026-11-25', '2026-10-27', '2026-11-07'],
  ['1002', '2026-10-28', '2026-11-12', 'Customer 118', 'Wedge tail 4.5 in', 'Dusk line', 1, 100, 'Griddle A', 2, '2026-11-05', '9:15 am', 158, 'shipped', null, null, 0.05, 14, 'wholesale', 'export', 'Q-1002', '2026-10-28', '2026-11-27', '2026-10-30', '2026-11-11'],
  ['1003', '2026-11-02', '2026-11-18', 'Customer 104', 'Thin worm 6 in', 'Copper vein', 1, 160, 'Bench plate B', 2, '2026-11-10', '9:30 am', 255, 'shipped', null, null, null, 9.5, 'wholesale', 'taxable', 'Q-1003', '2026-11-02', '2026-12-02', '2026-11-03', '2026-11-17'],
  ['1004', '2026-11-04', '2026-11-20', 'Customer 131', 'Split minnow 4 in', 'River stone', 1, 54, 'Bench plate B', 1, '2026-11-13', '8:45 am', 150, 'packed', 'Pick up on the 1st.', null, null, null, 'retail', 'taxable', 'Q-1004', '2026-11-04', '2026-12-04', '2026-11-06'],
  ['1005', '2026-11-09', '2026-12-01', 'Customer 122', 'Two-half stick 5.5 in', 'Night glass', 1, 44, 'Griddle A', 2, '2026-11-19', '10:00 am', 168, 'poured', null, null, null, 8, 'wholesale', 'further manufacture', 'Q-1005', '2026-11-09', '2026-12-09', '2026-11-11'],
  ['1006', '2026-11-12', '2026-12-04', 'Customer 118', 'Round stick 5 in', 'Dusk line', 2, 90, 'Griddle A', 2, '2026-11-24', '9:00 am', 126, 'poured', null, null, 0.05, 14, 'wholesale', 'export', 'Q-1006', '2026-11-12', '2026-12-12', '2026-11-13'],
  ['1007', '2026-11-16', '2026-12-08', 'Customer 109', 'Wedge tail 4.5 in', 'Moss over sand', 1, 60, 'Griddle A', 2, '2026-12-01', '1:15 pm', 171.25, 'planned', null, 'rush', null, 8, 'wholesale', 'taxable', 'Q-1007', '2026-11-16', '2026-12-16', '2026-11-17'],
  ['1008', '2026-11-18', '2026-12-10', 'Customer 140', 'Round stick 5 in', 'Copper vein', 1, 100, null, 2, '2026-12-02', '9:30 am', 180, 'planned', null, null, null, 9.5, 'wholesale', 'exempt', 'Q-1008', '2026-11-18', '2026-12-18', '2026-11-19'],
  ['1009', '2026-11-20', '2026-12-11', 'Customer 104', 'Split minnow 4 in', 'River stone', 1, 36, 'Bench plate B', 1, '2026-12-04', '8:45 am', 144, 'accepted', null, null, null, 9.5, 'wholesale', 'taxable', 'Q-1009', '2026-11-20', '2026-12-20', '2026-11-23'],
  ['1010', '2026-11-23', '2026-12-14', 'Customer 122', 'Round stick 5 in', 'Slate over pearl', null, 120, null, 2, '2026-12-07', '9:00 am', 186, 'accepted', 'Same gray as the last lot.', null, null, 8, 'wholesale', 'taxable', 'Q-1010', '2026-11-23', '2026-12-23', '2026-11-25'],
  ['1011', '2026-11-25', '2026-12-18', 'Customer 131', 'Thin worm 6 in', 'Moss over sand', 1, 200, 'Bench plate B', 2, null, null, null, 'canceled', 'Customer took fewer colors.', null, null, 9.5, 'retail', null, 'Q-1011', '2026-11-25', '2026-12-25'],
  ['1012', '2026-11-27', '2026-12-16', 'Customer 109', 'Wedge tail 4.5 in', 'Night glass', null, 50, null, 2, '2026-12-09', '10:30 am', null, 'asked', null, 'rush', null, 9.5, 'retail'],
];

/** Invented orders as the book stands on 2026-11-30. */
export function demoOrders(): readonly TypedRow<typeof ORDERS>[] {
  return typedRows<typeof ORDERS, typeof COLUMNS>(COLUMNS, LINES);
}
