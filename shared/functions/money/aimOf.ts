import type { PriceAim } from '../../money/price/price.ts';

/** A share as the cells give it: of the price or on the cost. */
export function aimOf(gain: number, gainIs: 'margin' | 'markup'): PriceAim {
  return gainIs === 'margin' ? { by: 'margin', margin: gain } : { by: 'markup', markup: gain };
}
