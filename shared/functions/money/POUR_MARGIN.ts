import { gainOf } from '../../money/price/marginOfMarkup.ts';
import { defineFunction } from '../defineFunction.ts';
import { MONEY, TAX_INSIDE } from '../money.ts';

export const POUR_MARGIN = defineFunction({
  name: 'POUR_MARGIN',
  family: 'money',
  about: 'Margin and markup of a price.',
  params: {
    price: { kind: 'number', about: 'Of a piece or of an order.', bounds: MONEY },
    cost: { kind: 'number', about: 'Of the same.', bounds: MONEY },
    taxInside: TAX_INSIDE,
  },
  returns: [
    { name: 'margin', about: 'Gain by price, or why not', kind: 'number', measure: 'fraction' },
    { name: 'markup', about: 'Gain by cost', kind: 'number', measure: 'fraction' },
    { name: 'gain', about: 'What is left of the price', kind: 'number' },
  ],
  examples: [
    {
      args: [60, 40],
      result: [0.3333, 0.5, 20],
      within: 2e-4,
      source: 'MARGIN-MARKUP, margin 33.33 % is markup 50 %, printed to two places',
    },
    {
      args: [40, 10],
      result: [0.75, 3, 30],
      within: 1e-12,
      source: 'MARGIN-MARKUP, margin 75 % is markup 300 %',
    },
  ],
  notes:
    'Margin = (price - cost) / price, markup = (price - cost) / cost, both of the price without the tax inside it. Below zero the price does not cover the cost.',
  compute: ({ price, cost, taxInside }) => {
    const kept = price / (1 + taxInside);
    const { margin = 'a price of 0 has no margin', markup = '' } = gainOf(kept, cost);
    return [margin, markup, kept - cost];
  },
});
