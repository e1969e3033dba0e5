import type { CurrencyCode } from '../../book/currencies.ts';
import { toMinor } from '../toMinor.ts';
import type { Ledger, MaterialStock } from './ledgerTypes.ts';

/** Value of every stock at the weighted average, in smallest units, and their sum. */
export function stockValues(
  { stocks }: Ledger,
  currency: CurrencyCode,
): { readonly total: number; readonly values: ReadonlyMap<string, number> } {
  const values = new Map<string, number>();
  let total = 0;
  for (const [key, { value }] of stocks) {
    const minor = toMinor(value, currency, 'stock value');
    values.set(key, minor);
    total += minor;
  }
  return { total, values };
}

/** Value of a stock's lots by first in, first out, in smallest units, each rounded by itself. */
export function lotValues({ lots }: MaterialStock, currency: CurrencyCode): readonly number[] {
  return lots.map(({ value }) => toMinor(value, currency, 'lot value'));
}
