import { describe, expect, test } from 'vitest';
import { SETTINGS } from '../../../shared/book/settings/settings.ts';
import { moneyUnitFormula, shopFormula } from '../../../shared/book/settings/shopFormula.ts';

const LABELS = ['Elevation', 'Mold top above boiling', 'Boiling point here'];
const rowOf = (label: string) => 4 + LABELS.indexOf(label);

describe('shopFormula', () => {
  test.each([
    { system: 'US', unit: 'ft' },
    { system: 'metric', unit: 'm' },
  ] as const)('the boiling point in $system units reads an elevation in any unit', (row) => {
    expect(shopFormula('boilingPoint', row.system, rowOf)).toBe(
      `=POUR_BOIL(CONVERT(B4; C4; "${row.unit}"); "${row.system}")`,
    );
  });

  test('the reading that starts a run adds the setting, in degrees of the boiling point’s unit', () => {
    expect(shopFormula('topReads', 'US', rowOf)).toBe('=B6+B5*IF(C5=C6; 1; IF(C5="°C"; 9/5; 5/9))');
  });
});

describe('moneyUnitFormula', () => {
  test('names the shop’s currency, and what a price is for', () => {
    const row = () => 44;
    expect(moneyUnitFormula(SETTINGS.moldWear, row)).toBe('=B44&" per round and mold"');
    expect(moneyUnitFormula(SETTINGS.minimumOrder, row)).toBe('=B44');
  });
});
