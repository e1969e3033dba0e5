import { describe, expect, test } from 'vitest';
import type { QuoteValues } from '../../../shared/money/quote/quoteFieldTypes.ts';
import { readGoods } from '../../../shared/money/quote/readGoods.ts';
import { readPricing } from '../../../shared/money/quote/readPricing.ts';

const SHOP = Object.freeze({ currency: 'USD', targetMargin: 0.4 } as const);

function problemsOf(values: QuoteValues): readonly string[] {
  const read = readPricing(values, SHOP);
  return read.kind === 'refused' ? read.problems.map(({ field, text }) => `${field}: ${text}`) : [];
}

describe('readPricing', () => {
  test('blank fields are the shop’s target margin and no terms', () => {
    expect(readPricing({}, SHOP)).toEqual({
      kind: 'pricing',
      pricing: { aim: { by: 'margin', margin: 0.4 }, terms: {} },
    });
  });

  test.each([
    [{ aim: '45' }, { by: 'margin', margin: 0.45 }],
    [
      { by: 'target margin', aim: ' 45 % ' },
      { by: 'margin', margin: 0.45 },
    ],
    [
      { by: 'Markup', aim: '80%' },
      { by: 'markup', markup: 0.8 },
    ],
    [
      { by: 'price of a piece', aim: '1.85' },
      { by: 'price', perPiece: 185 },
    ],
  ])('%j is read as typed', (values, aim) => {
    expect(readPricing(values, SHOP)).toMatchObject({ kind: 'pricing', pricing: { aim } });
  });

  test('terms are read as the columns of Orders are, per cent as per cent', () => {
    const values = {
      rush: 'rush',
      discount: '7',
      shipping: '9.5',
      saleKind: 'Retail',
      exciseStatus: 'export',
    };
    expect(readPricing(values, SHOP)).toMatchObject({
      pricing: {
        terms: {
          rush: 'rush',
          discount: 0.07,
          shipping: 9.5,
          saleKind: 'retail',
          exciseStatus: 'export',
        },
      },
    });
  });

  test.each([
    [
      { by: 'feeling' },
      'by: price by must be one of target margin, markup, price of a piece, got "feeling"',
    ],
    [{ aim: '100' }, 'aim: target margin must be less than 100 %, got 100 %'],
    [{ aim: '-1' }, 'aim: target margin must be at least 0 %, got -1 %'],
    [{ aim: '%' }, 'aim: target margin must be a number (%), got "%"'],
    [{ aim: 'a lot' }, 'aim: target margin must be a number (%), got "a lot"'],
    [{ by: 'markup' }, 'aim: markup must be given, got nothing'],
    [{ by: 'markup', aim: '1e9' }, 'aim: markup must be at most 10000 %, got 1000000000 %'],
    [{ by: 'price of a piece' }, 'aim: price of a piece must be given, got nothing'],
    [{ by: 'price of a piece', aim: '-2' }, 'aim: price of a piece must be at least 0, got -2'],
    [
      { by: 'price of a piece', aim: '1.855' },
      'aim: price of a piece must be an amount that can be paid in USD, got "1.855"',
    ],
    [{ by: 'price of a piece', aim: 'NaN' }, 'aim: price of a piece must be a number, got "NaN"'],
    [{ rush: 'yes' }, 'rush: rush must be one of rush, got "yes"'],
    [{ discount: '100' }, 'discount: discount must be less than 100 %, got 100 %'],
    [{ shipping: '$9' }, 'shipping: shipping must be a number, got "$9"'],
    [{ shipping: '-1' }, 'shipping: shipping must be at least 0, got -1'],
    [{ saleKind: 'barter' }, 'saleKind: sale kind must be one of wholesale, retail, got "barter"'],
    [
      { exciseStatus: 'none' },
      'exciseStatus: excise status must be one of taxable, exempt, export, further manufacture, got "none"',
    ],
  ] as const)('%j is refused in one sentence at its field', (values, text) => {
    expect(problemsOf(values)).toEqual([text]);
  });

  test('everything that is wrong is said at once', () => {
    expect(problemsOf({ aim: 'x', discount: 'y', shipping: 'z' })).toHaveLength(3);
  });
});

describe('readGoods', () => {
  test('reads what is asked for', () => {
    const values = {
      mold: 'Stick',
      pattern: 'Dusk',
      quantity: '50',
      due: '2026-12-20',
      moldsInUse: '2',
    };
    expect(readGoods(values)).toEqual({
      kind: 'goods',
      record: { mold: 'Stick', pattern: 'Dusk', quantity: 50, due: '2026-12-20', moldsInUse: 2 },
    });
  });

  test.each([
    [
      {},
      [
        'mold must be given, got nothing',
        'pattern must be given, got nothing',
        'quantity must be given, got nothing',
      ],
    ],
    [{ mold: 'a', pattern: 'b', quantity: '2.5' }, ['quantity must be a whole number, got 2.5']],
    [{ mold: 'a', pattern: 'b', quantity: '0' }, ['quantity must be at least 1, got 0']],
    [{ mold: 'a', pattern: 'b', quantity: 'many' }, ['quantity must be a number, got "many"']],
    [{ mold: 'a', pattern: 'b', quantity: '5', due: 'soon' }, ['due must be a date, got "soon"']],
    [
      { mold: 'a', pattern: 'b', quantity: '5', moldsInUse: '99' },
      ['molds in use must be at most 50, got 99'],
    ],
  ])('%j is refused in full sentences', (values, texts) => {
    const read = readGoods(values);
    expect(read.kind === 'refused' && read.problems.map(({ text }) => text)).toEqual(texts);
  });
});
