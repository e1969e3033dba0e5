import type { TickedRow } from '../../shared/day/checklist/tickedRow.ts';
import type { Refused } from '../../shared/errors/refuse.ts';
import { dayOf } from '../../shared/words/momentText.ts';
import { workbook } from '../platform/workbook.ts';
import { type ChecklistSheet, findChecklist } from './checklistSheet.ts';
import { wallClock } from './wallClock.ts';

/** A line of the sheet, with its planned day. */
export interface ChecklistLine extends TickedRow {
  /** From the first day [s]; absent where the cell holds no time */
  readonly from?: number;
}

/** Everything below the headings, line by line; one read. Blank lines are lines too. */
export function checklistLines(
  { sheet, columns }: ChecklistSheet,
  firstDay: string,
): readonly ChecklistLine[] {
  const rows = sheet.getLastRow() - 1;
  if (rows < 1) return [];
  const clock = wallClock(firstDay, workbook().getSpreadsheetTimeZone());
  const values = sheet.getRange(2, 1, rows, sheet.getLastColumn()).getValues();
  return values.map((cells) => {
    const cell = (key: keyof ChecklistSheet['columns']): unknown => cells[columns[key] - 1];
    const from = clock.toSeconds(cell('from'), 0);
    const at = clock.toSeconds(cell('at'), dayOf(from ?? 0));
    return {
      id: String(cell('id') ?? ''),
      isTicked: cell('done') === true,
      who: String(cell('who') ?? '').trim(),
      ...(from !== undefined && { from }),
      ...(at !== undefined && { at }),
    };
  });
}

/** The ticks as they stand; none where there is no checklist. */
export function readChecklist(firstDay: string): readonly TickedRow[] | Refused {
  const found = findChecklist();
  if (found === undefined) return [];
  if (found.kind === 'refused') return found;
  return checklistLines(found, firstDay).filter(({ id }) => id !== '');
}
