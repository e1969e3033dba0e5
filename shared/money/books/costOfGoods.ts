import type { BookIndex, OrderRow } from '../../book/bookIndex.ts';
import { nameKey, problemsAt, remember } from '../../book/bookIndex.ts';
import { planRow } from '../../plan/planOrder.ts';
import type { CostIndex } from '../cost/costIndex.ts';
import type { CostKey } from '../cost/costLine.ts';
import { orderCost } from '../cost/orderCost.ts';
import { patternMatching } from '../patternMatching.ts';
import type { Ledger } from '../stock/ledgerTypes.ts';
import { usesOf } from '../stock/usesOf.ts';
import { toMinor } from '../toMinor.ts';
import type { CostBasis, CostOfGoods } from './booksTypes.ts';

/** Lines of a planned cost that come out of stock. */
const FROM_STOCK: readonly CostKey[] = ['material', 'colorant', 'supplies'];

/** What stock moves say that an order took; money unrounded. */
export interface PostedCost {
  cost: number;
  /** Materials that were posted as used. */
  readonly used: Set<string>;
}

/** What the plan says that an order takes, in smallest units. */
interface PlannedCost {
  readonly making: number;
  /** By `nameKey` of the material. */
  readonly materials: ReadonlyMap<string, number>;
  readonly assumptions: readonly string[];
}

/** Value that left stock for each order, by `nameKey` of its number: used and scrapped, less what was put back. */
export function postedCosts({ moves }: Pick<Ledger, 'moves'>): ReadonlyMap<string, PostedCost> {
  const posted = new Map<string, PostedCost>();
  for (const { order, reason, key, cost } of moves) {
    if (!isForOrder(reason, order)) continue;
    const own = nameKey(order);
    const found = posted.get(own) ?? { cost: 0, used: new Set() };
    posted.set(own, found);
    found.cost += cost;
    if (reason === 'used') found.used.add(key);
  }
  return posted;
}

/** Whether a move's cost belongs to an order. */
export function isForOrder(reason: string, order: string): boolean {
  return order.trim() !== '' && (reason === 'used' || reason === 'scrapped');
}

/**
 * What an order cost to make: stock used and scrapped for it at the ledger's cost, materials of the plan that nobody
 * posted at today's prices, and the plan's work, electricity, wear and overhead.
 *
 * Stock is rounded to the smallest unit once, each unposted material once, and the total is their sum.
 * @param posted - what {@link postedCosts} found for the order
 * @param assumed - takes what was taken to be so because the book does not say
 */
export function costOfGoods(
  costs: CostIndex,
  row: OrderRow,
  posted: PostedCost | undefined,
  assumed: Set<string>,
): CostOfGoods {
  const { currency } = costs.index.book.shop;
  const planned = plannedCost(costs, row);
  const stock = toMinor(posted?.cost ?? 0, currency, 'stock used');
  let unposted = 0;
  let missing = 0;
  for (const [material, minor] of planned?.materials ?? []) {
    if (posted?.used.has(material)) continue;
    missing += 1;
    unposted += minor;
  }
  for (const text of planned?.assumptions ?? []) assumed.add(text);
  const making = planned?.making ?? 0;
  const basis = basisOf(planned, posted, missing);
  return { basis, stock, unposted, making, total: stock + unposted + making };
}

function basisOf(
  planned: PlannedCost | undefined,
  posted: PostedCost | undefined,
  missing: number,
): CostBasis {
  const isPosted = posted !== undefined;
  if (planned === undefined) return isPosted ? 'stock only' : 'unknown';
  if (!isPosted) return 'planned';
  return missing === 0 ? 'posted' : 'partly posted';
}

/** Orders alike are planned once; a row with a refused cell is looked at by itself. */
function plannedCost(costs: CostIndex, row: OrderRow): PlannedCost | undefined {
  const { index } = costs;
  const matching = matchingOf(index, row);
  if (problemsAt(index, 'Orders', row.row).length > 0) return planCost(costs, row, matching);
  const { mold, pattern, version, quantity, plate, moldsInUse } = row.record;
  const key = nameKey('books', mold, pattern, version, quantity, plate, moldsInUse, matching);
  return remember(index, key, () => planCost(costs, row, matching));
}

type Matching = ReturnType<typeof patternMatching>;

function matchingOf(index: BookIndex, row: OrderRow): Matching {
  return patternMatching(index, row, row.record.version ?? newestVersion(index, row));
}

function newestVersion(index: BookIndex, { record }: OrderRow): number {
  return Math.max(0, ...(index.patterns.get(nameKey(record.pattern))?.keys() ?? []));
}

function planCost(costs: CostIndex, row: OrderRow, matching: Matching): PlannedCost | undefined {
  const { index, supplies, prices } = costs;
  const { shop } = index.book;
  const plan = planRow(index, row);
  if (plan.kind === 'missing') return undefined;
  const { lines, assumptions } = orderCost(costs, plan, matching);
  const making = lines
    .filter(({ key }) => !FROM_STOCK.includes(key))
    .reduce((sum, { minor }) => sum + minor, 0);
  const terms = { supplies, packPieces: shop.packPieces, isOrderSupplied: false };
  const { uses, gaps } = usesOf(index, plan, terms);
  const materials = new Map<string, number>();
  for (const { key, amount } of uses)
    materials.set(key, toMinor(amount * (prices.get(key)?.perPackUnit ?? 0), shop.currency));
  return { making, materials, assumptions: [...assumptions, ...gaps.map(uncounted)] };
}

function uncounted(gap: string): string {
  return `${gap}; until then it counts as 0 in the cost of goods.`;
}
