import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { NoPrice, Price, PriceTerms } from '../../../shared/money/price/price.ts';
import { priceFrom } from '../../../shared/money/price/priceFrom.ts';
import { evenReal } from '../../evenReal.ts';
import { errorText } from '../../heat/errorText.ts';
import { anyOrder, anyTerms, PLAIN, TAXED } from './terms.ts';

function priced(answer: Price | NoPrice): Price {
  if (answer.kind !== 'price') throw new Error(answer.because);
  return answer;
}

const order = Object.freeze({ pieces: 80, cost: 8800 });
const priceOf = (terms: Partial<PriceTerms>) => priced(priceFrom(order, { ...PLAIN, ...terms }));
const labels = ({ lines }: Price) => lines.map(({ label, minor }) => `${label}: ${minor}`);

describe('priceFrom', () => {
  test.each([
    { aim: { by: 'margin', margin: 0.45 }, priceStep: 0.05, perPiece: 200 },
    { aim: { by: 'margin', margin: 0.45 }, priceStep: 0, perPiece: 200 },
    { aim: { by: 'margin', margin: 0.45 }, priceStep: 0.75, perPiece: 225 },
    { aim: { by: 'margin', margin: 0 }, priceStep: 0, perPiece: 110 },
    { aim: { by: 'markup', markup: 0.5 }, priceStep: 0.05, perPiece: 165 },
    { aim: { by: 'price', perPiece: 99 }, priceStep: 0.05, perPiece: 99 },
  ] as const)('a cost of 1.10 at $aim in steps of $priceStep is $perPiece', (given) => {
    expect(priceOf(given).perPiece).toBe(given.perPiece);
  });

  test('a markup of 50 % on 40 makes 60 at a margin of 33.33 %', () => {
    const aim = { by: 'markup', markup: 0.5 } as const; // MARGIN-MARKUP
    const price = priced(priceFrom({ pieces: 1, cost: 4000 }, { ...PLAIN, aim }));
    expect(price.total).toBe(6000);
    expect(price.margin).toBeNear(0.3333, { absolute: 5e-5 }); // printed to two places of per cent
    expect(price.markup).toBe(0.5);
  });

  test('every line has its words and its figure, in the order a customer reads them', () => {
    const price = priceOf({
      rushShare: 0.25,
      colorMatchCharge: 25,
      discount: 0.1,
      minimumOrder: 250,
      shipping: 12.5,
      salesTaxRate: 0.0625,
      depositShare: 0.5,
      excise: { ...TAXED, taxIn: 'added to the price' },
    });
    expect(labels(price)).toEqual([
      '80 pieces at $2.00: 16000',
      'Rush charge 25 %: 4000',
      'Color matching of a new pattern: 2500',
      'Discount 10 %: -2250',
      'Up to the minimum order: 4750',
      'Federal excise tax: 2500',
      'Shipping: 1250',
      'Sales tax 6.25 %: 1719',
    ]);
    expect(price).toMatchObject({
      goods: 25_000,
      total: 30_469,
      deposit: 15_235,
      balance: 15_234,
      net: 25_000,
      margin: 0.648,
    });
  });

  test('one piece is a piece', () => {
    const price = priced(priceFrom({ pieces: 1, cost: 110 }, PLAIN));
    expect(labels(price)).toEqual(['1 piece at $2.00: 200']);
  });

  test('tax inside lifts the price of a piece so that the margin is kept after it', () => {
    const price = priceOf({ excise: TAXED });
    expect(price.perPiece).toBe(220);
    expect(price.excise).toMatchObject({ base: 16_000, tax: 1600, inside: 1600, added: 0 });
    expect(price.net).toBe(16_000);
    expect(price.margin).toBe(0.45);
    expect(priceOf({ excise: { ...TAXED, status: 'export' } }).perPiece).toBe(200);
  });

  test('shipping is taxed by neither tax', () => {
    const bare = priceOf({ excise: TAXED, salesTaxRate: 0.06 });
    const shipped = priceOf({ excise: TAXED, salesTaxRate: 0.06, shipping: 40 });
    expect(shipped.total - bare.total).toBe(4000);
    expect(shipped.margin).toBe(bare.margin);
  });

  test('all given away is no margin, and no division', () => {
    const price = priceOf({ discount: 1 });
    expect(price.total).toBe(0);
    expect(price).not.toHaveProperty('margin');
    expect(price.markup).toBe(-1);
  });

  test.each([
    [
      { pieces: 10, cost: 0 },
      PLAIN,
      'the cost is 0, and no margin on nothing makes a price: enter what it costs',
    ],
    [
      { pieces: 1, cost: 1e14 },
      PLAIN,
      'so high a margin makes a price past all sense: lower the margin',
    ],
    [
      { pieces: 100_000, cost: 1 },
      { ...PLAIN, aim: { by: 'price', perPiece: 2e9 } },
      'so many pieces at that price pass all sense',
    ],
  ] as const)('%j has no price', (given, terms, because) => {
    expect(priceFrom(given, terms)).toEqual({ kind: 'no price', because });
  });

  test.each([
    [{ aim: { by: 'margin', margin: 1 } }, 'margin must be less than 1, got 1'],
    [{ aim: { by: 'margin', margin: 45 } }, 'margin must be less than 1, got 45'],
    [{ aim: { by: 'markup', markup: -0.2 } }, 'markup must be at least 0, got -0.2'],
    [{ aim: { by: 'price', perPiece: 1.5 } }, 'price of a piece must be a whole number, got 1.5'],
    [{ priceStep: -1 }, 'price step must be at least 0, got -1'],
    [{ discount: 1.1 }, 'discount must be at most 1, got 1.1'],
    [{ shipping: Number.NaN }, 'shipping must be a number, got not a number'],
    [{ minimumOrder: 1e12 }, 'minimum order must be at most 100000000000, got 1000000000000'],
    [{ rushShare: 25 }, 'rush charge must be at most 10, got 25'],
    [{ colorMatchCharge: -1 }, 'color match charge must be at least 0, got -1'],
    [{ salesTaxRate: 6 }, 'sales tax must be at most 1, got 6'],
    [{ depositShare: 50 }, 'deposit must be at most 1, got 50'],
    [{ excise: { ...TAXED, rate: 10 } }, 'excise rate must be at most 1, got 10'],
    [
      { excise: { ...TAXED, baseShare: 0 } },
      'share of the price that is taxed must be greater than 0, got 0',
    ],
  ] as const)('refuses %j', (terms, sentence) => {
    expect(errorText(() => priceOf(terms))).toBe(sentence);
  });

  test.each([
    [{ pieces: 0, cost: 5 }, 'pieces must be at least 1, got 0'],
    [{ pieces: 1.5, cost: 5 }, 'pieces must be a whole number, got 1.5'],
    [{ pieces: 5, cost: -1 }, 'cost must be at least 0, got -1'],
    [{ pieces: 5, cost: 0.5 }, 'cost must be a whole number, got 0.5'],
  ])('refuses %j', (given, sentence) => {
    expect(errorText(() => priceFrom(given, PLAIN))).toBe(sentence);
  });
});

describe('any price', () => {
  test('is whole smallest units throughout, and adds up exactly', () => {
    fc.assert(
      fc.property(anyOrder, anyTerms, (given, terms) => {
        const price = priceFrom(Object.freeze(given), Object.freeze(terms));
        fc.pre(price.kind === 'price');
        const { lines, subtotal, goods, excise, shipping, salesTax, total } = price;
        for (const { minor } of lines) expect(Number.isInteger(minor)).toBe(true);
        expect(lines.reduce((sum, { minor }) => sum + minor, 0)).toBe(total);
        expect(goods + excise.added + shipping + salesTax).toBe(total);
        expect(subtotal).toBe(price.perPiece * given.pieces);
        expect(price.deposit + price.balance).toBe(total);
        expect(price.net + excise.inside).toBe(goods);
        expect(price.deposit).toBeGreaterThanOrEqual(0);
        expect(price.deposit).toBeLessThanOrEqual(total);
        for (const figure of Object.values(price))
          if (typeof figure === 'number') expect(Number.isFinite(figure)).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });

  test('keeps at least the margin aimed at, but for the rounding of the tax', () => {
    const shared = evenReal(0, 0.9);
    fc.assert(
      fc.property(anyOrder, anyTerms, shared, (given, terms, margin) => {
        const price = priceFrom(given, {
          ...terms,
          aim: { by: 'margin', margin },
          discount: 0,
          minimumOrder: 0,
        });
        fc.pre(price.kind === 'price');
        // half a unit of rounded tax, and a millionth of a millionth of the price forgiven at the step
        const slack = 0.5 + price.goods * 2e-12;
        expect(price.net + slack).toBeGreaterThanOrEqual(given.cost / (1 - margin));
      }),
      { numRuns: 500 },
    );
  });

  test('goods never fall below the minimum order, and a greater discount never raises them', () => {
    fc.assert(
      fc.property(anyOrder, anyTerms, (given, terms) => {
        const price = priceFrom(given, terms);
        const full = priceFrom(given, { ...terms, discount: 0 });
        fc.pre(price.kind === 'price' && full.kind === 'price');
        expect(price.goods).toBeLessThanOrEqual(full.goods);
        const least = priceFrom(given, { ...terms, discount: 1 });
        if (least.kind === 'price') expect(price.goods).toBeGreaterThanOrEqual(least.goods);
      }),
    );
  });
});
