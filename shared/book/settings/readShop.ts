import { InputError } from '../../errors/InputError.ts';
import { typedChoice } from '../../errors/typedChoice.ts';
import { findUnit } from '../../units/findUnit.ts';
import { MEASURES } from '../../units/measures.ts';
import { UNITS, type UnitName } from '../../units/units.ts';
import { type CellValue, parseNumber } from '../reading/parseCell.ts';
import type { CellProblem } from '../reading/readTable.ts';
import { breakQuantities } from './breakQuantities.ts';
import type { Setting } from './setting.ts';
import { SETTINGS, type SettingKey, type Shop } from './settings.ts';

/**
 * The shop's settings from the sheet *Shop* (Setting, Value, Unit, About). A blank or absent row takes the default;
 * a refused one takes the default and is listed as a problem.
 */
export function readShop(values: readonly (readonly CellValue[])[]): {
  readonly shop: Shop;
  readonly problems: readonly CellProblem[];
} {
  const problems: CellProblem[] = [];
  const shop: Record<string, string | number> = {};
  for (const key of Object.keys(SETTINGS) as SettingKey[]) {
    const setting: Setting = SETTINGS[key];
    const index = values.findIndex(
      (row) => String(row[0]).trim().toLowerCase() === setting.label.toLowerCase(),
    );
    const [, value = '', unit = ''] = values[index] ?? [];
    shop[key] = setting.value;
    if (value === '') continue;
    try {
      shop[key] = settingValue(setting, value, String(unit).trim());
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      problems.push({ sheet: 'Shop', row: index + 1, heading: setting.label, error });
    }
  }
  return { shop: shop as Shop, problems }; // every key was parsed by its own setting
}

function settingValue(setting: Setting, value: CellValue, label: string): string | number {
  const field = setting.label.toLowerCase();
  if (setting.kind === 'text') {
    const text = String(value).trim();
    if (setting.form === 'quantities') breakQuantities(text);
    return text;
  }
  if (setting.kind === 'money') return parseNumber(value, field, setting.bounds, undefined);
  if (setting.kind === 'number')
    return parseNumber(value, field, setting.bounds, unitFrom(setting, label));
  return typedChoice(value, field, setting.choices);
}

/**
 * The unit that a setting's row states.
 * @throws InputError when it is not a unit of this setting
 */
export function unitFrom(setting: Setting, label: string): UnitName | undefined {
  if (setting.kind !== 'number' || setting.measure === undefined) return undefined;
  const usual = MEASURES[setting.measure].US;
  const unit = findUnit(label, usual);
  if (unit === undefined)
    throw new InputError({
      field: `unit of ${setting.label.toLowerCase()}`,
      rule: { kind: 'form', wanted: `a unit such as ${UNITS[usual].label}` },
      value: label,
    });
  return unit;
}
