import { PLAN_TABLES } from '../../shared/book/book.ts';
import {
  isOrdersFormula,
  ordersFormula,
  type ReadColumns,
} from '../../shared/book/ordersFormula.ts';
import type { SetUpChange } from '../../shared/book/setUpReport.ts';
import type { LaidTable } from './layOutTable.ts';
import { readHeadings } from './readHeadings.ts';

/**
 * Puts each computed column's formula into its heading cell, where it is not there yet or reads too few columns.
 * A column with typed values under a typed heading is left alone and named.
 */
export function fillOrdersFormulas(laid: readonly LaidTable[], changes: SetUpChange[]): void {
  const orders = laid.find(({ key }) => key === 'orders');
  if (orders === undefined) return;
  const columns = readColumns(laid);
  const first = Math.min(...orders.computed.map(({ index }) => index + 1));
  if (columns.orders >= first) {
    changes.push({
      kind: 'left',
      because:
        'In Orders, a column that you fill stands to the right of one that fills itself: move it to the left, then set up again.',
    });
    return;
  }
  const { formulas } = readHeadings(orders.sheet);
  for (const { column, index } of orders.computed)
    fillOne(
      orders,
      { heading: column.heading, index, old: formulas[index] ?? '' },
      columns,
      changes,
    );
}

function fillOne(
  { sheet, isNew }: LaidTable,
  {
    heading,
    index,
    old,
  }: { readonly heading: string; readonly index: number; readonly old: string },
  columns: ReadColumns,
  changes: SetUpChange[],
): void {
  const wanted = ordersFormula(heading, columns);
  if (plain(old) === plain(wanted)) return;
  const isOurs = isOrdersFormula(old, heading);
  if (!isOurs && hasValuesBelow(sheet, index)) {
    changes.push({
      kind: 'left',
      because: `In Orders, the column ${heading} holds typed values, so it cannot fill itself: clear them, then set up again.`,
    });
    return;
  }
  sheet.getRange(1, index + 1).setFormula(wanted);
  if (!isNew) changes.push({ kind: 'formula', sheet: 'Orders', heading });
}

/** How far each sheet's known columns reach. */
function readColumns(laid: readonly LaidTable[]): ReadColumns {
  const counts: Record<string, number> = {};
  for (const key of PLAN_TABLES) {
    const found = laid.find((one) => one.key === key)?.found;
    const known = [...(found?.places ?? []), ...(found?.unreadable ?? [])];
    counts[key] = Math.max(1, ...known.map(({ index }) => index + 1));
  }
  return counts as ReadColumns; // every plan table was just counted
}

function hasValuesBelow(sheet: GoogleAppsScript.Spreadsheet.Sheet, index: number): boolean {
  const rows = sheet.getMaxRows() - 1;
  if (rows < 1) return false;
  return sheet
    .getRange(2, index + 1, rows, 1)
    .getDisplayValues()
    .some(([value]) => value !== '');
}

/** The platform may write a formula back with other spaces, case or anchors. */
function plain(formula: string): string {
  return formula.replace(/[\s$]/g, '').toLowerCase();
}
