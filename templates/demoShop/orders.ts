import type { ORDERS } from '../../shared/book/tables/orders.ts';
import type { TradeRow } from '../../shared/book/tradeRow.ts';

/** Invented orders as the book stands on 2026-11-30. */
// biome-ignore format: one row a line
export const DEMO_ORDERS = [
  { order: '1001', date: '2026-10-26', due: '2026-11-09', customer: 'Customer 104', mold: 'Round stick 5 in', pattern: 'Slate over pearl', version: 1, quantity: 150, plate: 'Griddle A', moldsInUse: 2, pourOn: '2026-11-03', firstPour: '9:00 am', priceAgreed: 172.5, status: 'shipped' },
  { order: '1002', date: '2026-10-28', due: '2026-11-12', customer: 'Customer 118', mold: 'Wedge tail 4.5 in', pattern: 'Dusk line', version: 1, quantity: 100, plate: 'Griddle A', moldsInUse: 2, pourOn: '2026-11-05', firstPour: '9:15 am', priceAgreed: 130, status: 'shipped' },
  { order: '1003', date: '2026-11-02', due: '2026-11-18', customer: 'Customer 104', mold: 'Thin worm 6 in', pattern: 'Copper vein', version: 1, quantity: 160, plate: 'Bench plate B', moldsInUse: 2, pourOn: '2026-11-10', firstPour: '9:30 am', priceAgreed: 176, status: 'shipped' },
  { order: '1004', date: '2026-11-04', due: '2026-11-20', customer: 'Customer 131', mold: 'Split minnow 4 in', pattern: 'River stone', version: 1, quantity: 54, plate: 'Bench plate B', moldsInUse: 1, pourOn: '2026-11-13', firstPour: '8:45 am', priceAgreed: 124.2, status: 'packed', notes: 'Pick up on the 1st.' },
  { order: '1005', date: '2026-11-09', due: '2026-12-01', customer: 'Customer 122', mold: 'Two-half stick 5.5 in', pattern: 'Night glass', version: 1, quantity: 44, plate: 'Griddle A', moldsInUse: 2, pourOn: '2026-11-19', firstPour: '10:00 am', priceAgreed: 101.2, status: 'poured' },
  { order: '1006', date: '2026-11-12', due: '2026-12-04', customer: 'Customer 118', mold: 'Round stick 5 in', pattern: 'Dusk line', version: 2, quantity: 90, plate: 'Griddle A', moldsInUse: 2, pourOn: '2026-11-24', firstPour: '9:00 am', priceAgreed: 117, status: 'poured' },
  { order: '1007', date: '2026-11-16', due: '2026-12-08', customer: 'Customer 109', mold: 'Wedge tail 4.5 in', pattern: 'Moss over sand', version: 1, quantity: 60, plate: 'Griddle A', moldsInUse: 2, pourOn: '2026-12-01', firstPour: '1:15 pm', priceAgreed: 72, status: 'planned' },
  { order: '1008', date: '2026-11-18', due: '2026-12-10', customer: 'Customer 140', mold: 'Round stick 5 in', pattern: 'Copper vein', version: 1, quantity: 100, moldsInUse: 2, pourOn: '2026-12-02', firstPour: '9:30 am', priceAgreed: 125, status: 'planned' },
  { order: '1009', date: '2026-11-20', due: '2026-12-11', customer: 'Customer 104', mold: 'Split minnow 4 in', pattern: 'River stone', version: 1, quantity: 36, plate: 'Bench plate B', moldsInUse: 1, pourOn: '2026-12-04', firstPour: '8:45 am', priceAgreed: 86.4, status: 'accepted' },
  { order: '1010', date: '2026-11-23', due: '2026-12-14', customer: 'Customer 122', mold: 'Round stick 5 in', pattern: 'Slate over pearl', quantity: 120, moldsInUse: 2, pourOn: '2026-12-07', firstPour: '9:00 am', priceAgreed: 138, status: 'accepted', notes: 'Same gray as the last lot.' },
  { order: '1011', date: '2026-11-25', due: '2026-12-18', customer: 'Customer 131', mold: 'Thin worm 6 in', pattern: 'Moss over sand', version: 1, quantity: 200, plate: 'Bench plate B', moldsInUse: 2, status: 'canceled', notes: 'Customer took fewer colors.' },
  { order: '1012', date: '2026-11-27', due: '2026-12-16', customer: 'Customer 109', mold: 'Wedge tail 4.5 in', pattern: 'Night glass', quantity: 50, moldsInUse: 2, pourOn: '2026-12-09', firstPour: '10:30 am', status: 'asked' },
] as const satisfies readonly TradeRow<typeof ORDERS>[];
