import { shareMinor } from '../toMinor.ts';

/**
 * Sales tax in minor units: on the goods and on an excise that is added to them, not on shipping.
 * Common practice, no source: states differ, so the rate is a setting and the seller's duty.
 */
export function salesTaxOn(
  goods: number,
  excise: { readonly added: number },
  { salesTaxRate }: { readonly salesTaxRate: number },
): number {
  return shareMinor(goods + excise.added, salesTaxRate);
}
