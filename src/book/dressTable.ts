import type { Column } from '../../shared/book/column.ts';
import type { BookNotes } from '../../shared/book/layout/bookNotes.ts';
import { headingNote } from '../../shared/book/layout/headingNote.ts';
import {
  COMPUTED_COLOR,
  FREEZE_FROM_COLUMNS,
  HEADING_COLOR,
  LAYOUT_VERSION,
} from '../../shared/book/layout/layoutVersion.ts';
import { numberFormat } from '../../shared/book/layout/numberFormat.ts';
import type { UnitName } from '../../shared/units/units.ts';
import { columnRule } from './columnRule.ts';
import type { LaidTable } from './layOutTable.ts';
import { writeMark } from './sheetMark.ts';
import { styleHeadings } from './styleHeadings.ts';

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

interface Dressed {
  readonly column: Column;
  readonly index: number;
  readonly unit?: UnitName | undefined;
  /** What the heading's note says. */
  readonly note: string;
}

/**
 * Formats, notes, widths and drop-downs of a sheet's known columns. Values and unknown columns stay as they are.
 * @param scope every known column, or only those whose headings were written just now
 */
export function dressTable(
  { key, sheet, found, computed, table, added, turned }: LaidTable,
  notes: BookNotes,
  scope: 'all' | 'written',
): void {
  const known = [...found.places, ...computed].map(
    (place: Omit<Dressed, 'note'> & { readonly key: string }): Dressed => ({
      ...place,
      note: headingNote(place.column, place.unit, notes.columns[key][place.key] ?? ''),
    }),
  );
  const written = [...added, ...turned];
  const meant = known.filter(({ column }) => scope === 'all' || written.includes(column));
  for (const run of sideBySide(meant)) dressRun(sheet, run);
  for (const one of meant) dressColumn(sheet, one);
  if (scope === 'written') return;
  sheet.setFrozenRows(1);
  if (Object.keys(table.columns).length >= FREEZE_FROM_COLUMNS) sheet.setFrozenColumns(1);
  writeMark(sheet, key, LAYOUT_VERSION);
}

/** Columns in runs without a gap, since each call to the platform costs time. */
function sideBySide(columns: readonly Dressed[]): readonly (readonly Dressed[])[] {
  const runs: Dressed[][] = [];
  for (const one of [...columns].sort((left, right) => left.index - right.index)) {
    const run = runs[runs.length - 1];
    const before = run?.[run.length - 1];
    if (run && before?.index === one.index - 1) run.push(one);
    else runs.push([one]);
  }
  return runs;
}

function dressRun(sheet: Sheet, run: readonly Dressed[]): void {
  const first = (run[0]?.index ?? 0) + 1;
  const headings = sheet.getRange(1, first, 1, run.length);
  styleHeadings(headings);
  headings.setBackgrounds([
    run.map(({ column }) => (column.kind === 'computed' ? COMPUTED_COLOR : HEADING_COLOR)),
  ]);
  headings.setNotes([run.map(({ note }) => note)]);
  sheet.getRange(2, first, sheet.getMaxRows() - 1, run.length).setVerticalAlignment('top');
}

function dressColumn(sheet: Sheet, { column, index, note }: Dressed): void {
  sheet.setColumnWidth(index + 1, column.width);
  const cells = sheet.getRange(2, index + 1, sheet.getMaxRows() - 1, 1);
  cells.setNumberFormat(numberFormat(column));
  if (column.kind === 'computed' && column.places === undefined) cells.setWrap(true);
  const rule = columnRule(column, note);
  if (rule) cells.setDataValidation(rule);
}
