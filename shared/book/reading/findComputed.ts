import type { Column, Table } from '../column.ts';
import { isOrdersFormula } from '../layout/ordersFormula.ts';
import { readHeading } from './headingOf.ts';
import type { CellValue } from './parseCell.ts';

export interface ComputedPlace {
  readonly key: string;
  readonly column: Column;
  /** Counted from 0. */
  readonly index: number;
}

/**
 * Finds the columns that fill themselves: by the formula in their heading cell, which may show an error, or else by
 * the heading's words.
 * @param headings shown values of the sheet's first row
 * @param formulas formulas of the same cells, "" where there is none
 */
export function findComputed(
  table: Table,
  headings: readonly CellValue[],
  formulas: readonly string[],
): { readonly places: readonly ComputedPlace[]; readonly missing: readonly Column[] } {
  const places: ComputedPlace[] = [];
  const missing: Column[] = [];
  for (const [key, column] of Object.entries(table.columns)) {
    if (column.kind !== 'computed') continue;
    const byFormula = formulas.findIndex((text) => isOrdersFormula(text, column.heading));
    const index =
      byFormula >= 0
        ? byFormula
        : headings.findIndex((text) => readHeading(column, String(text)) !== undefined);
    if (index < 0) missing.push(column);
    else places.push({ key, column, index });
  }
  return { places, missing };
}
