import type { BookCells } from '../../shared/book/book.ts';
import type { TableKey } from '../../shared/book/tables.ts';
import type { Context } from '../../shared/commands/command.ts';
import { readChecklist } from '../checklist/readChecklist.ts';
import { wallClock } from '../checklist/wallClock.ts';
import { keptDay } from '../kept/keptDay.ts';
import { keptTimers } from '../kept/keptTimers.ts';
import { readCells, workbook } from '../platform/workbook.ts';
import { RUN_SHEET } from '../runSheet/writeRunSheetTab.ts';

/** The moment a command is decided in, asked of the platform only where the decision asks. */
export function commandContext(cells: (key: TableKey | 'shop') => BookCells['shop']): Context {
  const now = new Date();
  const zone = () => workbook().getSpreadsheetTimeZone();
  return {
    today: () => Utilities.formatDate(now, zone(), 'yyyy-MM-dd'),
    minute: () => Utilities.formatDate(now, zone(), 'yyyy-MM-dd HH:mm'),
    instant: () => now.getTime(),
    secondsSince: (firstDay) => wallClock(firstDay, zone()).toSeconds(now, 0) ?? 0,
    freshToken: () => Utilities.getUuid(),
    selection: () => ({
      sheet: workbook().getActiveSheet().getName(),
      row: workbook().getCurrentCell()?.getRow() ?? 1,
    }),
    cells,
    runSheetTexts: () => readCells(RUN_SHEET).flatMap((row) => row.map(String)),
    checklist: readChecklist,
    followedDay: keptDay,
    timers: keptTimers,
  };
}
