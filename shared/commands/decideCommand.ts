import { type BookCells, readBook } from '../book/book.ts';
import type { TableKey } from '../book/tables.ts';
import type { Refused } from '../errors/refuse.ts';
import { type Command, type Context, type Decision, isRefused } from './command.ts';
import { placeWrites } from './placeWrites.ts';

type Placed = Exclude<ReturnType<typeof placeWrites>, Refused>;

/** A decision with the cells of everything that it wants written. */
export interface PlacedDecision extends Omit<Decision<object>, 'writes'> {
  readonly writes: Placed;
}

/**
 * A command's decision from the cells of the sheets that it reads, with each of its writes found on them.
 * @param asked - its payload, read by its declared fields
 */
export function decideCommand(
  command: Command,
  asked: object,
  context: Context,
): PlacedDecision | Refused {
  const keys = [...command.tables, 'shop'] as const;
  const cells = Object.fromEntries(keys.map((key) => [key, context.cells(key)]));
  const book = readBook(command.tables, cells as BookCells<TableKey>); // shop and every table were just set
  const decision = command.decide(asked as never, book as never, context); // the payload was read by its fields, the book by its tables
  if (isRefused(decision)) return decision;
  const writes = placeWrites(decision.writes ?? [], context.cells, book.shop.units);
  return 'kind' in writes ? writes : { ...decision, writes };
}
