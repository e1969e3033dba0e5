import { MONEY_TABLES, PLAN_TABLES } from '../book.ts';
import type { Column } from '../column.ts';
import { SHOP_HEADINGS } from '../settings/settings.ts';
import { TABLES } from '../tables.ts';

/** How many columns of each sheet, from the first, a plan and its money read. */
export type ReadColumns = Readonly<Record<(typeof MONEY_TABLES)[number], number>>;

/** The columns that people and the log form fill, as declared; the computed ones stand to their right. */
export function declaredColumns(): ReadColumns {
  const counts: Record<string, number> = {};
  for (const key of MONEY_TABLES)
    counts[key] = Object.values(TABLES[key].columns).filter(
      ({ kind }) => kind !== 'computed',
    ).length;
  return counts as ReadColumns; // every table was just counted
}

/**
 * The one formula of a computed column of *Orders*. It stands in the heading cell and spills the heading and every row.
 * Only columns that people fill are handed over, so nothing refers to itself.
 * @param heading the computed column's heading, such as `Pieces to pour`
 */
export function ordersFormula(heading: string, columns: ReadColumns): string {
  const tables = isMoney(heading) ? MONEY_TABLES : PLAN_TABLES;
  const ranges = tables.map((key) => sheetRange(TABLES[key].sheet, columns[key]));
  const shop = sheetRange('Shop', SHOP_HEADINGS.length - 1);
  // Semicolons separate arguments in every locale, commas only where they are no decimal sign.
  return `${formulaStart(heading)}; ${[...ranges, shop].join('; ')})`;
}

/** True for a formula made by {@link ordersFormula} for this heading, whatever its ranges and separators. */
export function isOrdersFormula(formula: string, heading: string): boolean {
  const start = formulaStart(heading).toLowerCase();
  return [',', ';'].some((separator) => formula.toLowerCase().startsWith(`${start}${separator}`));
}

function formulaStart(heading: string): string {
  const name = isMoney(heading) ? 'POUR_MONEY' : 'POUR_ORDERS';
  return `=${name}("${heading.toLowerCase()}"`;
}

function isMoney(heading: string): boolean {
  const columns: readonly Column[] = Object.values(TABLES.orders.columns);
  return columns.some(
    (column) => column.kind === 'computed' && column.by === 'money' && column.heading === heading,
  );
}

/** From A1 down without an end; the last column of *Shop*, *About*, is not read. */
function sheetRange(sheet: string, columns: number): string {
  const name = /^[A-Za-z]+$/.test(sheet) ? sheet : `'${sheet.replace(/'/g, "''")}'`;
  return `${name}!A1:${columnLetters(columns)}`;
}

/**
 * A column's letters.
 * @param number counted from 1: 1 is A, 27 is AA
 */
export function columnLetters(number: number): string {
  const before = Math.floor((number - 1) / 26);
  const letter = String.fromCharCode(65 + ((number - 1) % 26));
  return before === 0 ? letter : columnLetters(before) + letter;
}
