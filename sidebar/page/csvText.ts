import { csvFormatRow } from 'd3-dsv';
import type { ExportTable } from '../../shared/money/books/exportTable.ts';

/** A spreadsheet program could run a text that starts like this as a formula, line breaks and all. */
const FORMULA_START = /^[=+\-@\t\r\n]/;

/** Tells spreadsheet programs that the file is UTF-8; without it many read it in the alphabet of the computer. */
const BYTE_ORDER_MARK = '\ufeff';

/**
 * A table as a CSV file: commas, lines that end in CR LF, quotes doubled, UTF-8 with a byte order mark.
 *
 * A text that a spreadsheet program could run as a formula gets a leading apostrophe; numbers stay as they are, negative
 * ones too.
 * @source RFC4180
 */
export function csvText({ headings, rows }: ExportTable): string {
  const lines = [headings, ...rows].map((row) => `${csvFormatRow(row.map(cellText))}\r\n`);
  return `${BYTE_ORDER_MARK}${lines.join('')}`;
}

function cellText(cell: string | number): string {
  return typeof cell === 'string' && FORMULA_START.test(cell) ? `'${cell}` : String(cell);
}
