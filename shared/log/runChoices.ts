import type { Book } from '../book/book.ts';
import { nameKey } from '../book/bookIndex.ts';
import { currentLogRows } from '../book/currentLogRows.ts';
import { describe } from '../errors/describe.ts';
import type { Problem } from '../errors/refuse.ts';
import { goodSoFar } from './goodSoFar.ts';

/** Runs of an order that have rows in the log, the last logged first. */
export function loggedRuns(book: Book, order: string): readonly RunChoice[] {
  const runs = new Map<string, { rounds: number; last: number }>();
  for (const { record } of currentLogRows(book.pourLog)) {
    if (record.run === undefined || nameKey(record.order) !== nameKey(order)) continue;
    const { rounds, last } = runs.get(record.run) ?? { rounds: 0, last: 0 };
    runs.delete(record.run);
    runs.set(record.run, { rounds: rounds + 1, last: Math.max(last, record.round ?? 0) });
  }
  return [...runs]
    .map(([run, { rounds, last }]) => ({ run, rounds, nextRound: Math.max(rounds, last) + 1 }))
    .reverse();
}

/** The round that an entry of a run is about when its own number is left blank: the next one. */
export function nextRound(book: Book, order: string, run: string): number {
  const logged = loggedRuns(book, order).find((one) => nameKey(one.run) === nameKey(run));
  return logged?.nextRound ?? 1;
}

/**
 * The id of the next run of an order: its number and a count, `1042-3`. It is higher than every id of this form in the
 * log, corrected rows included, and counts runs that were named otherwise.
 */
export function nextRunId(book: Book, order: string): string {
  const own = book.pourLog.filter(({ record }) => nameKey(record.order) === nameKey(order));
  const runs = [...new Set(own.flatMap(({ record }) => record.run ?? []))];
  const prefix = `${order}-`.toLowerCase();
  const numbers = runs
    .filter((run) => run.toLowerCase().startsWith(prefix))
    .map((run) => run.slice(prefix.length))
    .filter((rest) => /^\d{1,6}$/.test(rest))
    .map(Number);
  return `${order}-${Math.max(runs.length, ...numbers) + 1}`;
}

/** A run id that the log already has for another order. */
export function runOfAnother(book: Book, run: string, order: string): Problem | undefined {
  const row = book.pourLog.find(({ record }) => nameKey(record.run) === nameKey(run));
  const other = row?.record.order;
  if (other === undefined || nameKey(other) === nameKey(order)) return undefined;
  const rule = { kind: 'form', wanted: `a run of order ${order}` } as const;
  return {
    field: 'run',
    text: `${describe({ field: 'run', rule, value: run })}, which is logged for order ${other}`,
  };
}

/**
 * Runs that an entry may belong to, the likeliest first: the one whose sheet lies on the bench, else the run that was
 * logged last while the order is not complete, else a new one.
 * @param onSheet - texts that stand on the sheet *Run sheet*
 */
export function runChoices(
  book: Book,
  order: string,
  onSheet: readonly string[],
): readonly RunChoice[] {
  const fresh = { run: nextRunId(book, order), rounds: 0, nextRound: 1 };
  const logged = loggedRuns(book, order);
  const all = [...logged, fresh];
  const made = all.find(({ run }) => onSheet.includes(run));
  const quantity = book.orders.find(({ record }) => nameKey(record.order) === nameKey(order))
    ?.record.quantity;
  const isComplete = goodSoFar(book, order) >= (quantity ?? 0);
  const first = made ?? (isComplete ? fresh : (logged[0] ?? fresh));
  return [first, ...all.filter((one) => one !== first)];
}

/** A run that may be logged: a new one, or one that already has rows in the log. */
export interface RunChoice {
  readonly run: string;
  readonly rounds: number;
  /** The round that an entry gets when its number is left blank. */
  readonly nextRound: number;
}
