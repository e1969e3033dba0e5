/**
 * Simple trigger: adds the menu. It reads nothing, so it also works before the add-on is enabled in the file, when the
 * platform allows no more than a menu (AuthMode.NONE).
 */
export function onOpen(): void {
  SpreadsheetApp.getUi()
    .createMenu('Poursmith')
    .addItem('Open the bench panel', 'openSidebar')
    .addItem('Update the overview', 'overviewFromMenu')
    .addSeparator()
    .addItem('Set up this workbook', 'setUpWorkbook')
    .addItem('Fill with the demo shop', 'fillDemoShop')
    .addItem('Recalculate', 'recalculate')
    .addSeparator()
    .addItem('About and cautions', 'showAbout')
    .addToUi();
}
