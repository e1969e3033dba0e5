import { type RunSheetDraft, TAB_WIDTHS, type TabCell } from './tabTypes.ts';

const BLANK: TabCell = { value: '', style: 'plain' };

/** Adds one row from cells at given columns; the others stay blank. Returns its number. */
export function addRow(
  draft: RunSheetDraft,
  height: number,
  cells: ReadonlyMap<number, TabCell>,
): number {
  draft.rows.push({
    height,
    cells: TAB_WIDTHS.map((_, index) => cells.get(index + 1) ?? BLANK),
  });
  return draft.rows.length;
}
