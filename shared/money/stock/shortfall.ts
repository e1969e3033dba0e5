import type { MaterialRow } from '../../book/bookIndex.ts';
import { nameKey, type OrderRow } from '../../book/bookIndex.ts';
import type { PackUnit } from '../packAmount.ts';
import type { Ledger } from './ledgerTypes.ts';
import { packsToBuy } from './packsToBuy.ts';
import type { Use } from './usesOf.ts';

/** An order that is still to be poured, and what all of it takes. */
export interface OpenNeed {
  readonly order: string;
  readonly due: string | undefined;
  readonly uses: readonly Use[];
}

/** What one order still takes of a material. */
export interface OrderShare {
  readonly order: string;
  readonly due: string | undefined;
  readonly amount: number;
}

/** One material against all open orders, in its pack unit. */
export interface Supply {
  readonly material: string;
  readonly key: string;
  readonly supplier: string;
  readonly unit?: PackUnit;
  readonly onHand: number;
  /** What the open orders still take. */
  readonly needed: number;
  readonly orders: readonly OrderShare[];
  /** On hand less needed: what is left when all of them are poured. */
  readonly free: number;
  /** The first order, by due date, that it does not reach for; absent where it reaches. */
  readonly shortFrom?: OrderShare;
  /** At or below this much you buy, from Materials. */
  readonly reorderLevel?: number;
  /** Whether what is left is at or below the reorder point. */
  readonly isLow: boolean;
  readonly packSize?: number;
  /** Whole packs that cover the orders and bring what is left above the reorder point; 0 where nothing is to be bought. */
  readonly packs: number;
  /** Why no number of packs can be given. */
  readonly noPacks?: string;
  /** Price of one pack: the list price, else the average that was paid. */
  readonly packPrice?: number;
}

/**
 * Every listed material against the open orders, in the order of Materials.
 *
 * needed = planned for each order - used for it already, not below 0; short from the first order at which the running sum
 * passes what is on hand.
 * @param needs in the order they are to be served
 */
export function shortfall(
  needs: readonly OpenNeed[],
  { stocks, moves }: Pick<Ledger, 'stocks' | 'moves'>,
  materials: readonly MaterialRow[],
): readonly Supply[] {
  const posted = new Map<string, number>();
  for (const { order, key, reason, change } of moves) {
    if (reason !== 'used' || order === '') continue;
    const place = nameKey(order, key);
    posted.set(place, (posted.get(place) ?? 0) - change);
  }
  const shares = sharesByMaterial(needs, posted);
  const seen = new Set<string>();
  return materials.flatMap(({ record }) => {
    const key = nameKey(record.material);
    if (key === '' || seen.has(key)) return [];
    seen.add(key);
    return [supplyOf(record, key, stocks.get(key), shares.get(key) ?? [])];
  });
}

function sharesByMaterial(
  needs: readonly OpenNeed[],
  posted: ReadonlyMap<string, number>,
): ReadonlyMap<string, readonly OrderShare[]> {
  const shares = new Map<string, OrderShare[]>();
  for (const { order, due, uses } of needs)
    for (const { key, amount } of uses) {
      const left = amount - Math.max(0, posted.get(nameKey(order, key)) ?? 0);
      if (left <= 0) continue;
      const share = { order, due, amount: left };
      const others = shares.get(key);
      if (others) others.push(share);
      else shares.set(key, [share]);
    }
  return shares;
}

function supplyOf(
  record: MaterialRow['record'],
  key: string,
  stock: { readonly onHand: number; readonly average?: number } | undefined,
  orders: readonly OrderShare[],
): Supply {
  const { material = '', supplier = '', packUnit, packSize, reorderPoint } = record;
  const onHand = stock?.onHand ?? 0;
  let needed = 0;
  let shortFrom: OrderShare | undefined;
  for (const share of orders) {
    needed += share.amount;
    if (shortFrom === undefined && isBelow(onHand - needed, 0, needed)) shortFrom = share;
  }
  const free = onHand - needed;
  const reorderLevel =
    reorderPoint === undefined || packSize === undefined ? undefined : reorderPoint * packSize;
  const isLow = reorderLevel !== undefined && !isBelow(reorderLevel, free, needed);
  const average = stock?.average;
  const packPrice =
    record.packPrice ??
    (average === undefined || packSize === undefined ? undefined : average * packSize);
  return {
    material,
    key,
    supplier,
    ...(packUnit === undefined ? {} : { unit: packUnit }),
    onHand,
    needed,
    orders,
    free,
    ...(shortFrom === undefined ? {} : { shortFrom }),
    ...(reorderLevel === undefined ? {} : { reorderLevel }),
    isLow,
    ...(packSize === undefined ? {} : { packSize }),
    ...packsToBuy({
      material,
      free,
      packSize,
      reorderLevel,
      isLow,
      isShort: shortFrom !== undefined || onHand < 0,
    }),
    ...(packPrice === undefined ? {} : { packPrice }),
  };
}

/** Sums of planned amounts carry binary dust. */
function isBelow(value: number, limit: number, scale: number): boolean {
  return value < limit - 1e-9 * Math.abs(scale);
}

/** Open orders in the order they are to be served: by due date, those without one last, then as they stand. */
export function byDue(one: OrderRow, other: OrderRow): number {
  const [early, late] = [one.record.due ?? '9999', other.record.due ?? '9999'];
  return early < late ? -1 : early > late ? 1 : one.row - other.row;
}
