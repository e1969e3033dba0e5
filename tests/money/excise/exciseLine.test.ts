import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { EXCISE_IN, EXCISE_STATUSES } from '../../../shared/book/settings/exciseChoices.ts';
import { exciseLine } from '../../../shared/money/excise/exciseLine.ts';
import { type ExciseSettings, exciseTerms } from '../../../shared/money/excise/exciseTerms.ts';
import { EXCISE_SOURCE, exciseText } from '../../../shared/money/excise/exciseText.ts';
import { evenReal } from '../../evenReal.ts';
import { errorText } from '../../heat/errorText.ts';
import { TAXED } from '../price/terms.ts';

const ADDED = { ...TAXED, taxIn: 'added to the price' } as const;
const anyPrice = fc.integer({ min: 0, max: 1e12 });
const anyRate = evenReal(0, 1);
const anyBase = fc.double({ min: 0.01, max: 1, noNaN: true });

describe('exciseLine', () => {
  test('100.00 with the tax inside is taxed on 90.91 with 9.09', () => {
    // EXCISE-ARITHMETIC, 100 / 1.1; a price is presumed to hold the tax: REVRUL65-41
    expect(exciseLine(10_000, TAXED)).toEqual({
      base: 9091,
      tax: 909,
      added: 0,
      inside: 909,
      rate: 0.1,
      reason: 'taxable',
    });
  });

  test('10 % added to 100.00 is 10.00', () => {
    // EXCISE-ARITHMETIC, IRC4161
    expect(exciseLine(10_000, ADDED)).toEqual({
      base: 10_000,
      tax: 1000,
      added: 1000,
      inside: 0,
      rate: 0.1,
      reason: 'taxable',
    });
  });

  test('a constructive share of 75 % taxes three quarters of the price without the tax', () => {
    expect(exciseLine(10_000, { ...ADDED, baseShare: 0.75 })).toMatchObject({
      base: 7500,
      tax: 750,
    });
    expect(exciseLine(10_750, { ...TAXED, baseShare: 0.75 })).toMatchObject({
      base: 7500,
      tax: 750,
    });
  });

  test.each([
    ['exempt', true],
    ['export', true],
    ['further manufacture', true],
  ] as const)('a sale marked %s bears none, and keeps the reason', (status, isOn) => {
    const line = exciseLine(10_000, { ...TAXED, status, isOn });
    expect(line).toEqual({ base: 0, tax: 0, added: 0, inside: 0, rate: 0.1, reason: status });
  });

  test('switched off, no sale bears any, whatever it is marked', () => {
    for (const status of EXCISE_STATUSES)
      expect(exciseLine(10_000, { ...TAXED, status, isOn: false })).toMatchObject({
        tax: 0,
        reason: 'off',
      });
  });

  test('base and tax inside add up to the price exactly', () => {
    fc.assert(
      fc.property(anyPrice, anyRate, (price, rate) => {
        const { base, tax } = exciseLine(price, { ...TAXED, rate });
        expect(base + tax).toBe(price);
        // both are rounded: (1 + rate) / 2, and the noise of a double near 1e12
        expect(Math.abs(tax - base * rate)).toBeLessThan(1.01);
      }),
    );
  });

  test('tax added to a price is found again inside the sum', () => {
    fc.assert(
      fc.property(anyPrice, anyRate, anyBase, (price, rate, baseShare) => {
        const added = exciseLine(price, { ...ADDED, rate, baseShare });
        const inside = exciseLine(price + added.tax, { ...TAXED, rate, baseShare });
        expect(Math.abs(inside.tax - added.tax)).toBeLessThanOrEqual(1); // half a unit, spread
        expect(Math.abs(inside.base - added.base)).toBeLessThanOrEqual(1);
      }),
    );
  });

  test('is never negative, never more than the price, and whole', () => {
    const terms = fc.record({
      isOn: fc.boolean(),
      rate: anyRate,
      baseShare: anyBase,
      taxIn: fc.constantFrom(...EXCISE_IN),
      status: fc.constantFrom(...EXCISE_STATUSES),
    });
    fc.assert(
      fc.property(anyPrice, terms, (price, given) => {
        const { base, tax, added, inside } = exciseLine(price, Object.freeze(given));
        for (const minor of [base, tax]) {
          expect(Number.isInteger(minor)).toBe(true);
          expect(minor).toBeGreaterThanOrEqual(0);
          expect(minor).toBeLessThanOrEqual(price);
        }
        expect(added + inside).toBe(tax);
      }),
    );
  });

  test.each([
    ['price must be at least 0, got -1', -1, TAXED],
    ['price must be a whole number, got 0.5', 0.5, TAXED],
    ['excise rate must be at most 1, got 10', 1, { ...TAXED, rate: 10 }],
    [
      'share of the price that is taxed must be greater than 0, got 0',
      1,
      { ...TAXED, baseShare: 0 },
    ],
  ] as const)('refuses: %s', (sentence, price, terms) => {
    expect(errorText(() => exciseLine(price, terms))).toBe(sentence);
  });
});

describe('exciseTerms', () => {
  const settings: ExciseSettings = Object.freeze({
    currency: 'USD',
    excise: 'by currency',
    exciseRate: 0.1,
    exciseBase: 'constructive price',
    constructiveShare: 0.75,
    exciseIn: 'inside the price',
  });

  test.each([
    ['USD', 'by currency', true],
    ['CAD', 'by currency', false],
    ['CAD', 'on', true],
    ['USD', 'off', false],
  ] as const)('in %s, set to %s, the tax is on: %s', (currency, excise, isOn) => {
    expect(exciseTerms({ ...settings, currency, excise }, {}).isOn).toBe(isOn);
  });

  test.each([
    ['constructive price', 'retail', 0.75],
    ['constructive price', 'wholesale', 1],
    ['constructive price', undefined, 1],
    ['sale price', 'retail', 1],
  ] as const)('with a %s, a %s sale is taxed on %d of it', (exciseBase, saleKind, baseShare) => {
    expect(exciseTerms({ ...settings, exciseBase }, { saleKind }).baseShare).toBe(baseShare);
  });

  test('a blank status is taxable; one that is given stays', () => {
    expect(exciseTerms(settings, {}).status).toBe('taxable');
    expect(exciseTerms(settings, { exciseStatus: 'export' }).status).toBe('export');
  });
});

describe('exciseText', () => {
  test.each([
    [TAXED, 'Excise of 10 % on $90.91: $9.09, inside the price'],
    [ADDED, 'Excise of 10 % on $100.00: $10.00, added to the price'],
    [{ ...TAXED, status: 'exempt' }, 'No excise: the sale is marked exempt'],
    [{ ...TAXED, status: 'export' }, 'No excise: the sale is marked for export'],
    [
      { ...TAXED, status: 'further manufacture' },
      'No excise: the sale is marked for further manufacture',
    ],
    [{ ...TAXED, isOn: false }, 'Excise is off in Shop'],
  ] as const)('of %j are %j', (terms, words) => {
    expect(exciseText(exciseLine(10_000, terms), 'USD')).toBe(words);
  });

  test('name the law, the day its text was checked, and a tax adviser', () => {
    expect(EXCISE_SOURCE).toBe(
      'US excise on sport fishing equipment: 26 USC 4161(a) (copy checked 2026-06-20), 26 CFR 48.4161(a)-1 (checked 2024-11-25), IRC 4216(a). Ask a tax adviser.',
    );
  });
});
