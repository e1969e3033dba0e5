import { nameKey } from '../book/bookIndex.ts';
import { addRefused, type MissingCells, need, optional } from '../book/missingCells.ts';
import { TABLES } from '../book/tables.ts';
import { findUnit } from '../units/findUnit.ts';
import { toEngine } from '../units/toEngine.ts';
import { FIGURE_PARTS, type FigureName } from './figureCell.ts';
import { figureLimits } from './figureLimits.ts';
import type { FigureKey } from './proposal.ts';
import type { MeasuredFigureRow, TrialBook } from './trialBook.ts';

/** A change of one cell, engine units; absent is blank. */
export interface CellChange {
  readonly name: FigureName;
  readonly before?: number;
  readonly after?: number;
}

/** Cells that took a measured figure together. */
export interface Adoption {
  readonly entry: string;
  readonly figure: FigureKey;
  /** As the journal writes it; `""` for the shop */
  readonly of: string;
  readonly trials: string;
  readonly date?: string;
  readonly changes: readonly CellChange[];
}

/** Figures that are in use by the journal, for each figure and what it is of; the last of a list is the one that can be taken back. */
export type Adoptions = ReadonlyMap<string, readonly Adoption[]>;

export function adoptionKey(figure: FigureKey, of: string): string {
  return nameKey(figure, of);
}

/** What the journal says was put in use and not taken back since. A row that cannot be read is noted and left out. */
export function readJournal(book: TrialBook, gaps: MissingCells): Adoptions {
  const stacks = new Map<string, Adoption[]>();
  const taken = new Set<string>();
  for (const row of book.measuredFigures) {
    const read = journalRow(gaps, row);
    if (read === undefined) continue;
    const { entry, figure, of, change } = read;
    const key = adoptionKey(figure, of);
    const stack = stacks.get(key) ?? [];
    stacks.set(key, stack);
    if (read.kind === 'taken back') {
      // All rows of one entry take back one adoption.
      if (!taken.has(nameKey(entry))) stack.pop();
      taken.add(nameKey(entry));
      continue;
    }
    const last = stack[stack.length - 1];
    if (last && nameKey(last.entry) === nameKey(entry))
      stack[stack.length - 1] = { ...last, changes: [...last.changes, change] };
    else {
      const { trials, date } = read;
      stack.push({ entry, figure, of, trials, ...(date ? { date } : {}), changes: [change] });
    }
  }
  return stacks;
}

/** The entry after the last one of the journal: `M-1`, `M-2`. */
export function nextEntry(rows: readonly MeasuredFigureRow[]): string {
  const numbers = rows.map(({ record }) =>
    Number(/^M-(\d{1,9})$/.exec(record.entry ?? '')?.[1] ?? 0),
  );
  return `M-${Math.max(0, ...numbers) + 1}`;
}

function journalRow(gaps: MissingCells, row: MeasuredFigureRow) {
  const table = TABLES.measuredFigures;
  const entry = need(gaps, table, row, 'entry');
  const kind = need(gaps, table, row, 'change');
  const name = need(gaps, table, row, 'figure');
  const of = optional(gaps, table, row, 'of') ?? '';
  const before = optional(gaps, table, row, 'before');
  const after = optional(gaps, table, row, 'after');
  const { trials = '', date = '', unit: label = '' } = row.record;
  if (entry === undefined || kind === undefined || name === undefined) return undefined;
  const figure = figureOf(name);
  const { unit: usual } = figureLimits(name, gaps.system);
  const unit = usual && findUnit(label, usual);
  if (figure === undefined || (usual !== undefined && unit === undefined)) {
    const place = { sheet: table.sheet, row: row.row, heading: table.columns.unit.heading };
    const rule = { kind: 'form', wanted: 'a unit of this figure' } as const;
    addRefused(gaps, place, { field: 'unit', rule, value: label });
    return undefined;
  }
  const engine = (value: number) => (unit ? toEngine(value, unit) : value);
  const change: CellChange = {
    name,
    ...(before === undefined ? {} : { before: engine(before) }),
    ...(after === undefined ? {} : { after: engine(after) }),
  };
  return { entry, kind, figure, of, trials, date, change };
}

function figureOf(name: FigureName): FigureKey | undefined {
  const keys = Object.keys(FIGURE_PARTS) as FigureKey[]; // keys of the one table of figures
  return keys.find((key) => FIGURE_PARTS[key].includes(name));
}
