import type { PriceTerms } from './price.ts';

/** Terms of a price with no charge, discount, tax or deposit. */
export function plainTerms(asked: Pick<PriceTerms, 'currency' | 'aim' | 'priceStep'>): PriceTerms {
  return {
    ...asked,
    rushShare: 0,
    colorMatchCharge: 0,
    minimumOrder: 0,
    discount: 0,
    shipping: 0,
    salesTaxRate: 0,
    depositShare: 0,
    excise: { isOn: false, rate: 0, baseShare: 1, taxIn: 'inside the price', status: 'taxable' },
  };
}
