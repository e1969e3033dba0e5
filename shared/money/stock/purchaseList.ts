import type { CurrencyCode } from '../../book/currencies.ts';
import type { PackUnit } from '../packAmount.ts';
import { toMinor } from '../toMinor.ts';
import type { OrderShare, Supply } from './shortfall.ts';

/** One material to buy, money in smallest units. */
export interface PurchaseLine {
  readonly material: string;
  readonly supplier: string;
  readonly unit?: PackUnit;
  readonly onHand: number;
  readonly needed: number;
  readonly free: number;
  readonly shortFrom?: OrderShare;
  readonly reorderLevel?: number;
  readonly isLow: boolean;
  readonly packSize?: number;
  readonly packs: number;
  readonly noPacks?: string;
  /** Packs x price of a pack; absent while no price is known. */
  readonly money?: number;
}

export interface PurchaseList {
  readonly lines: readonly PurchaseLine[];
  /** Of the lines with a price. */
  readonly total: number;
  /** Lines whose price nobody knows, so that the total is short of them. */
  readonly unpriced: number;
}

/** What to buy: materials that the open orders outrun, and those at or below their reorder point; by supplier, short ones first. */
export function purchaseList(supplies: readonly Supply[], currency: CurrencyCode): PurchaseList {
  const lines = supplies
    .filter(({ packs, noPacks }) => packs > 0 || noPacks !== undefined)
    .map(({ key: _key, orders: _orders, packPrice, ...line }): PurchaseLine => {
      if (packPrice === undefined || line.packs === 0) return line;
      return { ...line, money: toMinor(packPrice, currency, 'pack price') * line.packs };
    });
  return {
    lines: [...lines].sort(bySupplier),
    total: lines.reduce((sum, { money = 0 }) => sum + money, 0),
    unpriced: lines.filter(({ money }) => money === undefined).length,
  };
}

function bySupplier(one: PurchaseLine, other: PurchaseLine): number {
  if (one.supplier !== other.supplier) return one.supplier < other.supplier ? -1 : 1;
  const [early, late] = [one, other].map(({ shortFrom }) =>
    shortFrom === undefined ? '~' : (shortFrom.due ?? '9999'),
  );
  return (early ?? '') < (late ?? '') ? -1 : (early ?? '') > (late ?? '') ? 1 : 0;
}
