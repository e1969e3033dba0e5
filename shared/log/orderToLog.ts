import type { Book } from '../book/book.ts';
import { nameKey, type OrderRow } from '../book/bookIndex.ts';
import { type PourLogRecord, TABLES } from '../book/tables.ts';
import { describe } from '../errors/describe.ts';
import type { Problem } from '../errors/refuse.ts';

/** What the log takes over from the order that was poured. */
export interface OrderToLog {
  readonly kind: 'order';
  readonly row: OrderRow;
  readonly order: string;
  readonly mold: string;
  readonly pattern: string;
  readonly version: number;
  readonly quantity: number;
  /** Names of the layers as poured, first at the bottom. */
  readonly layers: readonly string[];
}

/**
 * Finds an order by its number. What came out can be logged even when a plan can no longer be made.
 * @param logged - a row of the log to correct: its mold, pattern and version stand, whatever the order says by now
 */
export function orderToLog(
  book: Book,
  order: string,
  logged: Pick<PourLogRecord, 'mold' | 'pattern' | 'version'> = {},
): OrderToLog | { readonly kind: 'refused'; readonly problems: readonly Problem[] } {
  const row = book.orders.find(({ record }) => nameKey(record.order) === nameKey(order));
  if (row === undefined) return { kind: 'refused', problems: [unknownOrder(order)] };
  const { quantity } = row.record;
  const { mold = row.record.mold, pattern = row.record.pattern } = logged;
  const needed = ['mold', 'pattern', 'quantity'] as const;
  if (mold === undefined || pattern === undefined || quantity === undefined)
    return {
      kind: 'refused',
      problems: needed
        .filter((key) => row.record[key] === undefined)
        .map((key) => ({ field: '', text: mustBeGiven(row.row, key) })),
    };
  const layersOf = book.patterns.filter(
    ({ record }) => nameKey(record.pattern) === nameKey(pattern),
  );
  const newest = Math.max(1, ...layersOf.map(({ record }) => record.version ?? 1));
  const version = logged.version ?? row.record.version ?? newest;
  const layers = layersOf
    .filter(({ record }) => record.version === version)
    .sort((one, other) => (one.record.layerOrder ?? 0) - (other.record.layerOrder ?? 0))
    .map(({ record }, index) => record.layer ?? `layer ${index + 1}`);
  const name = row.record.order ?? order;
  return { kind: 'order', row, order: name, mold, pattern, version, quantity, layers };
}

/** An order number that no row of *Orders* has. */
export function unknownOrder(order: string): Problem {
  const rule = { kind: 'known', where: 'Orders' } as const;
  return { field: 'order', text: describe({ field: 'order', rule, value: order }) };
}

function mustBeGiven(row: number, key: 'mold' | 'pattern' | 'quantity'): string {
  const field = TABLES.orders.columns[key].heading.toLowerCase();
  return `In Orders, row ${row}: ${describe({ field, rule: { kind: 'given' }, value: '' })}`;
}
