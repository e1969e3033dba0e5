import type { Book } from './book.ts';
import type { SheetName } from './column.ts';
import { currentLogRows } from './currentLogRows.ts';
import type { CellProblem, Row } from './reading/readTable.ts';
import type { TABLES } from './tables.ts';

type RowOf<Key extends keyof typeof TABLES> = Row<(typeof TABLES)[Key]>;

export type OrderRow = RowOf<'orders'>;
export type MoldRow = RowOf<'molds'>;
export type PatternRow = RowOf<'patterns'>;
export type DoseRow = RowOf<'doses'>;
export type MaterialRow = RowOf<'materials'>;
type PlateRow = RowOf<'plates'>;

/** What the pour log says about a mold and pattern, all versions together. */
export interface Evidence {
  readonly good: number;
  readonly poured: number;
  /** Rows of the log that contradict themselves and are left out. */
  readonly uncounted: readonly number[];
}

/** The book arranged for look-ups by name, each table walked once. */
export interface BookIndex {
  readonly book: Book;
  readonly orders: ReadonlyMap<string, OrderRow>;
  readonly molds: ReadonlyMap<string, MoldRow>;
  readonly materials: ReadonlyMap<string, MaterialRow>;
  readonly plates: ReadonlyMap<string, PlateRow>;
  /** Layers of a pattern by version. */
  readonly patterns: ReadonlyMap<string, ReadonlyMap<number, readonly PatternRow[]>>;
  /** Doses of a pattern version, all layers; those with no version under the pattern alone. */
  readonly doses: ReadonlyMap<string, readonly DoseRow[]>;
  readonly evidence: ReadonlyMap<string, Evidence>;
  readonly problems: ReadonlyMap<string, readonly CellProblem[]>;
  /** Answers already worked out from this book, so that rows alike are computed once. */
  readonly remembered: Map<string, unknown>;
}

/** A name as it is looked up: case and outer blanks do not matter. */
export function nameKey(...parts: readonly (string | number | undefined)[]): string {
  return parts
    .map((part) =>
      String(part ?? '')
        .trim()
        .toLowerCase(),
    )
    .join('\n');
}

export function indexBook(book: Book): BookIndex {
  return {
    book,
    orders: byName(book.orders, (row) => row.record.order),
    molds: byName(book.molds, (row) => row.record.mold),
    materials: byName(book.materials, (row) => row.record.material),
    plates: byName(book.plates, (row) => row.record.plate),
    patterns: patternsByVersion(book.patterns),
    doses: grouped(book.doses, ({ record }) => nameKey(record.pattern, record.version)),
    evidence: evidenceByPair(book),
    problems: grouped(book.problems, (problem) => placeKey(problem.sheet, problem.row)),
    remembered: new Map(),
  };
}

/** Problems that the reading of one row of a sheet listed. */
export function problemsAt(
  index: BookIndex,
  sheet: SheetName,
  row: number,
): readonly CellProblem[] {
  return index.problems.get(placeKey(sheet, row)) ?? [];
}

/** Problems of a whole sheet: a column that is not there, a heading that cannot be read. */
export function problemsOfSheet(index: BookIndex, sheet: SheetName): readonly CellProblem[] {
  return [
    ...(index.problems.get(placeKey(sheet, undefined)) ?? []),
    ...problemsAt(index, sheet, 1),
  ];
}

/** Works `make` out once for each key. */
export function remember<Value>(index: BookIndex, key: string, make: () => Value): Value {
  if (!index.remembered.has(key)) index.remembered.set(key, make());
  return index.remembered.get(key) as Value; // each key is made by one caller only
}

function placeKey(sheet: string, row: number | undefined): string {
  return `${sheet}\n${row ?? ''}`;
}

/** The first row of a name stands; a second of the same name is a slip that `findByName` names. */
function byName<R>(rows: readonly R[], name: (row: R) => string | undefined): Map<string, R> {
  const found = new Map<string, R>();
  for (const row of rows) {
    const key = nameKey(name(row));
    if (key !== '' && !found.has(key)) found.set(key, row);
  }
  return found;
}

function grouped<R>(rows: readonly R[], keyOf: (row: R) => string): Map<string, R[]> {
  const groups = new Map<string, R[]>();
  for (const row of rows) {
    const key = keyOf(row);
    const group = groups.get(key);
    if (group) group.push(row);
    else groups.set(key, [row]);
  }
  return groups;
}

function patternsByVersion(rows: readonly PatternRow[]): Map<string, Map<number, PatternRow[]>> {
  const patterns = new Map<string, Map<number, PatternRow[]>>();
  for (const [key, layers] of grouped(rows, ({ record }) => nameKey(record.pattern))) {
    const versions = new Map<number, PatternRow[]>();
    for (const layer of layers) {
      const version = layer.record.version;
      if (version === undefined) continue;
      const others = versions.get(version);
      if (others) others.push(layer);
      else versions.set(version, [layer]);
    }
    patterns.set(key, versions);
  }
  return patterns;
}

function evidenceByPair(book: Book): Map<string, Evidence> {
  const sums = new Map<string, { good: number; poured: number; uncounted: number[] }>();
  for (const { row, record } of currentLogRows(book.pourLog)) {
    const { mold, pattern, poured, good } = record;
    if (mold === undefined || pattern === undefined) continue;
    const key = nameKey(mold, pattern);
    const sum = sums.get(key) ?? { good: 0, poured: 0, uncounted: [] };
    sums.set(key, sum);
    if (poured === undefined || good === undefined || good > poured) sum.uncounted.push(row);
    else {
      sum.good += good;
      sum.poured += poured;
    }
  }
  return sums;
}
