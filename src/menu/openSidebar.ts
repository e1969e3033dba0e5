import { pageText } from '../platform/pageText.ts';

/** Menu item: opens the bench panel at the right of the sheet. */
export function openSidebar(): void {
  const page = HtmlService.createHtmlOutput(pageText('Sidebar')).setTitle('Poursmith bench');
  SpreadsheetApp.getUi().showSidebar(page);
}
