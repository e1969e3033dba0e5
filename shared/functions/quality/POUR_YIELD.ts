import { yieldRate } from '../../quality/yieldRate.ts';
import { defineFunction } from '../defineFunction.ts';

export const POUR_YIELD = defineFunction({
  name: 'POUR_YIELD',
  family: 'quality',
  about: 'Share of good pieces and the interval it probably lies in.',
  params: {
    good: {
      kind: 'number',
      about: 'Good pieces.',
      bounds: { atLeast: 0, atMost: 100_000_000, whole: true },
    },
    poured: {
      kind: 'number',
      about: 'Pieces poured.',
      bounds: { atLeast: 1, atMost: 100_000_000, whole: true },
    },
    confidence: {
      kind: 'number',
      measure: 'fraction',
      about: 'Confidence of the interval.',
      bounds: { greaterThan: 0, lessThan: 1 },
      default: 0.95,
    },
  },
  returns: [
    { name: 'yield', about: 'Share of good pieces', kind: 'number', measure: 'fraction' },
    { name: 'low', about: 'Low end of the interval', kind: 'number', measure: 'fraction' },
    { name: 'high', about: 'High end of the interval', kind: 'number', measure: 'fraction' },
  ],
  examples: [
    {
      args: [81, 263],
      result: [0.308, 0.2553, 0.3662],
      within: 3e-4,
      source: 'NEWCOMBE1998, Table I, printed to four places',
    },
  ],
  notes:
    'Wilson score interval. A few pieces say little: 4 of 4 good may still be a yield of 51 %.',
  compute: ({ good, poured, confidence }) => {
    const { rate, low, high } = yieldRate(good, poured, confidence);
    return [rate, low, high];
  },
});
