import { gainOf } from '../../money/price/marginOfMarkup.ts';
import { piecePrice } from '../../money/price/piecePrice.ts';
import { stepMinor } from '../../money/price/stepMinor.ts';
import { fromMinor } from '../../money/toMinor.ts';
import { defineFunction } from '../defineFunction.ts';
import { CURRENCY, GAIN, GAIN_IS, MONEY, STEP, TAX_INSIDE } from '../money.ts';
import { aimOf } from './aimOf.ts';

export const POUR_PRICE = defineFunction({
  name: 'POUR_PRICE',
  family: 'money',
  about: 'Price of one piece from what it costs and the margin or markup wanted.',
  params: {
    cost: { kind: 'number', about: 'All that one piece costs to make.', bounds: MONEY },
    gain: GAIN,
    gainIs: GAIN_IS,
    step: STEP,
    taxInside: TAX_INSIDE,
    currency: CURRENCY,
  },
  returns: [
    { name: 'price', about: 'Of one piece, or why there is none', kind: 'number' },
    { name: 'margin', about: 'After rounding and tax', kind: 'number', measure: 'fraction' },
    { name: 'markup', about: 'After rounding and tax', kind: 'number', measure: 'fraction' },
  ],
  examples: [
    {
      args: [40, 0.5, 'markup'],
      result: [60, 0.3333, 0.5],
      within: 2e-4,
      source: 'MARGIN-MARKUP, cost 40 at a markup of 50 %: margin 33.33 %, printed to two places',
    },
    {
      args: [1, 0.45, '', 0.05, 0.1],
      result: [2, 0.45, 0.8182],
      within: 1e-4,
      source: '1 / 0.55 x 1.1 = 2.00 by hand; markup 0.45 / 0.55',
    },
  ],
  notes:
    'Price = cost x (1 + markup) x (1 + tax inside), rounded up to the step; markup = margin / (1 - margin). The margin is of what is kept once the tax inside is paid.',
  compute: ({ cost, gain, gainIs, step, taxInside, currency }) => {
    const scale = fromMinor(1, currency);
    const price = piecePrice({
      cost: cost / scale,
      aim: aimOf(gain, gainIs),
      step: stepMinor(step, currency),
      taxInside,
    });
    if (typeof price !== 'number') return [price.because, '', ''];
    const shown = fromMinor(price, currency);
    const { margin = '', markup = '' } = gainOf(shown / (1 + taxInside), cost);
    return [shown, margin, markup];
  },
});
