import { fromEngine } from '../../units/toEngine.ts';
import { trimmed } from '../layout/tableCells.ts';
import type { CellValue } from '../reading/parseCell.ts';
import { readShop, unitFrom } from './readShop.ts';
import type { Setting } from './setting.ts';
import { SETTINGS, type SettingKey, type Shop } from './settings.ts';

/**
 * The column *Value* of the sheet *Shop* below its heading, with some settings changed, each in the unit of its row.
 * A setting that no longer holds its default is the user's and stays as it is.
 * @param cells the sheet from its heading row down
 * @param wanted settings to change, in engine units
 */
export function settingCells(
  cells: readonly (readonly CellValue[])[],
  wanted: Partial<Shop>,
): readonly CellValue[] {
  const { shop, problems } = readShop(cells);
  const refused = new Set(problems.map(({ row }) => row));
  const keys = Object.keys(wanted) as SettingKey[]; // a part of the settings has no other keys
  return cells.slice(1).map((row, index) => {
    const key = keys.find((one) => isLabel(row[0], SETTINGS[one]));
    const old = row[1] ?? '';
    const value = key && wanted[key];
    if (key === undefined || value === undefined || refused.has(index + 2)) return old;
    if (!isDefault(shop[key], SETTINGS[key].value)) return old;
    const unit = unitFrom(SETTINGS[key], String(row[2] ?? '').trim());
    return typeof value === 'number' && unit ? trimmed(fromEngine(value, unit)) : value;
  });
}

function isLabel(cell: CellValue | undefined, setting: Setting): boolean {
  return String(cell).trim().toLowerCase() === setting.label.toLowerCase();
}

/** A default that went through another unit comes back equal but for its last digits. */
function isDefault(value: string | number, usual: string | number): boolean {
  if (typeof value === 'number' && typeof usual === 'number')
    return Math.abs(value - usual) <= 1e-9 * Math.max(1, Math.abs(usual));
  return value === usual;
}
