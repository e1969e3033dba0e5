import type { Column, SheetName } from '../../shared/book/column.ts';
import { columnLetters } from '../../shared/book/layout/ordersFormula.ts';
import { findColumns } from '../../shared/book/reading/findColumns.ts';
import { TABLES } from '../../shared/book/tables.ts';
import { findSheet } from '../platform/workbook.ts';
import { readHeadings } from './readHeadings.ts';

type Rule = GoogleAppsScript.Spreadsheet.DataValidation;
type Range = GoogleAppsScript.Spreadsheet.Range;

/**
 * The drop-down or date picker of a column. Only a column with a fixed list of choices refuses other values: names of
 * molds, patterns and materials may be typed before they are listed, and the plan then says what is missing.
 */
export function columnRule(column: Column, help: string): Rule | undefined {
  const rule = SpreadsheetApp.newDataValidation().setHelpText(help);
  if (column.kind === 'choice')
    return rule
      .requireValueInList([...column.choices], true)
      .setAllowInvalid(false)
      .build();
  if (column.kind === 'date') return rule.requireDate().setAllowInvalid(true).build();
  if (column.kind !== 'text' || column.refers === undefined) return undefined;
  const listed = columnBelowHeading(column.refers.sheet, column.refers.column);
  return listed && rule.requireValueInRange(listed, true).setAllowInvalid(true).build();
}

/** The whole column below its heading, wherever it stands, with no lower end. */
function columnBelowHeading(name: SheetName, key: string): Range | undefined {
  const table = Object.values(TABLES).find((one) => one.sheet === name);
  const sheet = findSheet(name);
  if (table === undefined || sheet === null) return undefined;
  const { places } = findColumns(table, readHeadings(sheet).shown);
  const place = places.find((one) => one.key === key);
  if (place === undefined) return undefined;
  const letters = columnLetters(place.index + 1);
  return sheet.getRange(`${letters}2:${letters}`);
}
