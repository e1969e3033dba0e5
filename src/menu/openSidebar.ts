/** Menu item: opens the bench panel at the right of the sheet. */
export function openSidebar(): void {
  const page = HtmlService.createHtmlOutputFromFile('Sidebar').setTitle('Poursmith bench');
  SpreadsheetApp.getUi().showSidebar(page);
}
