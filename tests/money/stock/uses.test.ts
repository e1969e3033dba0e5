import { describe, expect, test } from 'vitest';
import type { MoneyBook } from '../../../shared/book/book.ts';
import { indexBook, type OrderRow } from '../../../shared/book/bookIndex.ts';
import type { MaterialRecord, SupplyRecord } from '../../../shared/book/tables.ts';
import { orderUses } from '../../../shared/money/stock/orderUses.ts';
import { type Use, usesOf } from '../../../shared/money/stock/usesOf.ts';
import { planOrder } from '../../../shared/plan/planOrder.ts';
import type { OrderPlan } from '../../../shared/plan/planTypes.ts';
import { DEMO, type DemoChanges, demoBook, withChange } from '../../book/demoBook.ts';

const UNITS = ['gal', 'lb', 'fl oz', 'fl oz', 'fl oz', 'oz', 'g'] as const;
const MATERIALS: readonly MaterialRecord[] = [
  ...DEMO.materials.map((record, index) => ({ ...record, packUnit: UNITS[index] ?? 'g' })),
  { material: 'Bag', kind: 'bag', packUnit: 'each' },
  { material: 'Hook', kind: 'hook', packUnit: 'each' },
];

const SUPPLIES: readonly SupplyRecord[] = [
  { material: 'Bag', amount: 1, per: 'pack' },
  { material: 'Bag', amount: 2, per: 'order' },
  { mold: 'ribbed 4 IN', material: 'Hook', amount: 1.5, per: 'piece' },
  { mold: 'Paddle 3 in', material: 'Hook', amount: 9, per: 'piece' },
];

function rows(records: readonly SupplyRecord[]): MoneyBook['supplies'] {
  return records.map((record, index) => ({ row: index + 2, record }));
}

function shop(changes: DemoChanges = {}) {
  const book = demoBook({ materials: MATERIALS, ...changes });
  const index = indexBook(book);
  const [first] = book.orders;
  return { book, index, first: first as OrderRow }; // the demo has orders
}

function planOf(changes: DemoChanges = {}): OrderPlan {
  const plan = planOrder(shop(changes).book, '2041');
  if (plan.kind !== 'plan') throw new Error('the demo order has no plan');
  return plan;
}

const TERMS = { supplies: rows(SUPPLIES), packPieces: 10, isOrderSupplied: false };

function used(uses: readonly Use[], material: string): Use {
  const found = uses.find((one) => one.material === material);
  if (found === undefined) throw new Error(`nothing of ${material} is used`);
  return found;
}

/** Binary rounding of a few products. */
const EXACT = { relative: 1e-12 };

describe('usesOf', () => {
  test('counts every layer’s base in its pack unit, with the lot in use', () => {
    const plan = planOf();
    const { uses, assumptions, gaps } = usesOf(shop().index, plan, TERMS);
    const base = used(uses, 'Soft plastisol');
    expect(base).toMatchObject({ unit: 'gal', lot: 'P-311', key: 'soft plastisol' });
    // HB44, Appendix C: 231 in³.
    expect(base.amount).toBeNear(plan.plastisolVolume / (231 * 0.0254 ** 3), EXACT);
    expect([assumptions, gaps]).toEqual([[], []]);
  });

  test('counts every dose in all cups of its layer', () => {
    const plan = planOf();
    const belly = plan.layers[0];
    const dose = belly?.doses.find(({ material }) => material === 'White dispersion');
    const { uses } = usesOf(shop().index, plan, TERMS);
    const white = used(uses, 'White dispersion');
    // 1.5 g/mL; 29.5735295625 mL to the fl oz: HB44, Appendix C.
    const volume = ((dose?.mass ?? 0) * (belly?.cups ?? 0)) / 1500 / 29.5735295625e-6;
    expect(white).toMatchObject({ unit: 'fl oz', lot: 'W-12' });
    expect(white.amount).toBeNear(volume, EXACT);
  });

  test('counts supplies for each piece, each pack begun, and once an order, of its own mold only', () => {
    const { uses } = usesOf(shop().index, { ...planOf(), quantity: 41 }, TERMS);
    expect(used(uses, 'Hook').amount).toBe(61.5);
    expect(used(uses, 'Bag').amount).toBe(5 + 2);
    const again = usesOf(
      shop().index,
      { ...planOf(), quantity: 41 },
      { ...TERMS, isOrderSupplied: true },
    );
    expect(used(again.uses, 'Bag').amount).toBe(5);
  });

  test('says which density it took for granted', () => {
    const { density: _density, ...white } = MATERIALS[2] ?? {};
    const materials = MATERIALS.map((one, index) => (index === 2 ? white : one));
    const { uses, assumptions } = usesOf(shop({ materials }).index, planOf({ materials }), TERMS);
    expect(assumptions).toEqual([
      'density of White dispersion is not in Materials: 1.1 g/mL is taken',
    ]);
    expect(used(uses, 'White dispersion').amount).toBeGreaterThan(0);
  });

  test('names what it cannot count', () => {
    const { packUnit: _packUnit, ...pearl } = MATERIALS[5] ?? {};
    const materials = MATERIALS.map((one, index) => (index === 5 ? pearl : one));
    const supplies = rows([...SUPPLIES, { material: 'Ribbon', amount: 1, per: 'order' }]);
    const { uses, gaps } = usesOf(shop({ materials }).index, planOf({ materials }), {
      ...TERMS,
      supplies,
    });
    expect(gaps).toEqual([
      'pack unit of Pearl powder must be given in Materials',
      'pack unit of Ribbon must be given in Materials',
    ]);
    expect(uses.map(({ material }) => material)).not.toContain('Pearl powder');
  });
});

describe('orderUses', () => {
  test('is the use of the order’s plan', () => {
    const { index, first } = shop();
    const found = orderUses(index, first, TERMS.supplies);
    expect(found).toEqual({ kind: 'uses', ...usesOf(index, planOf(), TERMS) });
  });

  test('of a run is for the pieces it poured and those that came out good', () => {
    const { index, first } = shop();
    const run = { poured: 8, good: 7, isOrderSupplied: true };
    const found = orderUses(index, first, TERMS.supplies, run);
    const whole = orderUses(index, first, TERMS.supplies);
    if (found.kind !== 'uses' || whole.kind !== 'uses') throw new Error('no uses');
    expect(used(found.uses, 'Hook').amount).toBe(10.5);
    expect(used(found.uses, 'Bag').amount).toBe(1);
    const share =
      used(found.uses, 'Soft plastisol').amount / used(whole.uses, 'Soft plastisol').amount;
    // Less than a fifth of the pieces, and the color checks and cup losses of each layer on top.
    expect(share).toBeGreaterThan(0.15);
    expect(share).toBeLessThan(0.4);
  });

  test('lists what an order lacks', () => {
    const orders = withChange(DEMO.orders, 0, { mold: 'Ribbed 9 in' });
    const { index, first } = shop({ orders });
    expect(orderUses(index, first, [])).toEqual({
      kind: 'missing',
      missing: [
        {
          sheet: 'Orders',
          row: 2,
          heading: 'Mold',
          text: 'mold must be listed in Molds, got "Ribbed 9 in"',
        },
      ],
    });
  });
});
