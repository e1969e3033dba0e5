import fc from 'fast-check';
import { CURRENCY_CODES } from '../../../shared/book/currencies.ts';
import { EXCISE_IN, EXCISE_STATUSES } from '../../../shared/book/settings/exciseChoices.ts';
import { plainTerms } from '../../../shared/money/price/plainTerms.ts';
import type { PriceTerms } from '../../../shared/money/price/price.ts';
import { evenReal } from '../../evenReal.ts';

/** Terms at a margin of 45 % in steps of 5 cents, with nothing else on them. */
export const PLAIN = plainTerms({
  currency: 'USD',
  aim: { by: 'margin', margin: 0.45 },
  priceStep: 0.05,
});

export const TAXED = {
  isOn: true,
  rate: 0.1,
  baseShare: 1,
  taxIn: 'inside the price',
  status: 'taxable',
} as const;

const share = evenReal(0, 1);
const amount = evenReal(0, 1000);

/** Any terms a shop may have. */
export const anyTerms: fc.Arbitrary<PriceTerms> = fc.record({
  currency: fc.constantFrom(...CURRENCY_CODES),
  aim: fc.oneof(
    fc.record({
      by: fc.constant('margin' as const),
      margin: evenReal(0, 0.99),
    }),
    fc.record({ by: fc.constant('markup' as const), markup: amount }),
    fc.record({ by: fc.constant('price' as const), perPiece: fc.integer({ min: 0, max: 10_000 }) }),
  ),
  priceStep: fc.constantFrom(0, 0.01, 0.05, 0.25, 1),
  rushShare: share,
  colorMatchCharge: amount,
  minimumOrder: amount,
  discount: share,
  shipping: amount,
  salesTaxRate: share,
  depositShare: share,
  excise: fc.record({
    isOn: fc.boolean(),
    rate: share,
    baseShare: fc.double({ min: 0.01, max: 1, noNaN: true }),
    taxIn: fc.constantFrom(...EXCISE_IN),
    status: fc.constantFrom(...EXCISE_STATUSES),
  }),
});

export const anyOrder = fc.record({
  pieces: fc.integer({ min: 1, max: 5000 }),
  cost: fc.integer({ min: 0, max: 10_000_000 }),
});
