import type { UnitSystem } from '../../units/measures.ts';
import type { MoneySetting } from './setting.ts';
import { SETTINGS, SHOP_FIGURES, type ShopFigureKey } from './settings.ts';

/**
 * The formula of a row of *Shop* that fills itself, for a value in the system's unit; the rows it reads keep units of their own. Readable
 * in every locale: semicolons between arguments, no decimal sign.
 * @param rowOf - row number on the sheet of a label
 */
export function shopFormula(
  key: ShopFigureKey,
  system: UnitSystem,
  rowOf: (label: string) => number,
): string {
  if (key === 'boilingPoint') {
    const row = rowOf(SETTINGS.elevation.label);
    const unit = system === 'US' ? 'ft' : 'm';
    return `=POUR_BOIL(CONVERT(B${row}; C${row}; "${unit}"); "${system}")`;
  }
  const boiling = rowOf(SHOP_FIGURES.boilingPoint.label);
  const above = rowOf(SETTINGS.topTarget.label);
  const steps = `IF(C${above}=C${boiling}; 1; IF(C${above}="°C"; 9/5; 5/9))`;
  return `=B${boiling}+B${above}*${steps}`;
}

/**
 * The formula in the column *Unit* of a price or an amount, so that it follows the shop's currency: `USD per hour`.
 * @param rowOf - row number on the sheet of a label
 */
export function moneyUnitFormula({ per }: MoneySetting, rowOf: (label: string) => number): string {
  const code = `B${rowOf(SETTINGS.currency.label)}`;
  return per === undefined ? `=${code}` : `=${code}&" per ${per}"`;
}
