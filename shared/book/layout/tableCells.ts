import type { UnitSystem } from '../../units/measures.ts';
import { fromEngine } from '../../units/toEngine.ts';
import type { UnitName } from '../../units/units.ts';
import type { Column, RecordOf, Table } from '../column.ts';
import type { Place } from '../reading/findColumns.ts';
import type { CellValue } from '../reading/parseCell.ts';
import { formatClock } from '../reading/parseClock.ts';

/**
 * Records as the cells of a sheet, rows by columns, each number in the unit of its heading. The inverse of `readTable`.
 * @param places where the sheet's columns stand; a column that is not among them is left blank
 * @param width columns written
 */
export function tableCells<T extends Table>(
  records: readonly RecordOf<T>[],
  places: readonly Place[],
  width: number,
  system: UnitSystem,
): CellValue[][] {
  return records.map((record) => {
    const cells: CellValue[] = new Array<CellValue>(width).fill('');
    const values = record as Readonly<Record<string, string | number | undefined>>; // a record is keyed by its columns
    for (const { key, column, index, unit } of places) {
      const value = values[key];
      if (value !== undefined) cells[index] = cellOf(value, column, unit, system);
    }
    return cells;
  });
}

/** One value as its cell holds it: numbers in the heading's unit, clock times as people write them, days as `yyyy-mm-dd`. */
function cellOf(
  value: string | number,
  column: Column,
  unit: UnitName | undefined,
  system: UnitSystem,
): CellValue {
  if (typeof value === 'string') return value;
  if (column.kind === 'clock') return formatClock(value, system);
  return unit ? trimmed(fromEngine(value, unit)) : value;
}

/** Without the last binary digits of a conversion, so that 8 fl oz reads 8 and not 7.999999999999999. */
export function trimmed(value: number): number {
  return Number(value.toPrecision(12));
}
