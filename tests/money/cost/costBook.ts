import type { MoneyBook } from '../../../shared/book/book.ts';
import type { MaterialRecord, SupplyRecord } from '../../../shared/book/tables.ts';
import { type CostIndex, indexCosts } from '../../../shared/money/cost/costIndex.ts';
import { planOrder } from '../../../shared/plan/planOrder.ts';
import type { OrderPlan } from '../../../shared/plan/planTypes.ts';
import { DEMO, type DemoChanges, demoBook } from '../../book/demoBook.ts';

const PRICES: Readonly<Record<string, MaterialRecord>> = {
  'Soft plastisol': { packSize: 4000, packUnit: 'mL', packPrice: 60 },
  'Firm plastisol': { packSize: 4000, packUnit: 'mL', packPrice: 70 },
  'White dispersion': { packSize: 100, packUnit: 'mL', packPrice: 8 },
  'Black dispersion': { packSize: 100, packUnit: 'mL', packPrice: 8 },
  'Green dispersion': { packSize: 100, packUnit: 'mL', packPrice: 9 },
  'Pearl powder': { packSize: 50, packUnit: 'g', packPrice: 10 },
  'Fine glitter': { packSize: 50, packUnit: 'g', packPrice: 11 },
};

/** The demo's materials with a price each, and what is bought by the piece. */
export const PRICED: readonly MaterialRecord[] = [
  ...DEMO.materials.map((record) => ({ ...record, ...PRICES[record.material ?? ''] })),
  { material: 'Zip bag', kind: 'bag', packSize: 100, packUnit: 'each', packPrice: 6 },
  { material: 'Worm hook', kind: 'hook', packSize: 20, packUnit: 'each', packPrice: 5 },
  { material: 'Label', kind: 'label', packSize: 100, packUnit: 'each', packPrice: 3 },
];

const SUPPLIES: readonly SupplyRecord[] = [
  { material: 'Zip bag', amount: 1, per: 'pack' },
  { mold: 'Ribbed 4 in', material: 'Worm hook', amount: 1, per: 'piece' },
  { mold: 'Paddle 3 in', material: 'Worm hook', amount: 2, per: 'piece' },
  { material: 'Label', amount: 1, per: 'order' },
];

export interface CostChanges extends DemoChanges {
  readonly supplies?: readonly SupplyRecord[];
  readonly stockMoves?: readonly MoneyBook['stockMoves'][number]['record'][];
}

/** The demo's book with prices, supplies and no stock moves, changed where a test says so. */
export function costBook({ supplies, stockMoves, ...changes }: CostChanges = {}): MoneyBook {
  return {
    ...demoBook({ materials: PRICED, ...changes }),
    supplies: onRows(supplies ?? SUPPLIES),
    stockMoves: onRows(stockMoves ?? []),
  };
}

export function costs(changes: CostChanges = {}): CostIndex {
  return indexCosts(costBook(changes));
}

/** A real plan with round figures put in its place, so that a cost can be worked out by hand. */
export function roundPlan(changes: Partial<OrderPlan> = {}): OrderPlan {
  const plan = planOrder(costBook(), '2041');
  if (plan.kind === 'missing') throw new Error('no plan');
  const [belly, vein] = plan.layers;
  const [white, pearl] = belly?.doses ?? [];
  if (!belly || !vein || !white || !pearl) throw new Error('two layers and two doses wanted');
  return {
    ...plan,
    quantity: 40,
    moldsInUse: 2,
    pieces: { ...plan.pieces, toPour: 48, rounds: 3, expectedGood: 44 },
    layers: [
      { ...belly, totalMass: 1.03, cups: 4, doses: [{ ...white, mass: 0.0015 }] },
      { ...vein, totalMass: 0.515, cups: 2, doses: [{ ...pearl, mass: 0.001 }] },
    ],
    work: { setUp: 1200, coloring: 1800, heating: 600, pouring: 900, finishing: 1350 },
    energy: { plate: 7.2e6, oven: 1.8e6 },
    ...changes,
  };
}

function onRows<Record>(records: readonly Record[]) {
  return records.map((record, index) => ({ row: index + 2, record }));
}
