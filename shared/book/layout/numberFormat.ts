import type { Column } from '../column.ts';
import type { Setting, ShopFigure } from '../settings/setting.ts';

/** The platform's number format of a column's cells. Text and clock times are held as text, so that nothing typed is turned into something else. */
export function numberFormat(column: Column): string {
  switch (column.kind) {
    case 'number':
      return column.measure === 'fraction' ? `${digits(column.places)}%` : digits(column.places);
    case 'computed':
      if (column.places === undefined) return '@';
      return column.measure === 'fraction' ? `${digits(column.places)}%` : digits(column.places);
    case 'money':
      return '#,##0.00';
    case 'date':
      return 'yyyy-mm-dd';
    default:
      return '@';
  }
}

/** The number format of one value on the sheet *Shop*. */
export function settingFormat(setting: Setting | ShopFigure): string {
  if (setting.kind === 'computed') return digits(setting.places);
  if (setting.kind === 'money') return digits(setting.places);
  if (setting.kind !== 'number') return '@';
  return setting.measure === 'fraction' ? `${digits(setting.places)}%` : digits(setting.places);
}

function digits(places: number): string {
  return places === 0 ? '0' : `0.${'0'.repeat(places)}`;
}
