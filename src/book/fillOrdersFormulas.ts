import { MONEY_TABLES } from '../../shared/book/book.ts';
import {
  isOrdersFormula,
  ordersFormula,
  type ReadColumns,
} from '../../shared/book/layout/ordersFormula.ts';
import type { SetUpChange } from '../../shared/book/layout/setUpReport.ts';
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
  // Everything is read before the first formula is written: a read in between would compute all of them again.
  const wanted = orders.computed.flatMap(({ column, index }) => {
    const formula = ordersFormula(column.heading, columns);
    const old = formulas[index] ?? '';
    if (plain(old) === plain(formula)) return [];
    if (isOrdersFormula(old, column.heading) || !hasValuesBelow(orders, index))
      return [{ formula, index, heading: column.heading }];
    changes.push({ kind: 'left', because: typedValues(column.heading) });
    return [];
  });
  for (const { formula, index, heading } of wanted) {
    orders.sheet.getRange(1, index + 1).setFormula(formula);
    if (!orders.isNew) changes.push({ kind: 'formula', sheet: 'Orders', heading });
  }
}

function typedValues(heading: string): string {
  return `In Orders, the column ${heading} holds typed values, so it cannot fill itself: clear them, then set up again.`;
}

/** How far each sheet's known columns reach. */
function readColumns(laid: readonly LaidTable[]): ReadColumns {
  const counts: Record<string, number> = {};
  for (const key of MONEY_TABLES) {
    const found = laid.find((one) => one.key === key)?.found;
    const known = [...(found?.places ?? []), ...(found?.unreadable ?? [])];
    counts[key] = Math.max(1, ...known.map(({ index }) => index + 1));
  }
  return counts as ReadColumns; // every table was just counted
}

function hasValuesBelow({ sheet, isNew }: LaidTable, index: number): boolean {
  const rows = sheet.getMaxRows() - 1;
  if (isNew || rows < 1) return false;
  return sheet
    .getRange(2, index + 1, rows, 1)
    .getDisplayValues()
    .some(([value]) => value !== '');
}

/** The platform may write a formula back with other spaces, case, anchors or separators. */
function plain(formula: string): string {
  return formula.replace(/[\s$]/g, '').replace(/;/g, ',').toLowerCase();
}
