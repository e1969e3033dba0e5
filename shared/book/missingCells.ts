import { describeIn } from '../errors/describeIn.ts';
import { InputError, type InputFacts } from '../errors/InputError.ts';
import type { UnitSystem } from '../units/measures.ts';
import { type BookIndex, nameKey, problemsAt, problemsOfSheet, remember } from './bookIndex.ts';
import type { RecordOf, SheetName, Table } from './column.ts';
import type { Row } from './reading/readTable.ts';

/** What a row still lacks, gathered while the plan's facts are looked up. */
export interface MissingCells {
  readonly index: BookIndex;
  readonly system: UnitSystem;
  readonly missing: Missing[];
}

/** Looks something up once for each key; whoever asks again gets the same answer and the same gaps. */
export function findOnce<Found>(
  gaps: MissingCells,
  key: string,
  find: (own: MissingCells) => Found,
): Found {
  const { found, missing } = remember(gaps.index, key, () => {
    const own: MissingCells = { ...gaps, missing: [] };
    return { found: find(own), missing: own.missing };
  });
  for (const gap of missing) addMissing(gaps, gap);
  return found;
}

/** Notes one gap; a place is named only once. */
export function addMissing(gaps: MissingCells, gap: Missing): void {
  const isKnown = gaps.missing.some(
    (one) => one.sheet === gap.sheet && one.row === gap.row && one.heading === gap.heading,
  );
  if (!isKnown) gaps.missing.push(gap);
}

/** Notes a value that breaks a rule, in the words of every other message. */
export function addRefused(
  gaps: MissingCells,
  place: Omit<Missing, 'text'>,
  facts: InputFacts,
): void {
  addMissing(gaps, { ...place, text: describeIn(new InputError(facts), gaps.system) });
}

/**
 * A cell that the plan cannot do without. When it is blank, refused, or its column is gone, that is noted with the reason
 * the reading of the sheet gave.
 */
export function need<T extends Table, Key extends keyof RecordOf<T> & string>(
  gaps: MissingCells,
  table: T,
  { row, record }: Row<T>,
  key: Key,
): NonNullable<RecordOf<T>[Key]> | undefined {
  const value = record[key];
  if (value !== undefined && value !== null) return value as NonNullable<RecordOf<T>[Key]>; // not undefined, as checked
  const heading = table.columns[key]?.heading ?? key;
  noteAbsent(gaps, table.sheet, row, heading);
  return undefined;
}

/** A cell that may be blank, but not wrong: a refused one is noted, a blank one is undefined. */
export function optional<T extends Table, Key extends keyof RecordOf<T> & string>(
  gaps: MissingCells,
  table: T,
  { row, record }: Row<T>,
  key: Key,
): RecordOf<T>[Key] | undefined {
  const heading = table.columns[key]?.heading ?? key;
  if (record[key] === undefined) noteRefused(gaps, table.sheet, row, heading);
  return record[key];
}

/** The row of a name in another table; a name that is not there is noted where it was typed, one not given was noted before. */
export function findByName<R>(
  gaps: MissingCells,
  rows: ReadonlyMap<string, R>,
  name: string | undefined,
  place: Omit<Missing, 'text'> & { readonly where: SheetName },
): R | undefined {
  if (name === undefined) return undefined;
  const found = rows.get(nameKey(name));
  if (found) return found;
  const { where, ...typed } = place;
  addRefused(gaps, typed, {
    field: typed.heading.toLowerCase(),
    rule: { kind: 'known', where },
    value: name,
  });
  return undefined;
}

function noteAbsent(gaps: MissingCells, sheet: SheetName, row: number, heading: string): void {
  if (noteRefused(gaps, sheet, row, heading)) return;
  const column = problemsOfSheet(gaps.index, sheet).find((one) => one.heading === heading);
  if (column) {
    addMissing(gaps, { sheet, row: 1, heading, text: describeIn(column.error, gaps.system) });
    return;
  }
  addRefused(
    gaps,
    { sheet, row, heading },
    { field: heading.toLowerCase(), rule: { kind: 'given' }, value: '' },
  );
}

function noteRefused(gaps: MissingCells, sheet: SheetName, row: number, heading: string): boolean {
  const refused = problemsAt(gaps.index, sheet, row).find((one) => one.heading === heading);
  if (refused)
    addMissing(gaps, { sheet, row, heading, text: describeIn(refused.error, gaps.system) });
  return refused !== undefined;
}

/** Something the user must mend before there is a plan, and where it stands. */
export interface Missing {
  readonly sheet: string;
  readonly row?: number;
  readonly heading: string;
  /** One sentence: `mold must be listed in Molds, got "Minnow 9"`. */
  readonly text: string;
}
