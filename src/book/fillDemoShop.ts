import { setUpReport } from '../../shared/book/layout/setUpReport.ts';
import { withDocumentLock } from '../platform/withDocumentLock.ts';
import { fillEmptyBook } from './fillEmptyBook.ts';
import { filledSheet } from './filledSheet.ts';
import { layOutBook } from './layOutBook.ts';

/**
 * Menu item: fills an empty book with the invented shop, setting the workbook up first where needed.
 * @returns what it did, or one sentence why it did nothing
 */
export function fillDemoShop(): string {
  const report = withDocumentLock(fillWhenEmpty);
  // An alert lets go of every lock, so it comes after the writing.
  const ui = SpreadsheetApp.getUi();
  ui.alert('Fill with the demo shop', report, ui.ButtonSet.OK);
  return report;
}

function fillWhenEmpty(): string {
  const filled = filledSheet();
  if (filled !== undefined)
    return `Nothing was changed: the demo shop only goes into an empty book, and ${filled} already has rows.`;
  const changes = layOutBook();
  const count = fillEmptyBook();
  const done = `Filled the book with an invented shop: ${count} rows.`;
  return changes.length === 0 ? done : `${setUpReport(changes)} ${done}`;
}
