import { updateOverview } from '../money/updateOverview.ts';
import { OVERVIEW } from '../money/writeOverviewTab.ts';
import { findSheet, workbook } from '../platform/workbook.ts';

/** Menu item: writes the sheet *Overview* anew and shows it. */
export function overviewFromMenu(): void {
  const answer = updateOverview();
  if (answer.kind === 'refused') {
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
