import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { indexCosts } from '../../../shared/money/cost/costIndex.ts';
import { planMoney } from '../../../shared/money/planMoney.ts';
import { AIM_KINDS } from '../../../shared/money/quote/quoteFieldTypes.ts';
import { pieceMarkup, quotePrices } from '../../../shared/money/quote/quotePrices.ts';
import { readPricing } from '../../../shared/money/quote/readPricing.ts';
import { turnedAim } from '../../../shared/money/quote/turnedAim.ts';
import { demoMoneyBook } from '../stock/demoMoneyBook.ts';
import { factsOf, pricesOf, pricing } from './quoteBench.ts';

const FACTS = factsOf();

describe('quotePrices', () => {
  test('is the price of the same row in Orders, at the target margin', () => {
    const costs = indexCosts(demoMoneyBook());
    const row = costs.index.book.orders.find(({ record }) => record.order === '1012');
    if (row === undefined) throw new Error('no order 1012');
    const { rush, shipping, saleKind } = row.record;
    const facts = factsOf({ ...row.record, order: '1012' });
    const { price } = quotePrices(facts, pricing({ terms: { rush, shipping, saleKind } }));
    const money = planMoney(costs, row);
    if (money.kind === 'missing') throw new Error('no money');
    expect(price).toEqual(money.price);
  });

  test('prices the quantity asked for and those of the table, from the fewest up', () => {
    const { breaks, price } = pricesOf(factsOf({ quantity: 60 }), pricing());
    expect(breaks.map(({ quantity }) => quantity)).toEqual([25, 50, 60, 100, 250]);
    expect(breaks[2]?.price).toEqual(price);
  });

  test('a typed price stands as typed in the table too, and the others get the same markup', () => {
    fc.assert(
      fc.property(fc.integer({ min: 125, max: 900 }), (perPiece) => {
        const { price, breaks } = pricesOf(FACTS, pricing({ aim: { by: 'price', perPiece } }));
        expect(price.perPiece).toBe(perPiece);
        const own = breaks.find(({ quantity }) => quantity === 50)?.price;
        expect(own).toEqual(price);
        const carried = FACTS.quantities.find(({ quantity }) => quantity === 50)?.carried ?? 0;
        const markup = pieceMarkup(perPiece, carried / 50, {
          excise: {
            isOn: true,
            rate: 0.1,
            baseShare: 1,
            taxIn: 'inside the price',
            status: 'taxable',
          },
        });
        const by = pricesOf(FACTS, pricing({ aim: { by: 'markup', markup: markup ?? -1 } }));
        const step = perPiece % 5 === 0 ? 0 : 5;
        breaks.forEach((one, index) => {
          const other = by.breaks[index]?.price;
          if (one.price.kind === 'no price' || other?.kind !== 'price') throw new Error('no price');
          expect(other.perPiece - one.price.perPiece).toBeGreaterThanOrEqual(0);
          expect(other.perPiece - one.price.perPiece).toBeLessThanOrEqual(Math.max(0, step - 1));
        });
      }),
      { numRuns: 60 },
    );
  });

  test('a price below the cost stands alone, with the loss it makes', () => {
    const { price, breaks } = pricesOf(FACTS, pricing({ aim: { by: 'price', perPiece: 60 } }));
    expect(breaks).toHaveLength(1);
    expect(price.margin).toBeLessThan(0);
  });

  test('a quantity that cannot be planned has its reason in place of a price', () => {
    const facts = {
      ...FACTS,
      quantities: FACTS.quantities.map((one) =>
        one.quantity === 250 ? { quantity: 250, because: 'too many' } : one,
      ),
    };
    const { breaks } = pricesOf(facts, pricing());
    expect(breaks[3]?.price).toEqual({ kind: 'no price', because: 'too many' });
  });

  test('the color match of a new pattern is charged by itself and paid for once', () => {
    const { quantities, cost } = FACTS;
    expect(FACTS.matching).toBe('known pattern');
    const fresh = {
      ...FACTS,
      matching: 'new pattern' as const,
      quantities: quantities.map((one) => ({ ...one, cost: (one.cost ?? 0) + 1900 })),
      cost: { ...cost, total: cost.total + 1900 },
    };
    const { price } = pricesOf(fresh, pricing());
    expect(price.perPiece).toBe(pricesOf(FACTS, pricing()).price.perPiece);
    expect(price.lines.map(({ key }) => key)).toContain('color match');
    expect(price.cost).toBe(cost.total + 1900);
  });
});

describe('turnedAim', () => {
  test('turning the way a price is set leaves the price of a piece where it is', () => {
    const ways = fc.constantFrom(...AIM_KINDS);
    // On the step of 0.05: a price off it is rounded up again by margin and markup.
    fc.assert(
      fc.property(fc.integer({ min: 25, max: 200 }), ways, ways, (steps, one, other) => {
        const first = pricing({ aim: { by: 'price', perPiece: steps * 5 } });
        let asked = first;
        for (const by of [one, other]) {
          const read = readPricing({ by, aim: turnedAim(FACTS, asked, by) }, FACTS.shop);
          if (read.kind === 'refused') throw new Error(JSON.stringify(read.problems));
          asked = read.pricing;
        }
        expect(pricesOf(FACTS, asked).price.perPiece).toBe(steps * 5);
      }),
      { numRuns: 80 },
    );
  });

  test('a price below the cost has no markup to type', () => {
    const low = pricing({ aim: { by: 'price', perPiece: 60 } });
    expect(turnedAim(FACTS, low, 'markup')).toBe('');
    expect(turnedAim(FACTS, low, 'price of a piece')).toBe('0.6');
  });
});
