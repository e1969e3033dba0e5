import { HEADING_COLOR } from '../../shared/book/layout/layoutVersion.ts';

/** The look of heading cells. */
export function styleHeadings(range: GoogleAppsScript.Spreadsheet.Range): void {
  range
    .setBackground(HEADING_COLOR)
    .setFontColor('#000000')
    .setFontWeight('bold')
    .setWrap(true)
    .setVerticalAlignment('middle');
}
