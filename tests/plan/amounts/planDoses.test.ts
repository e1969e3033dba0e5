import { describe, expect, test } from 'vitest';
import type { DoseRecord, MaterialRecord } from '../../../shared/book/tables.ts';
import { planDoses } from '../../../shared/plan/amounts/planDoses.ts';
import { demoBook } from '../../book/demoBook.ts';

const { shop } = demoBook();

/** One of two cups of 100 mL cold, 110 mL hot; recipes are for 100 mL, so a dose is what its amount says. */
const CUP = {
  cups: 2,
  cupMass: 0.104,
  cupVolume: 1e-4,
  cupHotVolume: 1.1e-4,
  totalMass: 0.208,
  totalVolume: 2e-4,
};

type Given = Pick<DoseRecord, 'material' | 'amount'> & {
  readonly unit?: 'drop' | 'mL' | 'g' | 'tsp';
  readonly record?: MaterialRecord;
};

function doses(...given: readonly Given[]) {
  return given.map(({ material, amount, unit = 'drop', record }, index) => ({
    row: index + 2,
    material: { row: index + 2, record: { ...record, material } },
    amount: amount ?? 0,
    unit,
    per: 1e-4,
  }));
}

function proposalsOf(given: readonly Given[], cup = CUP) {
  const metric = { ...shop, units: 'metric' as const, doseTolerance: 0.1, cupFill: 2.2e-4 };
  return planDoses(doses(...given), cup, metric).map((dose) => dose.proposals);
}

describe('a layer’s doses', () => {
  test('that are whole in the cup are counted and need nothing', () => {
    const plans = planDoses(
      doses({ material: 'White', amount: 4 }, { material: 'Black', amount: 2.1 }),
      CUP,
      shop,
    );
    expect(plans.map((dose) => dose.measure)).toEqual([
      { kind: 'drops', drops: 4, error: 0 },
      { kind: 'drops', drops: 2, error: expect.toBeNear(2 / 2.1 - 1, { relative: 1e-12 }) },
    ]);
    expect(plans.flatMap((dose) => dose.proposals)).toEqual([]);
  });

  test('get one fuller cup that makes every colorant whole, with the others’ amounts in it, then cut, then scale', () => {
    // by hand: 0.6 of a drop is one at the edge of 10 % in 1 / 1.1 / 0.6 = 1.515 cups; 4 drops are then 6.06, 6 of them 1 % short
    const given = [
      { material: 'White', amount: 0.6 },
      { material: 'Black', amount: 4 },
      { material: 'Mica', amount: 0.4, unit: 'g' as const },
    ];
    expect(proposalsOf(given)).toEqual([
      [
        'fill each cup to 152 mL cold and count 1 drop (off by 10 %), with 6 drops (off by 1 %) of Black and 0.61 g of Mica',
        'cut the colorant, 1 part in 14, and count 8 drops (off by 5 %)',
        'weigh 0.03 g',
      ],
      [],
      [],
    ]);
  });

  test('are not offered a cup that suits one colorant and spoils another: both wait for the cup that suits both', () => {
    // by hand: 0.7 of a drop alone is whole in 1 / 1.1 / 0.7 = 1.299 cups, where 2 drops are 2.597, 16 % off their 3;
    // both are from 3 / 1.1 / 2 = 1.364 cups on, the next mark 137 mL: 0.959 of a drop and 2.74 drops
    const given = [
      { material: 'White', amount: 0.7 },
      { material: 'Black', amount: 2 },
    ];
    expect(proposalsOf(given)[0]?.[0]).toBe(
      'fill each cup to 137 mL cold and count 1 drop (off by 4 %), with 3 drops (off by 9 %) of Black',
    );
  });

  test('are offered no fuller cup that would run over', () => {
    const given = [{ material: 'White', amount: 0.7 }];
    const tall = { ...CUP, cupHotVolume: 1.8e-4 };
    expect(proposalsOf(given)[0]?.[0]).toMatch(/^fill each cup to 130 mL cold and count 1 drop/);
    expect(proposalsOf(given, tall)[0]?.[0]).toMatch(/^cut the colorant/);
  });

  test('are offered a cup that can be told from the one there is', () => {
    // 4.5 drops are 11 % off from 5; 1.0101 cups bring it to 10 %: 3.42 fl oz, told as 3.5
    const given = [{ material: 'White', amount: 4.5 }];
    const [first] = planDoses(doses(...given), CUP, { ...shop, doseTolerance: 0.1 });
    expect(first?.proposals[0]).toBe(
      'fill each cup to 3.5 fl oz cold and count 5 drops (off by 7 %)',
    );
  });

  test('two that are not whole are offered the same cup', () => {
    const given = [
      { material: 'White', amount: 0.6 },
      { material: 'Black', amount: 0.6 },
    ];
    const cups = proposalsOf(given, { ...CUP, cups: 1 }).map((proposals) => proposals[0]);
    expect(cups).toEqual([
      'fill the cup to 152 mL cold and count 1 drop (off by 10 %), with 1 drop (off by 10 %) of Black',
      'fill the cup to 152 mL cold and count 1 drop (off by 10 %), with 1 drop (off by 10 %) of White',
    ]);
  });

  test('of powder come in spoons, of liquid by volume in drops up to 60, all else on the scale', () => {
    const powder = { kind: 'powder', spoonDensity: 500 } as const;
    const plans = planDoses(
      doses(
        { material: 'Pearl', amount: 0.5, unit: 'tsp', record: powder },
        { material: 'Softener', amount: 1, unit: 'mL', record: { dropVolume: 5e-8 } },
        { material: 'Softener', amount: 10, unit: 'mL', record: { dropVolume: 5e-8 } },
        { material: 'Salt', amount: 3, unit: 'g' },
      ),
      CUP,
      shop,
    );
    expect(plans.map(({ measure }) => measure)).toEqual([
      { kind: 'powder', spoons: '1/2 tsp', error: expect.toBeNear(0, { absolute: 1e-12 }) },
      { kind: 'drops', drops: 20, error: expect.toBeNear(0, { absolute: 1e-12 }) },
      { kind: 'scale' },
      { kind: 'scale' },
    ]);
  });
});
