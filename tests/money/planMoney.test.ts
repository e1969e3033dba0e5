import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { indexCosts } from '../../shared/money/cost/costIndex.ts';
import { type OrderMoney, planMoney } from '../../shared/money/planMoney.ts';
import { quoteFacts } from '../../shared/money/quote/quoteFacts.ts';
import { planRow } from '../../shared/plan/planOrder.ts';
import { DEMO, withChange } from '../book/demoBook.ts';
import { type CostChanges, costBook, costs } from './cost/costBook.ts';
import { demoMoneyBook } from './stock/demoMoneyBook.ts';

/** The money of the demo's first order, a three-layer pattern in version 2. */
function money(changes: CostChanges = {}, place = 0): OrderMoney {
  const index = costs(changes);
  const row = index.index.book.orders[place];
  const result = row && planMoney(index, row);
  if (result?.kind !== 'money') throw new Error(JSON.stringify(result));
  return result;
}

const first = (change: object) => withChange(DEMO.orders, 0, change);
const priced = ({ price }: OrderMoney) => {
  if (price.kind !== 'price') throw new Error(price.because);
  return price;
};

describe('planMoney', () => {
  test('the quote price of a piece reaches the target margin, and not a step more', () => {
    const { carried, ...rest } = money({ shop: { excise: 'off' } });
    const { perPiece, pieces, goods } = priced({ carried, ...rest });
    expect(goods).toBe(perPiece * pieces);
    expect((goods - carried) / goods).toBeGreaterThanOrEqual(0.45);
    expect((goods - 5 * pieces - carried) / (goods - 5 * pieces)).toBeLessThan(0.45);
    expect(perPiece % 5).toBe(0);
  });

  test('the agreed price keeps what the tax inside it and the cost leave', () => {
    const { agreed, cost } = money({ orders: first({ priceAgreed: 110 }) });
    // 110 with 10 % inside: 10 of tax, 100 kept
    expect(agreed).toMatchObject({ goods: 11000, net: 10000, excise: { tax: 1000, base: 10000 } });
    expect(agreed?.margin).toBeNear((10000 - cost.total) / 10000, { relative: 1e-12 }); // arithmetic only
    const exempt = money({ orders: first({ priceAgreed: 110, exciseStatus: 'exempt' }) });
    expect(exempt.agreed?.net).toBe(11000);
    expect(money().agreed).toBeUndefined();
  });

  test('rush, discount, shipping and sales tax come from the order and the shop', () => {
    const shop = { salesTaxRate: 0.06, rushShare: 0.25 };
    const order = { rush: 'rush', discount: 0.1, shipping: 8, saleKind: 'retail' };
    const { terms } = money({ shop, orders: first(order) });
    expect(terms).toMatchObject({
      rushShare: 0.25,
      discount: 0.1,
      shipping: 8,
      salesTaxRate: 0.06,
      excise: { isOn: true, status: 'taxable', baseShare: 1 },
    });
    expect(money({ shop }).terms).toMatchObject({ rushShare: 0, discount: 0, salesTaxRate: 0 });
  });

  test('a constructive price is for retail sales, and no excise is due outside the US', () => {
    const shop = { exciseBase: 'constructive price', constructiveShare: 0.7 } as const;
    const retail = first({ saleKind: 'retail' });
    expect(money({ shop, orders: retail }).terms.excise.baseShare).toBe(0.7);
    expect(money({ shop }).terms.excise.baseShare).toBe(1);
    expect(money({ shop: { currency: 'EUR' } }).terms.excise.isOn).toBe(false);
  });

  test('work on a new pattern’s colors is charged by itself, or else carried by the pieces', () => {
    const orders = first({ version: 1 });
    const charged = money({ orders, pourLog: [] });
    expect(charged.matching).toBe('new pattern');
    expect(charged.terms.colorMatchCharge).toBe(25);
    // 45 min at 22 an hour and 15 % overhead, to a cent
    expect(charged.cost.total - charged.carried).toBeNear(1898, { absolute: 1 });
    expect(priced(charged).cost).toBe(charged.cost.total);
    const { net, margin } = priced(charged);
    expect(margin).toBeNear((net - charged.cost.total) / net, { relative: 1e-12 }); // arithmetic only
    const free = money({ orders, pourLog: [], shop: { colorMatchCharge: 0 } });
    expect(free.carried).toBe(free.cost.total);
    expect(priced(free).perPiece).toBeGreaterThan(priced(charged).perPiece);
  });

  test('what is refused in the money columns is named and not taken as blank', () => {
    const book = costBook();
    const error = { field: 'discount', rule: { kind: 'number' }, value: 'some' } as never;
    const problems = [{ sheet: 'Orders', row: 2, heading: 'Discount', error } as const];
    const index = indexCosts({ ...book, problems });
    const [row] = book.orders;
    expect(row && planMoney(index, row)).toMatchObject({
      kind: 'missing',
      missing: [{ sheet: 'Orders', row: 2, text: 'discount must be a number, got "some"' }],
    });
  });

  test('a refused setting counts at its default, and that is said', () => {
    const book = costBook();
    const error = { field: 'labor rate', rule: { kind: 'number' }, value: 'x' } as never;
    const elsewhere = { field: 'set-up time', rule: { kind: 'number' }, value: 'x' } as never;
    const index = indexCosts({
      ...book,
      problems: [
        { sheet: 'Shop', row: 30, heading: 'Labor rate', error },
        { sheet: 'Shop', row: 29, heading: 'Set-up time', error: elsewhere },
        { sheet: 'Molds', row: 3, heading: 'Overhead', error: elsewhere },
      ],
    });
    const [row] = book.orders;
    expect(row && planMoney(index, row)).toMatchObject({
      assumptions: ['In Shop, labor rate must be a number, got "x"; its default is taken.'],
    });
  });

  test('an order without a plan names all that is missing, its money gaps apart', () => {
    const index = costs({ orders: first({ mold: 'Minnow 9' }) });
    const [row] = index.index.book.orders;
    expect(row && planMoney(index, row)).toEqual({
      kind: 'missing',
      order: '2041',
      row: 2,
      missing: [
        {
          sheet: 'Orders',
          row: 2,
          heading: 'Mold',
          text: 'mold must be listed in Molds, got "Minnow 9"',
        },
      ],
      moneyGaps: [],
    });
  });

  test('a figure past all sense is a sentence and no number', () => {
    const index = costs({ shop: { laborRate: 1e15 } });
    const [row] = index.index.book.orders;
    expect(row && planMoney(index, row)).toMatchObject({
      kind: 'missing',
      missing: [{ text: expect.stringMatching(/ must be at most 100000000000, got \d+/) }],
    });
  });

  // One cup more can save reheating fuller ones, so that time by the microwave may fall with one piece more.
  test('more pieces never cost less in all, but for heating', () => {
    const book = demoMoneyBook();
    const index = indexCosts(book);
    const orders = fc.constantFrom(...book.orders);
    fc.assert(
      fc.property(orders, fc.integer({ min: 1, max: 400 }), (row, quantity) => {
        const at = (pieces: number) => {
          const money = planMoney(index, { ...row, record: { ...row.record, quantity: pieces } });
          if (money.kind === 'missing') return Number.NaN;
          const steady = money.cost.lines.filter(
            ({ key, label }) =>
              key !== 'energy' && key !== 'overhead' && label !== 'Heating, attended',
          );
          return steady.reduce((sum, { minor }) => sum + minor, 0);
        };
        expect(at(quantity + 1)).toBeGreaterThanOrEqual(at(quantity));
      }),
      { numRuns: 200 },
    );
  });
});

describe('the quantities of a quote', () => {
  test('cost what orders of those quantities would cost, and the order’s own is among them', () => {
    const book = demoMoneyBook();
    const row = book.orders[9];
    if (row === undefined) throw new Error('no such order');
    const facts = quoteFacts(indexCosts(book), row);
    if ('missing' in facts) throw new Error('no plan');
    expect(facts.quantities.map(({ quantity }) => quantity)).toEqual([25, 50, 100, 120, 250]);
    for (const { quantity, carried, cost } of facts.quantities) {
      const alone = { ...row, record: { ...row.record, quantity } };
      const own = planMoney(indexCosts(book), alone);
      expect(own).toMatchObject({ carried, cost: { total: cost } });
    }
  });

  test('one that no number of pieces reaches has no cost, and says why', () => {
    const pourLog = [{ mold: 'Ribbed 4 in', pattern: 'Creek minnow', poured: 400, good: 6 }];
    const index = costs({ pourLog, shop: { breakQuantities: '5000' } });
    const [row] = index.index.book.orders;
    const facts = row && quoteFacts(index, { ...row, record: { ...row.record, quantity: 2 } });
    if (facts === undefined || 'missing' in facts) throw new Error('no plan');
    const [few, many] = facts.quantities;
    expect(few?.cost).toBeGreaterThan(0);
    expect(many).toEqual({
      quantity: 5000,
      because: expect.stringMatching(
        /^no number of pieces of Creek minnow in Ribbed 4 in is enough/,
      ),
    });
  });

  test('an order and four breaks take far less than 150 ms', () => {
    const book = demoMoneyBook();
    const times = book.orders.map((row) => {
      const index = indexCosts(book);
      const start = process.cpuUsage().user;
      expect(quoteFacts(index, row)).toHaveProperty('quantities');
      return (process.cpuUsage().user - start) / 1000; // [ms] of this process alone, whatever else the machine does
    });
    const [middle = 0] = times.sort((one, other) => one - other).slice(6);
    expect(middle).toBeLessThan(150);
  });
});

describe('patternMatching', () => {
  const matchingOf = (
    order: object,
    others: readonly object[] = [],
    pourLog: readonly object[] = [],
    place = 0,
  ) => {
    const orders = [
      { order: 'a', mold: 'Paddle 3 in', pattern: 'Two tone', quantity: 10, ...order },
    ];
    const more = others.map((one, at) => ({ ...orders[0], order: `b${at}`, ...one }));
    const index = costs({ orders: [...orders, ...more], pourLog });
    const row = index.index.book.orders[place];
    const money = row && planMoney(index, row);
    return money?.kind === 'money' ? money.matching : planRow(index.index, row as never);
  };

  test('the first order of version 1 is new', () => {
    expect(matchingOf({ date: '2026-11-02' }, [{ date: '2026-11-03' }])).toBe('new pattern');
    expect(matchingOf({}, [{}])).toBe('new pattern');
    expect(matchingOf({}, [{}], [], 1)).toBe('known pattern');
    const day = { date: '2026-11-02' };
    expect(matchingOf(day, [day], [], 1)).toBe('known pattern');
    expect(matchingOf(day, [{ date: undefined }], [], 1)).toBe('known pattern');
  });

  test.each([
    ['an earlier order', [{ date: '2026-11-01' }], []],
    ['an earlier order, however it is written', [{ date: '2026-11-01', pattern: ' TWO tone' }], []],
    [
      'another order in the pour log',
      [],
      [{ pattern: 'Two tone', order: 'z', poured: 4, good: 4 }],
    ],
    ['a pour without an order', [], [{ pattern: 'Two tone', poured: 4, good: 4 }]],
  ])('after %s it is known', (_name, others, pourLog) => {
    expect(matchingOf({ date: '2026-11-02' }, others, pourLog)).toBe('known pattern');
  });

  test('an order that was only asked for or called off, and its own pours, change nothing', () => {
    const others = ['asked', 'canceled'].map((status) => ({ date: '2026-11-01', status }));
    const pourLog = [{ pattern: 'Two tone', order: 'a', poured: 4, good: 4 }];
    expect(matchingOf({ date: '2026-11-02' }, others, pourLog)).toBe('new pattern');
  });

  test('a later version is a change to a pattern that is known', () => {
    expect(money({ pourLog: [] }).matching).toBe('known pattern');
  });
});
