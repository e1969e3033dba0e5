import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nameKey } from '../../../shared/book/bookIndex.ts';
import { CURRENCY_CODES } from '../../../shared/book/currencies.ts';
import { indexCosts } from '../../../shared/money/cost/costIndex.ts';
import type { CostLine } from '../../../shared/money/cost/costLine.ts';
import { orderCost } from '../../../shared/money/cost/orderCost.ts';
import { planMoney } from '../../../shared/money/planMoney.ts';
import { usesOf } from '../../../shared/money/stock/usesOf.ts';
import { evenReal } from '../../evenReal.ts';
import { demoMoneyBook } from '../stock/demoMoneyBook.ts';
import { costs, PRICED, roundPlan } from './costBook.ts';

const SHOP = { laborRate: 24, energyPrice: 0.2, moldWear: 0.05, overheadShare: 0.15 } as const;
const books = () => costs({ shop: SHOP });
const figures = (lines: readonly CostLine[]) =>
  lines.map(({ label, amount, unit, minor }) => [
    label,
    amount === undefined ? '' : Number(amount.toPrecision(9)),
    unit,
    minor,
  ]);

describe('orderCost', () => {
  test('is the order worked out by hand, line by line', () => {
    const cost = orderCost(books(), roundPlan(), 'new pattern');
    expect(figures(cost.lines)).toEqual([
      // 1.03 kg at 1.03 g/mL is 1000 mL, at 60 for 4000 mL
      ['Soft plastisol, belly', 1000, 'mL', 1500],
      ['Soft plastisol, vein', 500, 'mL', 750],
      // 1.5 g in each of 4 cups at 1.5 g/mL is 4 mL, at 8 for 100 mL
      ['White dispersion, belly', 4, 'mL', 32],
      // 1 g in each of 2 cups, at 10 for 50 g
      ['Pearl powder, vein', 2, 'g', 40],
      // 40 pieces in packs of 10, at 6 for 100
      ['Zip bag, per pack', 4, 'each', 24],
      // 40 pieces ordered and not the 48 poured, at 5 for 20
      ['Worm hook, per piece', 40, 'each', 1000],
      ['Label, per order', 1, 'each', 3],
      // 45 min at 24 an hour
      ['Matching the colors of a new pattern', 0.75, 'h', 1800],
      ['Set-up and putting away', 0.333333333, 'h', 800],
      ['Weighing and coloring', 0.5, 'h', 1200],
      ['Heating, attended', 0.166666667, 'h', 400],
      ['Pouring', 0.25, 'h', 600],
      ['Demolding, inspecting, packing', 0.375, 'h', 900],
      // 7.2 MJ and 1.8 MJ at 0.20 a kWh
      ['Plate', 2, 'kWh', 40],
      ['Microwave', 0.5, 'kWh', 10],
      // 3 rounds of 2 molds at 0.05
      ['Mold wear', 6, 'fillings', 30],
      // 15 % of 15 + 7.5 + 0.32 + 0.4 + 0.24 + 10 + 0.03 + 18 + 8 + 12 + 4 + 6 + 9 = 90.49
      ['Overhead, 15 % of material and work', 90.49, 'USD', 1357],
    ]);
    expect(cost.total).toBe(10486); // 90.49 + 0.40 + 0.10 + 0.30 + 13.57
    expect(cost.perGood).toBe(262.15);
    // 4 of 48 pieces of 15 + 7.5 + 0.32 + 0.4 + 12 + 4 + 6 + 9 = 54.22
    expect(cost.scrap).toEqual({ pieces: 4, minor: 452 });
    expect(cost.assumptions).toEqual([]);
  });

  test('a known pattern costs no work on its colors, and no overhead on that work', () => {
    const known = orderCost(books(), roundPlan(), 'known pattern');
    expect(known.lines.map(({ key }) => key)).not.toContain('color match');
    expect(known.total).toBe(8416); // 72.49 + 0.80 + 15 % of 72.49
  });

  test('every line is its amount times its rate, and the total their sum, in every currency', () => {
    const settings = fc.record({
      currency: fc.constantFrom(...CURRENCY_CODES),
      laborRate: evenReal(0, 1e5),
      energyPrice: evenReal(0, 100),
      moldWear: evenReal(0, 100),
      overheadShare: evenReal(0, 3),
      colorMatchTime: evenReal(0, 1e5),
    });
    const plan = roundPlan();
    fc.assert(
      fc.property(settings, (shop) => {
        const { lines, total, scrap } = orderCost(costs({ shop }), plan, 'new pattern');
        expect(total).toBe(lines.reduce((sum, { minor }) => sum + minor, 0));
        expect([total, scrap.minor].every(Number.isSafeInteger)).toBe(true);
        const digits = shop.currency === 'KWD' ? 3 : ['JPY', 'KRW'].includes(shop.currency) ? 0 : 2;
        for (const { amount = 0, rate = 0, minor } of lines) {
          expect(Number.isSafeInteger(minor)).toBe(true);
          expect(minor).toBeNear(amount * rate * 10 ** digits, { absolute: 0.5 + 1e-6 }); // rounded once
        }
        expect(scrap.minor).toBeLessThanOrEqual(total);
      }),
    );
  });

  test('twice the prices of materials make their lines twice as much, and leave the others', () => {
    const dearer = PRICED.map((one) => ({ ...one, packPrice: 2 * (one.packPrice ?? 0) }));
    const before = orderCost(books(), roundPlan(), 'known pattern').lines;
    const after = orderCost(
      costs({ shop: SHOP, materials: dearer }),
      roundPlan(),
      'known pattern',
    ).lines;
    const bought = ['material', 'colorant', 'supplies'];
    before.forEach(({ key, minor }, index) => {
      if (key === 'overhead') return;
      expect(after[index]?.minor).toBe(bought.includes(key) ? 2 * minor : minor);
    });
  });

  test('uses up of every material what its uses take out of stock', () => {
    const book = demoMoneyBook();
    const index = indexCosts(book);
    for (const row of book.orders) {
      const money = planMoney(index, row);
      if (money.kind === 'missing') throw new Error('the demo has a plan for every order');
      const { uses } = usesOf(index.index, money.plan, {
        supplies: book.supplies,
        packPieces: book.shop.packPieces,
        isOrderSupplied: false,
      });
      const amounts = new Map<string, number>();
      for (const { label, key, amount = 0 } of money.cost.lines)
        if (['material', 'colorant', 'supplies'].includes(key)) {
          const name = nameKey(label.slice(0, label.lastIndexOf(',')));
          amounts.set(name, (amounts.get(name) ?? 0) + amount);
        }
      expect([...amounts.keys()].sort()).toEqual(uses.map(({ key }) => key).sort());
      for (const { key, amount } of uses)
        expect(amounts.get(key)).toBeNear(amount, { relative: 1e-9 }); // sums in another order
    }
  });

  test('the price of stock is its weighted average, before the list price', () => {
    const stockMoves = [
      {
        date: '2026-11-01',
        material: 'Soft plastisol',
        amount: 4000,
        reason: 'purchase',
        money: 60,
      },
      {
        date: '2026-11-02',
        material: 'Soft plastisol',
        amount: 4000,
        reason: 'purchase',
        money: 100,
      },
    ] as const;
    const [belly] = orderCost(costs({ stockMoves }), roundPlan(), 'known pattern').lines;
    expect(belly).toMatchObject({ rate: 0.02, from: 'stock', minor: 2000 }); // 160 for 8000 mL
  });

  test('a plate that never gets the mold hot costs no electricity and says so', () => {
    const cost = orderCost(books(), roundPlan({ energy: { oven: 0 } }), 'known pattern');
    expect(cost.lines.map(({ label }) => label)).not.toContain('Plate');
    expect(cost.assumptions).toEqual([
      'The mold never gets hot enough as planned, so the plate’s electricity is left out.',
    ]);
  });
});

describe('what the book does not say', () => {
  const noted = (changes: Parameters<typeof costs>[0]) =>
    orderCost(costs(changes), roundPlan(), 'known pattern');
  const without = (material: string, change: object) =>
    PRICED.map((one) => (one.material === material ? { ...one, ...change } : one));

  test.each([
    {
      given: 'a price',
      materials: without('Soft plastisol', { packPrice: undefined }),
      expected: 'No price of Soft plastisol is in Materials, so it counts as 0.',
    },
    {
      given: 'the price of a supply',
      materials: without('Label', { packSize: undefined }),
      expected: 'No price of Label is in Materials, so it counts as 0.',
    },
    {
      given: 'a pack unit',
      materials: without('Pearl powder', { packUnit: undefined }),
      expected: 'pack unit of Pearl powder must be given in Materials; until then it counts as 0.',
    },
    {
      given: 'a density that the pack needs',
      materials: without('Soft plastisol', { density: undefined }),
      expected: 'No density of Soft plastisol is in Materials, so 1.04 g/mL is taken.',
    },
    {
      given: 'a pack that can be weighed',
      materials: without('Pearl powder', { packUnit: 'each' }),
      expected:
        'Pearl powder is bought by the piece: a weight or volume does not say how many it is; until then it counts as 0.',
    },
  ])('without $given it is named, once', ({ materials, expected }) => {
    expect(noted({ materials }).assumptions).toEqual([expected]);
  });

  test('supplies that are half typed, or for a mold or material that is not there, are named', () => {
    const supplies = [
      { material: 'Zip bag', per: 'pack' },
      { mold: 'Ribed 4 in', material: 'Zip bag', amount: 1, per: 'pack' },
      { material: 'Ring', amount: 1, per: 'piece' },
    ] as const;
    const cost = noted({ supplies });
    expect(cost.assumptions).toEqual([
      'Supplies row 2 is not complete, so it counts as 0.',
      'Supplies row 3 is for Ribed 4 in, which is not in Molds.',
      'Ring in Supplies row 4 is not in Materials.',
      'No price of Ring is in Materials, so it counts as 0.',
    ]);
    expect(cost.lines.find(({ label }) => label === 'Ring, per piece')?.minor).toBe(0);
  });

  test('no materials, supplies and moves at all leave a cost of work, and a sentence for each material', () => {
    const cost = noted({ materials: [], supplies: [] });
    expect(cost.lines.filter(({ minor }) => minor > 0).map(({ key }) => key)).not.toContain(
      'material',
    );
    expect(cost.assumptions[0]).toBe(
      'pack unit of Soft plastisol must be given in Materials; until then it counts as 0.',
    );
    expect(cost.assumptions).toHaveLength(3);
  });
});
