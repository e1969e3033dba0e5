import { HEADING_COLOR } from '../../shared/book/layout.ts';

type Range = GoogleAppsScript.Spreadsheet.Range;

/** The look of heading cells. */
export function styleHeadings(range: Range, color: string = HEADING_COLOR): void {
  range
    .setBackground(color)
    .setFontColor('#000000')
    .setFontWeight('bold')
    .setWrap(true)
    .setVerticalAlignment('middle');
}
