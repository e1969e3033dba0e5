import { readTable } from '../../shared/book/reading/readTable.ts';
import { TABLES } from '../../shared/book/tables.ts';
import { readCells } from '../platform/workbook.ts';

/** The first sheet of the book that holds a row, or undefined when all are empty or absent. */
export function filledSheet(): string | undefined {
  const tables = Object.values(TABLES);
  return tables.find((table) => readTable(table, readCells(table.sheet)).rows.length > 0)?.sheet;
}
