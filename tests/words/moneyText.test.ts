import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CURRENCIES, CURRENCY_CODES } from '../../shared/book/currencies.ts';
import { fromMinor } from '../../shared/money/toMinor.ts';
import { moneyText } from '../../shared/words/moneyText.ts';

/** A place that writes the currency as the table does. */
const LOCALES = {
  USD: 'en-US',
  AUD: 'en-US',
  BRL: 'pt-BR',
  CAD: 'en-US',
  CHF: 'de-CH',
  CZK: 'cs-CZ',
  DKK: 'da-DK',
  EUR: 'de-DE',
  GBP: 'en-GB',
  JPY: 'en-US',
  KRW: 'en-US',
  KWD: 'en-US',
  MXN: 'en-US',
  NOK: 'nb-NO',
  NZD: 'en-US',
  PLN: 'pl-PL',
  SEK: 'sv-SE',
  ZAR: 'af-ZA',
} as const;

describe('moneyText', () => {
  test.each([
    [1250, 'USD', '$12.50'],
    [123_456_789, 'USD', '$1,234,567.89'],
    [-300, 'USD', '-$3.00'],
    [5, 'USD', '$0.05'],
    [0, 'USD', '$0.00'],
    [1250, 'SEK', '12,50\u00a0kr'],
    [1250, 'JPY', '¥1,250'],
    [1250, 'KWD', 'KWD\u00a01.250'],
    [-1_234_550, 'EUR', '-12.345,50\u00a0€'],
  ] as const)('%d of %s is %s', (minor, currency, words) => {
    expect(moneyText(minor, currency)).toBe(words);
  });

  test.each(CURRENCY_CODES)('%s has the digits and is written as CLDR has it', (currency) => {
    const locale = new Intl.NumberFormat(LOCALES[currency], { style: 'currency', currency });
    expect(locale.resolvedOptions().maximumFractionDigits).toBe(CURRENCIES[currency].digits);
    for (const minor of [0, 1, 99, 12_345, 1_234_567, 123_456_789]) {
      const words = locale.format(fromMinor(minor, currency));
      // its versions differ in the narrow blank and in the Swiss apostrophe
      expect(moneyText(minor, currency)).toBe(
        words.replace(/\u202f/g, '\u00a0').replace(/'/g, '’'),
      );
    }
  });

  test('its figures are those of the amount, in every currency', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -1e14, max: 1e14 }),
        fc.constantFrom(...CURRENCY_CODES),
        (minor, currency) => {
          const figures = moneyText(minor, currency)
            .replace(/kr\./, '')
            .replace(/[^\d-]/g, '');
          expect(Number(figures)).toBe(minor);
        },
      ),
    );
  });
});
