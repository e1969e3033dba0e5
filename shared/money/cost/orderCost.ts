import type { OrderPlan } from '../../plan/planTypes.ts';
import { formatPlain } from '../../units/formatPlain.ts';
import { fromMinor, shareMinor } from '../toMinor.ts';
import type { CostIndex } from './costIndex.ts';
import { type CostKey, type CostLine, costLine, type OrderCost, sumOfLines } from './costLine.ts';
import { materialLines } from './materialLines.ts';
import { colorMatchLine, laborLines, runLines } from './runLines.ts';
import { supplyLines } from './supplyLines.ts';

/** What the overhead is a share of. */
const BEARS_OVERHEAD: readonly CostKey[] = [
  'material',
  'colorant',
  'supplies',
  'labor',
  'color match',
];

/** What goes into every piece poured, good or bad. */
const GOES_WITH_PIECES: readonly string[] = [
  'Weighing and coloring',
  'Heating, attended',
  'Pouring',
  'Demolding, inspecting, packing',
];

/**
 * What an order costs to make as it is planned.
 *
 * Plastisol and colorants of all pieces poured + supplies of the pieces ordered + work at the loaded rate + electricity + mold wear +
 * overhead as a share of material and work. Each line is amount x rate, rounded once to the smallest unit; the total is
 * their sum. Pieces that will not be good are in it, since all that are poured are.
 *
 * @param matching - `new pattern` adds the work on its colors
 * @throws InputError where a line passes all sense: `pouring must be at most 1e+11, got …`
 */
export function orderCost(
  costs: CostIndex,
  plan: OrderPlan,
  matching: 'new pattern' | 'known pattern',
): OrderCost {
  const { shop } = costs.index.book;
  const { currency, packPieces } = shop;
  const { mold, quantity } = plan;
  const material = materialLines(costs.index, plan, costs.prices);
  const supplies = supplyLines(costs, { mold, quantity, packPieces });
  const run = runLines(plan, shop);
  const match = matching === 'new pattern' ? [colorMatchLine(shop)] : [];
  const drafts = [
    ...material.lines,
    ...supplies.lines,
    ...match,
    ...laborLines(plan, shop),
    ...run.lines,
  ];
  const direct = drafts.map((line) => costLine(line, currency));
  const bearing = sumOfLines(direct.filter(({ key }) => BEARS_OVERHEAD.includes(key)));
  const overhead: CostLine = costLine(
    {
      key: 'overhead',
      label: `Overhead, ${formatPlain(shop.overheadShare * 100)} % of material and work`,
      amount: fromMinor(bearing, currency),
      unit: currency,
      rate: shop.overheadShare,
    },
    currency,
  );
  const lines = [...direct, overhead];
  const total = sumOfLines(lines);
  return {
    currency,
    lines,
    total,
    perGood: total / quantity,
    scrap: scrapOf(lines, plan),
    assumptions: [
      ...new Set([...material.assumptions, ...supplies.assumptions, ...run.assumptions]),
    ],
  };
}

function scrapOf(lines: readonly CostLine[], { pieces }: OrderPlan): OrderCost['scrap'] {
  const bad = Math.max(0, pieces.toPour - pieces.expectedGood);
  const borne = lines.filter(
    ({ key, label }) =>
      key === 'material' ||
      key === 'colorant' ||
      (key === 'labor' && GOES_WITH_PIECES.includes(label)),
  );
  return { pieces: bad, minor: shareMinor(sumOfLines(borne), bad / pieces.toPour) };
}
