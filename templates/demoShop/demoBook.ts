import { DAY_TABLES, type DayBook } from '../../shared/book/book.ts';
import type { RecordOf, Table } from '../../shared/book/column.ts';
import { type TypedRow, typedRecords } from '../../shared/book/layout/typedRow.ts';
import type { Row } from '../../shared/book/reading/readTable.ts';
import { readShop } from '../../shared/book/settings/readShop.ts';
import { SHOP_HEADINGS } from '../../shared/book/settings/settings.ts';
import { TABLES } from '../../shared/book/tables.ts';
import { demoRows, demoSettings } from './demoShop.ts';

/** The invented shop as it is read back from its book, for tools that need no workbook. */
export function demoBook(): DayBook & {
  readonly heatTrials: readonly Row<typeof TABLES.heatTrials>[];
} {
  const rows = demoRows();
  const read: Record<string, readonly Row<Table>[]> = {};
  for (const key of [...DAY_TABLES, 'heatTrials'] as const)
    read[key] = numbered(typedRecords<Table>(TABLES[key], rows[key] as readonly TypedRow<Table>[])); // each key's rows are of its own table
  const { shop } = readShop([SHOP_HEADINGS]);
  const book = { ...read, shop: { ...shop, ...demoSettings() }, problems: [] };
  return book as unknown as ReturnType<typeof demoBook>; // every table of the day and heatTrials were just set
}

/** A sheet's records start below its headings. */
function numbered(records: readonly RecordOf<Table>[]): readonly Row<Table>[] {
  return records.map((record, index) => ({ row: index + 2, record }));
}
