import { MEASURES, type UnitSystem } from '../../units/measures.ts';
import { fromEngine } from '../../units/toEngine.ts';
import { UNITS } from '../../units/units.ts';
import type { BookNotes } from '../layout/bookNotes.ts';
import { limitTexts } from '../layout/headingNote.ts';
import { trimmed } from '../layout/tableCells.ts';
import type { CellValue } from '../reading/parseCell.ts';
import type { Setting, ShopFigure } from './setting.ts';
import {
  SETTINGS,
  type SettingKey,
  SHOP_FIGURES,
  type Shop,
  type ShopFigureKey,
} from './settings.ts';

export interface SettingRow {
  readonly key: SettingKey | ShopFigureKey;
  readonly setting: Setting | ShopFigure;
  /** Setting, Value, Unit, About; a figure that fills itself has no value yet. */
  readonly cells: readonly [string, CellValue, string, string];
}

/** Every row of the sheet *Shop* in the system's units; a setting not given takes its default. */
export function settingRows(
  system: UnitSystem,
  notes: BookNotes['settings'],
  values: Partial<Shop> = {},
): readonly SettingRow[] {
  const keys = Object.keys(SETTINGS) as SettingKey[]; // keys of the one table of settings
  return keys.flatMap((key) => {
    const setting: Setting = SETTINGS[key];
    const unit =
      setting.kind === 'number' && setting.measure ? MEASURES[setting.measure][system] : undefined;
    const value = values[key] ?? setting.value;
    const cell = typeof value === 'number' && unit ? trimmed(fromEngine(value, unit)) : value;
    const limits = 'bounds' in setting ? limitTexts(setting.bounds, unit) : [];
    const row: SettingRow = {
      key,
      setting,
      cells: [
        setting.label,
        cell,
        unit ? UNITS[unit].label : '',
        [notes[key], ...limits].join(' '),
      ],
    };
    return [row, ...figuresAfter(key, system, notes)];
  });
}

function figuresAfter(
  key: SettingKey,
  system: UnitSystem,
  notes: BookNotes['settings'],
): readonly SettingRow[] {
  const figures = Object.keys(SHOP_FIGURES) as ShopFigureKey[]; // keys of the one table of figures
  return figures
    .filter((figure) => SHOP_FIGURES[figure].after === key)
    .map((figure): SettingRow => {
      const setting: ShopFigure = SHOP_FIGURES[figure];
      const { label } = UNITS[MEASURES[setting.measure][system]];
      return { key: figure, setting, cells: [setting.label, '', label, notes[figure]] };
    });
}

/** Settings that the sheet *Shop* has no row for. */
export function missingSettings(
  cells: readonly (readonly CellValue[])[],
  rows: readonly SettingRow[],
): readonly SettingRow[] {
  const labels = new Set(cells.map((row) => String(row[0]).trim().toLowerCase()));
  return rows.filter(({ setting }) => !labels.has(setting.label.toLowerCase()));
}
