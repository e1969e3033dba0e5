import { headingOf } from '../../shared/book/reading/headingOf.ts';
import { SHOP_HEADINGS } from '../../shared/book/settings/settings.ts';
import { TABLES, type TableKey } from '../../shared/book/tables.ts';
import { demoRows } from '../../templates/demoShop/demoShop.ts';
import { formatDate } from '../../workbench/host/parseDate.ts';

type Cell = string | number | boolean;
export type Values = Readonly<Record<string, Cell | null | undefined>>;
export type Cells = readonly (readonly Cell[])[];

/** The demo shop's sheets, some of them with other rows, in US units with its default settings. */
export function demoCells(
  own: Partial<Record<TableKey, readonly Values[]>>,
): ReadonlyMap<string, Cells> {
  const rows = demoRows();
  const cells = new Map<string, Cells>([['Shop', [SHOP_HEADINGS]]]);
  for (const [key, { sheet, columns }] of Object.entries(TABLES)) {
    const typed = Object.entries(columns).filter(([, { kind }]) => kind !== 'computed');
    const values = own[key as TableKey] ?? (rows[key as TableKey] as readonly Values[]); // keys of the one list of tables
    const lines = values.map((row) => typed.map(([name]) => row[name] ?? ''));
    cells.set(sheet, [typed.map(([, column]) => headingOf(column, 'US')), ...lines]);
  }
  return cells;
}

/** As much of the platform as a read needs. */
export function platformOf(cells: ReadonlyMap<string, Cells>) {
  const sheetOf = (values: Cells) => ({
    getLastRow: () => values.length,
    getLastColumn: () => values[0]?.length ?? 0,
    getRange: () => ({ getValues: () => values }),
  });
  const workbook = {
    getSpreadsheetTimeZone: () => 'Etc/UTC',
    getSheetByName: (name: string) => {
      const values = cells.get(name);
      return values === undefined ? null : sheetOf(values);
    },
  };
  return {
    SpreadsheetApp: { getActiveSpreadsheet: () => workbook },
    Utilities: {
      formatDate: (date: Date, zone: string, pattern: string) =>
        formatDate(date.getTime(), zone, pattern),
    },
  };
}
