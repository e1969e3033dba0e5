import { simpleCost } from '../../money/cost/simpleCost.ts';
import { defineFunction } from '../defineFunction.ts';
import { CURRENCY, MONEY } from '../money.ts';

export const POUR_COST = defineFunction({
  name: 'POUR_COST',
  family: 'money',
  about: 'Cost of an order, or of any batch, from plastisol, work and what else is bought for it.',
  params: {
    plastisol: {
      kind: 'number',
      measure: 'liquidVolume',
      about: 'Plastisol weighed out, all layers: the column Plastisol of Orders.',
      bounds: { atLeast: 0 },
    },
    packSize: {
      kind: 'number',
      measure: 'liquidVolume',
      about: 'Contents of one pack of it; a gallon is 128 fl oz.',
      bounds: { greaterThan: 0 },
    },
    packPrice: { kind: 'number', about: 'Price of one pack.', bounds: MONEY },
    minutes: {
      kind: 'number',
      measure: 'minutes',
      about: 'Hands-on time: the column Minutes of work of Orders.',
      bounds: { atLeast: 0 },
    },
    laborRate: { kind: 'number', about: 'What an hour of work costs the shop.', bounds: MONEY },
    pieces: {
      kind: 'number',
      about: 'Good pieces that it is for.',
      bounds: { atLeast: 1, whole: true },
    },
    supplies: {
      kind: 'number',
      about: 'Colorants, hooks, bags and what else is bought for it, in all.',
      bounds: MONEY,
      default: 0,
    },
    other: {
      kind: 'number',
      about: 'Electricity, mold wear and what else bears no overhead, in all.',
      bounds: MONEY,
      default: 0,
    },
    overhead: {
      kind: 'number',
      measure: 'fraction',
      about: 'Share of material and work.',
      bounds: { atLeast: 0, atMost: 10 },
      default: 0.15,
    },
    currency: CURRENCY,
  },
  returns: [
    { name: 'cost', about: 'Of all of it', kind: 'number' },
    { name: 'per piece', about: 'Of one good piece, not rounded', kind: 'number' },
    { name: 'material', about: 'Plastisol and supplies', kind: 'number' },
    { name: 'work', about: 'Hands-on time at the labor rate', kind: 'number' },
    { name: 'overhead', about: 'On material and work', kind: 'number' },
  ],
  examples: [
    {
      args: [64, 128, 62, 180, 22, 100, 5, 2],
      result: [119.3, 1.193, 36, 66, 15.3],
      within: 1e-12,
      source:
        'by hand: 64/128 x 62 + 5 = 36; 3 h x 22 = 66; 15 % of 102 = 15.30; 36 + 66 + 15.30 + 2',
    },
  ],
  notes:
    'Material = plastisol / pack size x pack price + supplies; each part is rounded to the smallest coin and the cost is their sum. It knows no plan: the column Cost of Orders works out cups, doses, rounds and electricity, and the price of each material from Stock moves.',
  compute: ({ minutes, overhead, ...facts }) => {
    const cost = simpleCost({ ...facts, work: minutes, overheadShare: overhead });
    return [cost.total, cost.perPiece, cost.material, cost.work, cost.overhead];
  },
});
