import { describe, expect, test } from 'vitest';
import {
  formulaForScript,
  formulaFromScript,
  hasDecimalComma,
  typedInLocale,
} from '../../../../workbench/host/locale/formulaFromScript.ts';

describe('a locale with a decimal comma', () => {
  test.each(['de_DE', 'fr_FR', 'es_ES', 'it_IT', 'nl_NL', 'pl_PL', 'pt_BR'])(
    '%s is one',
    (locale) => {
      expect(hasDecimalComma(locale)).toBe(true);
    },
  );
  test.each(['en_US', 'en_GB', 'ja_JP'])('%s is none', (locale) => {
    expect(hasDecimalComma(locale)).toBe(false);
  });

  test.each([
    { formula: '=IF(A1=1; 9/5; "a, b; 1.8")', read: '=IF(A1=1, 9/5, "a, b; 1.8")' },
    { formula: "=SUM('Order, list'!A1:B)", read: "=SUM('Order, list'!A1:B)" },
    { formula: '=SUM({1;2})', read: '=SUM({1;2})' },
    { formula: '=IF(A1=1, 2; 3)', read: '=ERROR.PARSE' },
    { formula: '=A1*1.8', read: '=ERROR.PARSE' },
  ])('reads $formula as $read', ({ formula, read }) => {
    expect(formulaFromScript(formula, 'de_DE')).toBe(read);
  });

  test('tells a formula with its own separators', () => {
    expect(formulaForScript('=IF(A1=1, 2, "a, b")', 'de_DE')).toBe('=IF(A1=1; 2; "a, b")');
    expect(formulaForScript('=IF(A1=1, 2)', 'en_US')).toBe('=IF(A1=1, 2)');
  });

  test.each([
    { typed: '1,5', stored: '1.5' },
    { typed: '1.234,5', stored: '1234.5' },
    { typed: '12 %', stored: '12 %' },
    { typed: 'a, b', stored: 'a, b' },
    { typed: '1,5 to 2', stored: '1,5 to 2' },
  ])('takes $typed for $stored', ({ typed, stored }) => {
    expect(typedInLocale(typed, 'de_DE')).toBe(stored);
    expect(typedInLocale(typed, 'en_US')).toBe(typed);
  });
});

test('semicolons separate arguments where the decimal sign is a point, too', () => {
  expect(formulaFromScript('=IF(A1=1; 1.8; 2)', 'en_US')).toBe('=IF(A1=1, 1.8, 2)');
});
