import { findColumns } from '../../shared/book/findColumns.ts';
import { tableCells } from '../../shared/book/tableCells.ts';
import { POUR_LOG } from '../../shared/book/tables/pourLog.ts';
import type { PourLogRecord } from '../../shared/book/tables.ts';
import type { UnitSystem } from '../../shared/units/measures.ts';
import { refuse } from '../../shared/verbs/refuse.ts';
import type { Refused } from '../../shared/verbs/verbs.ts';
import { readHeadings } from '../book/readHeadings.ts';
import { safeText } from '../platform/safeText.ts';
import { findSheet } from '../platform/workbook.ts';

/**
 * Writes one row under the last of the log, each number in the unit of its heading. Call it inside the document lock.
 * A log that lacks a column is refused: what was typed for it would be lost.
 */
export function appendLogRow(
  record: PourLogRecord,
  system: UnitSystem,
): { readonly kind: 'appended'; readonly row: number } | Refused {
  const sheet = findSheet(POUR_LOG.sheet);
  if (sheet === null)
    return refuse('', 'The sheet Pour log is not there: choose Poursmith > Set up this workbook.');
  const { places, missing, unreadable } = findColumns(POUR_LOG, readHeadings(sheet).shown);
  const lacking = [...missing, ...unreadable].map(({ column }) => column.heading);
  if (lacking.length > 0)
    return refuse(
      '',
      `Pour log lacks a readable column for ${lacking.join(', ')}: choose Poursmith > Set up this workbook.`,
    );
  const width = Math.max(...places.map(({ index }) => index + 1));
  const cells = tableCells([record], places, width, system);
  const row = sheet.getLastRow() + 1;
  if (row > sheet.getMaxRows()) sheet.insertRowsAfter(sheet.getMaxRows(), 1);
  sheet
    .getRange(row, 1, 1, width)
    .setValues(
      cells.map((line) => line.map((cell) => (typeof cell === 'string' ? safeText(cell) : cell))),
    );
  return { kind: 'appended', row };
}
