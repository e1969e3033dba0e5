import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { breakQuantities } from '../../../shared/book/settings/breakQuantities.ts';
import { breakText, priceBreaks } from '../../../shared/money/price/priceBreaks.ts';
import { errorText } from '../../heat/errorText.ts';
import { PLAIN } from './terms.ts';

/** Set-up 10.00, a round of 12 pieces 6.00, a piece 0.50. */
const costAt = (quantity: number) => 1000 + 600 * Math.ceil(quantity / 12) + 50 * quantity;
const half = { ...PLAIN, aim: { by: 'margin', margin: 0.5 }, priceStep: 0.01 } as const;

describe('priceBreaks', () => {
  test('prices every quantity from its own cost, and marks a piece that costs more', () => {
    const rows = priceBreaks(Object.freeze([12, 13, 24]), costAt, half);
    const shown = rows.map((row) => [
      row.quantity,
      row.price.kind === 'price' && row.price.perPiece,
      breakText(row),
    ]);
    expect(shown).toEqual([
      [12, 367, ''], // 2200 / 12 / 0.5 = 366.67
      [13, 439, 'a piece costs more than at 12'], // 2850 / 13 / 0.5 = 438.46
      [24, 284, ''], // 3400 / 24 / 0.5 = 283.33
    ]);
  });

  test('says where more pieces cost no more in all, in any order of quantities', () => {
    const bySetUp = (quantity: number) => 10_000 + quantity;
    const rows = priceBreaks([96, 90, 30], bySetUp, { ...half, minimumOrder: 250 });
    expect(rows.map((row) => [row.quantity, breakText(row)])).toEqual([
      [96, ''],
      [90, '96 cost no more in all than 90'],
      [30, '96 cost no more in all than 30'],
    ]);
  });

  test('a quantity without a cost keeps its reason, and is no measure for the others', () => {
    const because = 'the molds in use do not fit the plate';
    const rows = priceBreaks(
      [12, 24],
      (quantity) => (quantity === 12 ? { kind: 'no price', because } : costAt(quantity)),
      half,
    );
    expect(rows[0]).toEqual({ quantity: 12, price: { kind: 'no price', because } });
    expect(rows[1]).toMatchObject({ quantity: 24, price: { perPiece: 284 } });
    expect(rows.map(breakText)).toEqual(['', '']);
  });

  test('a piece never costs more with the quantity when cost is set-up and pieces alone', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 1, max: 2000 }), { maxLength: 12 }),
        fc.integer({ min: 0, max: 100_000 }),
        fc.integer({ min: 1, max: 1000 }),
        (quantities, setUp, each) => {
          const rows = priceBreaks(quantities, (quantity) => setUp + each * quantity, half);
          expect(rows.map(({ quantity }) => quantity)).toEqual(quantities);
          for (const row of rows) expect(row).not.toHaveProperty('dearerThan');
        },
      ),
    );
  });
});

describe('breakQuantities', () => {
  test.each([
    ['25, 50, 100, 250', [25, 50, 100, 250]],
    ['100;25 50,50', [25, 50, 100]],
    ['  ', []],
    ['7', [7]],
  ])('%j is %j', (text, quantities) => {
    expect(breakQuantities(text)).toEqual(quantities);
  });

  const wanted = 'break quantities must be whole numbers of pieces such as 25, 50, 100, got';
  test.each([
    ['25, x', `${wanted} "25, x"`],
    ['25, 0', `${wanted} "25, 0"`],
    ['2.5', `${wanted} "2.5"`],
    ['-5', `${wanted} "-5"`],
    ['1e3', `${wanted} "1e3"`],
    ['100001', `${wanted} "100001"`],
    [
      '1,2,3,4,5,6,7,8,9,10,11,12,13',
      'break quantities must be no more than 12 numbers, got "1,2,3,4,5,6,7,8,9,10,11,12,13"',
    ],
  ])('refuses %j', (text, sentence) => {
    expect(errorText(() => breakQuantities(text))).toBe(sentence);
  });

  test('takes any text: numbers or a sentence', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const refused = errorText(() => breakQuantities(text));
        if (refused === 'was accepted')
          for (const quantity of breakQuantities(text)) expect(quantity).toBeGreaterThan(0);
        else expect(refused).toMatch(/^break quantities must be /);
      }),
    );
  });
});
