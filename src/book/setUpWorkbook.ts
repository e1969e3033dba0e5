import { setUpReport } from '../../shared/book/layout/setUpReport.ts';
import { withDocumentLock } from '../platform/withDocumentLock.ts';
import { layOutBook } from './layOutBook.ts';

/**
 * Menu item: lays out what the book lacks and says what it did. Run again, it changes nothing.
 * @returns the report
 */
export function setUpWorkbook(): string {
  const report = withDocumentLock(() => setUpReport(layOutBook()));
  // An alert lets go of every lock, so it comes after the writing.
  SpreadsheetApp.getUi().alert('Set up this workbook', report, SpreadsheetApp.getUi().ButtonSet.OK);
  return report;
}
