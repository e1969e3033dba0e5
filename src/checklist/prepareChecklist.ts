import { checklistChange } from '../../shared/day/checklist/checklistChange.ts';
import {
  CHECKLIST_COLUMNS,
  CHECKLIST_KEYS,
  type ChecklistKey,
  checklistFormat,
  checklistHeight,
} from '../../shared/day/checklist/checklistColumns.ts';
import type { ChecklistRow } from '../../shared/day/checklist/checklistRow.ts';
import type { Refused } from '../../shared/errors/refuse.ts';
import type { DayFrame } from '../../shared/words/momentText.ts';
import { protectWithWarning } from '../book/protectWithWarning.ts';
import { safeText } from '../platform/safeText.ts';
import { workbook } from '../platform/workbook.ts';
import { type ChecklistSheet, ensureChecklist } from './checklistSheet.ts';
import { checklistLines } from './readChecklist.ts';
import { wallClock } from './wallClock.ts';

/** Columns that a plan writes, and those that belong to people. */
const PLANNED = ['from', 'text', 'latest', 'person', 'to', 'order', 'id', 'place'] as const;

type Written = string | number | Date;

/**
 * Makes ready to bring the sheet *Checklist* to the lines of a plan. Ticks, their times and names are never written: a line keeps
 * its own while it gets new times, lines are added and taken out, and the sheet is sorted whole.
 */
export function prepareChecklist(
  rows: readonly ChecklistRow[],
  frame: DayFrame,
): (() => void) | Refused {
  const found = ensureChecklist();
  return found.kind === 'refused' ? found : () => writeLines(found, rows, frame);
}

function writeLines(found: ChecklistSheet, rows: readonly ChecklistRow[], frame: DayFrame): void {
  const { sheet, columns } = found;
  const lines = checklistLines(found, frame.firstDay);
  const present = lines.map(({ id, isTicked, from }) => ({
    id,
    isTicked,
    isOver: from !== undefined && from < 0,
  }));
  const { inPlace, removed, added } = checklistChange(present, rows);
  // Lines are added first: the platform refuses to delete the last row that is not frozen.
  if (added.length > 0) growTo(found, lines.length, added.length, frame);
  for (const { first, count } of runsFromBelow(removed)) sheet.deleteRows(first + 2, count);
  const all = [...inPlace, ...added];
  if (all.length === 0) return;
  writePlanned(found, all, { rows, frame });
  const whole = sheet.getRange(2, 1, all.length, sheet.getLastColumn());
  whole.sort({ column: columns.place, ascending: true });
  fitHeights(found, all.length);
  for (const key of PLANNED)
    protectWithWarning(
      sheet,
      sheet.getRange(2, columns[key], all.length, 1),
      `Checklist: ${CHECKLIST_COLUMNS[key].heading} comes from the plan`,
    );
}

/** Lines side by side as one run each, the lowest first, so that those above keep their places. */
function runsFromBelow(lines: readonly number[]): readonly { first: number; count: number }[] {
  const runs: { first: number; count: number }[] = [];
  for (const line of [...lines].sort((one, other) => other - one)) {
    const run = runs[runs.length - 1];
    if (run && run.first === line + 1) {
      run.first = line;
      run.count += 1;
    } else runs.push({ first: line, count: 1 });
  }
  return runs;
}

/** Blank lines behind those that are there, dressed, each with its box. */
function growTo({ sheet, columns }: ChecklistSheet, lines: number, more: number, frame: DayFrame) {
  const lacking = 1 + lines + more - sheet.getMaxRows();
  if (lacking > 0) sheet.insertRowsAfter(sheet.getMaxRows(), lacking);
  for (const key of CHECKLIST_KEYS) {
    const { format, ...looks } = CHECKLIST_COLUMNS[key];
    const range = sheet.getRange(2 + lines, columns[key], more, 1);
    range
      .setNumberFormat(checklistFormat(key, frame.system))
      .setFontSize(10)
      .setVerticalAlignment('middle')
      .setWrap('isWrapped' in looks);
    if (format === 'box') range.insertCheckboxes();
  }
}

function writePlanned(
  { sheet, columns }: ChecklistSheet,
  lines: readonly (ChecklistRow | undefined)[],
  { rows, frame }: { readonly rows: readonly ChecklistRow[]; readonly frame: DayFrame },
): void {
  const clock = wallClock(frame.firstDay, workbook().getSpreadsheetTimeZone());
  const places = new Map(rows.map(({ id }, place) => [id, place + 1]));
  for (const key of PLANNED) {
    const range = sheet.getRange(2, columns[key], lines.length, 1);
    // A ticked line that is no longer planned keeps what it says.
    const old = lines.includes(undefined) ? range.getValues() : [];
    range.setValues(
      lines.map((row, line) => [
        row === undefined
          ? kept(key, old[line]?.[0])
          : cellOf(row, key, { toDate: clock.toDate, place: places.get(row.id) ?? 0 }),
      ]),
    );
  }
}

function kept(key: ChecklistKey, value: unknown): Written {
  if (key === 'place') return 0;
  return typeof value === 'string' ? safeText(value) : (value as Written); // what a cell gave
}

function cellOf(
  row: ChecklistRow,
  key: (typeof PLANNED)[number],
  { toDate, place }: { readonly toDate: (seconds: number) => Date; readonly place: number },
): Written {
  if (key === 'place') return place;
  const value = row[key];
  if (value === undefined) return '';
  return typeof value === 'number' ? toDate(value) : safeText(value);
}

/** Heights do not move when lines do; each run of equal ones is one call. */
function fitHeights({ sheet, columns }: ChecklistSheet, lines: number): void {
  const texts = sheet.getRange(2, columns.text, lines, 1).getValues();
  const heights = texts.map(([text]) => checklistHeight(String(text)));
  let start = 0;
  heights.forEach((height, line) => {
    if (heights[line + 1] === height) return;
    sheet.setRowHeights(2 + start, line + 1 - start, height);
    start = line + 1;
  });
}
