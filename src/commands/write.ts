import type { PlacedCell, PlacedWrite, placeWrites } from '../../shared/commands/placeWrites.ts';
import type { Refused } from '../../shared/errors/refuse.ts';
import { prepareChecklist } from '../checklist/prepareChecklist.ts';
import { keepDay } from '../kept/keptDay.ts';
import { keepTimers } from '../kept/keptTimers.ts';
import { prepareOverview } from '../overview/prepareOverview.ts';
import { safeText } from '../platform/safeText.ts';
import { findSheet, workbook } from '../platform/workbook.ts';
import { writeRunSheetTab } from '../runSheet/writeRunSheetTab.ts';

type Placed = Exclude<ReturnType<typeof placeWrites>, Refused>[number];

/** Writes once, when everything else that is to be written can be. */
type Ready = () => void;

/**
 * Writes what a decision wants, in its order. Every write is made ready before the first is done, so that a sheet that is not the add-on's,
 * or rows that people added meanwhile, stop all of them.
 * Call it inside the document lock.
 */
export function write(placed: readonly Placed[]): Refused | 'rows were added' | undefined {
  const ready: Ready[] = [];
  for (const one of placed) {
    const made = prepare(one);
    if (typeof made !== 'function') return made;
    ready.push(made);
  }
  for (const now of ready) now();
  return undefined;
}

function prepare(one: Placed): Ready | Refused | 'rows were added' {
  switch (one.kind) {
    case 'cells':
      return prepareCells(one);
    case 'run sheet':
      return () => writeRunSheetTab(one.cells);
    case 'overview':
      return prepareOverview(one.tab);
    case 'checklist':
      return prepareChecklist(one.rows, one.frame);
    case 'followed day':
      return () => keepDay(one.day);
    case 'timers':
      return () => keepTimers(one.timers);
  }
}

function prepareCells({
  sheet: name,
  row,
  column,
  cells,
  below,
}: PlacedWrite): Ready | 'rows were added' {
  const sheet = findSheet(name);
  if (sheet === null) throw new Error(`The sheet ${name} went away meanwhile: try again.`);
  if (below !== undefined && sheet.getLastRow() > below) return 'rows were added';
  return () => {
    const lacking = row + cells.length - 1 - sheet.getMaxRows();
    if (lacking > 0) sheet.insertRowsAfter(sheet.getMaxRows(), lacking);
    const zone = workbook().getSpreadsheetTimeZone();
    sheet
      .getRange(row, column, cells.length, cells[0]?.length ?? 1)
      .setValues(cells.map((line) => line.map((cell) => written(cell, zone))));
  };
}

function written(cell: PlacedCell, zone: string): string | number | Date {
  if (typeof cell !== 'object') return cell;
  return 'day' in cell ? Utilities.parseDate(cell.day, zone, 'yyyy-MM-dd') : safeText(cell.text);
}
