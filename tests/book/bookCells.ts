import type { Book, BookCells } from '../../shared/book/book.ts';
import { PLAN_TABLES } from '../../shared/book/book.ts';
import type { Column } from '../../shared/book/column.ts';
import { headingOf, unitOf } from '../../shared/book/reading/headingOf.ts';
import type { CellValue } from '../../shared/book/reading/parseCell.ts';
import { formatClock } from '../../shared/book/reading/parseClock.ts';
import { SETTINGS, type SettingKey, SHOP_HEADINGS } from '../../shared/book/settings/settings.ts';
import { TABLES } from '../../shared/book/tables.ts';
import { MEASURES, type UnitSystem } from '../../shared/units/measures.ts';
import { fromEngine } from '../../shared/units/toEngine.ts';
import { UNITS } from '../../shared/units/units.ts';

/** A book as the cells a sheet function gets: headings, typed columns only, the shop's units. */
export function bookCells(book: Book): BookCells {
  const cells: Record<string, CellValue[][]> = { shop: shopCells(book) };
  for (const key of PLAN_TABLES) {
    const columns = Object.entries<Column>(TABLES[key].columns).filter(
      ([, column]) => column.kind !== 'computed',
    );
    const rows = book[key].map(({ record }) =>
      columns.map(([name, column]) =>
        cellOf((record as Record<string, CellValue | undefined>)[name], column, book.shop.units),
      ),
    );
    cells[key] = [columns.map(([, column]) => headingOf(column, book.shop.units)), ...rows];
  }
  return cells as unknown as BookCells; // shop and every plan table were just set
}

function shopCells(book: Book): CellValue[][] {
  const keys = Object.keys(SETTINGS) as SettingKey[]; // keys of the one table of settings
  const rows = keys.map((key) => {
    const setting = SETTINGS[key];
    const value = book.shop[key];
    if (setting.kind !== 'number' || !('measure' in setting)) return [setting.label, value, ''];
    const unit = MEASURES[setting.measure][book.shop.units];
    return [setting.label, fromEngine(Number(value), unit), UNITS[unit].label];
  });
  return [SHOP_HEADINGS.slice(0, 3), ...rows];
}

function cellOf(value: CellValue | undefined, column: Column, system: UnitSystem): CellValue {
  if (value === undefined) return '';
  if (column.kind === 'clock') return formatClock(Number(value), system);
  const unit = unitOf(column, system);
  return unit ? fromEngine(Number(value), unit) : value;
}
