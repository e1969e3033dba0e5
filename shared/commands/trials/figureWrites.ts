import { type Book, readBook, TRIAL_TABLES } from '../../book/book.ts';
import { trimmed } from '../../book/layout/tableCells.ts';
import type { MeasuredFigureRecord } from '../../book/tables.ts';
import type { Refused } from '../../errors/refuse.ts';
import type { FigureCell } from '../../trials/figureCell.ts';
import { findTrials } from '../../trials/findTrials.ts';
import { nextEntry } from '../../trials/readJournal.ts';
import { type TrialBook, trialBook } from '../../trials/trialBook.ts';
import { fromEngine } from '../../units/toEngine.ts';
import { UNITS } from '../../units/units.ts';
import { cellsAfter } from '../cellsAfter.ts';
import { type Context, type Decision, isRefused } from '../command.ts';
import type { FigureChanged } from '../commandTypes.ts';
import { type PlacedWrite, placeWrites } from '../placeWrites.ts';
import type { CellWrite, Write } from '../write.ts';
import { type PlacedFigure, placedFigure } from './placedFigure.ts';

/** A cell and what it is to hold; engine units, absent is blank. */
export interface FigureWrite {
  readonly cell: FigureCell;
  readonly after?: number | undefined;
  readonly standardError?: number | undefined;
}

/** What the rows of one journal entry share. */
export type EntryFacts = Pick<MeasuredFigureRecord, 'change' | 'of' | 'trials' | 'who'>;

/**
 * Figures written into their cells, with one row of *Measured figures* each, and the trials as they stand afterwards. The
 * journal comes first, so that no cell changes without a way back.
 */
export function figureWrites(
  book: TrialBook,
  figures: readonly FigureWrite[],
  facts: EntryFacts,
  context: Context,
): Decision<FigureChanged> | Refused {
  const places: (FigureWrite & { readonly place: PlacedFigure })[] = [];
  for (const figure of figures) {
    const place = placedFigure(book, figure.cell, context.cells);
    if (isRefused(place)) return place;
    places.push({ ...figure, place });
  }
  const shared = { ...facts, entry: nextEntry(book.measuredFigures), date: context.today() };
  const records = places.map(({ cell, place, after, standardError }): MeasuredFigureRecord => {
    const written = (value: number | undefined) => cellNumber(value, place);
    // An error is a span: no offset of a scale belongs to it.
    const factor = place.unit ? UNITS[place.unit].factor : 1;
    return {
      ...shared,
      figure: cell.name,
      before: written(cell.value),
      after: written(after),
      unit: place.unit ? UNITS[place.unit].label : '',
      standardError: standardError === undefined ? undefined : trimmed(standardError / factor),
    };
  });
  const cells = places.map(({ place: { sheet, row, column, unit }, after }): CellWrite => {
    const value = cellNumber(after, { unit }) ?? '';
    return { kind: 'cell', sheet, row, column, value };
  });
  const writes: readonly Write[] = [
    { kind: 'append', table: 'measuredFigures', records },
    ...cells,
  ];
  const trials = trialsAfter(book.index.book, writes, context);
  if (isRefused(trials)) return trials;
  return { kind: 'decided', answer: { kind: 'ok', ...trials, changed: 'now' }, writes };
}

/** What the trials say once the writes are done. */
function trialsAfter({ shop }: Book, writes: readonly Write[], { cells }: Context) {
  const placed = placeWrites(writes, cells, shop.units);
  if ('kind' in placed) return placed;
  const blocks = placed.filter((one): one is PlacedWrite => one.kind === 'cells');
  return findTrials(trialBook(readBook(TRIAL_TABLES, cellsAfter(TRIAL_TABLES, cells, blocks))));
}

function cellNumber(
  value: number | undefined,
  { unit }: Pick<PlacedFigure, 'unit'>,
): number | undefined {
  if (value === undefined) return undefined;
  return trimmed(unit ? fromEngine(value, unit) : value);
}
