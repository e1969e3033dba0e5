import { type TypedLine, type TypedRow, typedRows } from '../../shared/book/layout/typedRow.ts';
import type { PEOPLE } from '../../shared/book/tables/people.ts';

/** What stands in a line, in order. */
const COLUMNS = [
  'person',
  'days',
  'from',
  'to',
  'breakFrom',
  'breakTo',
  'colors',
  'cooks',
  'pours',
  'finishes',
  'notes',
] as const;

// biome-ignore format: one row a line
const LINES: readonly TypedLine<typeof PEOPLE, typeof COLUMNS>[] = [
  ['JB', 'weekdays', '8:00 am', '4:30 pm', '12:00 pm', '12:30 pm', 'yes', 'yes', 'yes', 'yes', 'Opens the shop.'],
  ['KM', 'weekdays', '8:30 am', '4:30 pm', '12:30 pm', '1:00 pm', 'no', 'yes', 'yes', 'yes'],
  ['RT', 'Tuesday', '9:00 am', '2:00 pm', null, null, 'yes', 'no', 'no', 'yes', 'Learns to cook in January.'],
  ['RT', 'Thursday', '9:00 am', '2:00 pm', null, null, 'yes', 'no', 'no', 'yes'],
];

/** Invented people by their initials. */
export function demoPeople(): readonly TypedRow<typeof PEOPLE>[] {
  return typedRows<typeof PEOPLE, typeof COLUMNS>(COLUMNS, LINES);
}
