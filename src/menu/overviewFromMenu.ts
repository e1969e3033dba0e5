import { isRefused } from '../../shared/commands/command.ts';
import { runCommand } from '../commands/runCommand.ts';
import { OVERVIEW } from '../overview/prepareOverview.ts';
import { findSheet, workbook } from '../platform/workbook.ts';

/** Menu item: writes the sheet *Overview* anew and shows it. */
export function overviewFromMenu(): void {
  const answer = runCommand('updateOverview', {});
  if (isRefused(answer)) {
    SpreadsheetApp.getUi().alert(
      OVERVIEW,
      answer.problems.map(({ text }) => text).join(' '),
      SpreadsheetApp.getUi().ButtonSet.OK,
    );
    return;
  }
  const sheet = findSheet(OVERVIEW);
  if (sheet) workbook().setActiveSheet(sheet);
}
