import { workbook } from './workbook.ts';

/** The day it is now in the workbook's zone, `yyyy-mm-dd`. */
export function today(): string {
  return Utilities.formatDate(new Date(), workbook().getSpreadsheetTimeZone(), 'yyyy-MM-dd');
}
