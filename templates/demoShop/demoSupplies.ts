import { type TypedLine, type TypedRow, typedRows } from '../../shared/book/layout/typedRow.ts';
import type { SUPPLIES } from '../../shared/book/tables/supplies.ts';

/** What stands in a line, in order. */
const COLUMNS = ['mold', 'material', 'amount', 'per', 'notes'] as const;

// biome-ignore format: one row a line
const LINES: readonly TypedLine<typeof SUPPLIES, typeof COLUMNS>[] = [
  [null, 'Zip bag, 4 x 6 in', 1, 'pack'],
  [null, 'Bag label', 1, 'pack'],
  [null, 'Bag label', 1, 'order', 'On the box.'],
  ['Split minnow 4 in', 'Worm hook, size 4', 1, 'piece', 'Threaded in after demolding.'],
  ['Two-half stick 5.5 in', 'Nail weight, 1/16 oz', 1, 'piece'],
];

/** Invented supplies, each in the material's pack unit. */
export function demoSupplies(): readonly TypedRow<typeof SUPPLIES>[] {
  return typedRows<typeof SUPPLIES, typeof COLUMNS>(COLUMNS, LINES);
}
