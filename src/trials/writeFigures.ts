import { trimmed } from '../../shared/book/layout/tableCells.ts';
import { MEASURED_FIGURES } from '../../shared/book/tables/measuredFigures.ts';
import type { MeasuredFigureRecord } from '../../shared/book/tables.ts';
import type { Refused } from '../../shared/errors/refuse.ts';
import type { FigureCell } from '../../shared/trials/figureCells.ts';
import { nextEntry } from '../../shared/trials/journal.ts';
import type { TrialBook } from '../../shared/trials/trialBook.ts';
import { fromEngine } from '../../shared/units/convert.ts';
import { UNITS } from '../../shared/units/units.ts';
import { appendRows } from '../book/appendRows.ts';
import { workbook } from '../platform/workbook.ts';
import { isRefused } from '../sidebar/orderInBook.ts';
import { type PlacedCell, placedCell } from './placedCell.ts';

/** A cell and what it is to hold; engine units, absent is blank. */
export interface FigureWrite {
  readonly cell: FigureCell;
  readonly after?: number | undefined;
  readonly standardError?: number | undefined;
}

/** What the rows of one journal entry share. */
export type EntryFacts = Pick<MeasuredFigureRecord, 'change' | 'of' | 'trials' | 'who'>;

/**
 * Writes figures into their cells, with one journal row each. All cells and the journal are found before anything is
 * written; the journal comes first, so that no cell changes without a way back. Call it inside the document lock.
 */
export function writeFigures(
  book: TrialBook,
  writes: readonly FigureWrite[],
  facts: EntryFacts,
): Refused | undefined {
  const placed: (FigureWrite & { readonly place: PlacedCell })[] = [];
  for (const write of writes) {
    const place = placedCell(book, write.cell);
    if (isRefused(place)) return place;
    placed.push({ ...write, place });
  }
  const shared = { ...facts, entry: nextEntry(book.measuredFigures), date: today() };
  const records = placed.map(({ cell, place, after, standardError }): MeasuredFigureRecord => {
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
  const appended = appendRows(MEASURED_FIGURES, records, book.index.book.shop.units);
  if (appended.kind === 'refused') return appended;
  for (const { place, after } of placed) place.range.setValue(cellNumber(after, place) ?? '');
  return undefined;
}

function cellNumber(value: number | undefined, { unit }: PlacedCell): number | undefined {
  if (value === undefined) return undefined;
  return trimmed(unit ? fromEngine(value, unit) : value);
}

function today(): string {
  const zone = workbook().getSpreadsheetTimeZone();
  return Utilities.formatDate(new Date(), zone, 'yyyy-MM-dd');
}
