import { plainTerms } from '../../money/price/plainTerms.ts';
import { breakText, priceBreaks } from '../../money/price/priceBreaks.ts';
import { fromMinor, toMinor } from '../../money/toMinor.ts';
import { defineSpill } from '../defineSpill.ts';
import { CURRENCY, GAIN, GAIN_IS, MONEY, STEP } from '../money.ts';
import { aimOf } from './aimOf.ts';

export const POUR_BREAKS = defineSpill({
  name: 'POUR_BREAKS',
  family: 'money',
  about: 'Price table at the quantities asked for, from what set-up, rounds and pieces cost.',
  params: {
    quantities: {
      kind: 'list',
      item: 'quantity',
      about: 'Pieces.',
      bounds: { atLeast: 1, atMost: 100_000, whole: true },
      most: 50,
    },
    setUpCost: {
      kind: 'number',
      field: 'set-up cost',
      about: 'Once an order.',
      bounds: MONEY,
    },
    roundCost: { kind: 'number', about: 'Each time the molds are filled.', bounds: MONEY },
    pieceCost: { kind: 'number', about: 'Each piece delivered.', bounds: MONEY },
    piecesPerRound: {
      kind: 'number',
      about: 'Good pieces that one round gives.',
      bounds: { greaterThan: 0, atMost: 10_000 },
    },
    gain: GAIN,
    gainIs: GAIN_IS,
    step: STEP,
    currency: CURRENCY,
  },
  returns: [
    { name: 'quantity', about: 'Pieces', kind: 'number' },
    { name: 'price', about: 'Of one piece, or why there is none', kind: 'number' },
    { name: 'total', about: 'Of all pieces', kind: 'number' },
    { name: 'margin', about: 'After rounding', kind: 'number', measure: 'fraction' },
    { name: 'note', about: 'What is odd about the price', kind: 'text' },
  ],
  examples: [
    {
      args: [[12, 13, 24], 6, 12, 0.5, 12, 0.5, '', 0.01],
      result: [
        [12, 4, 48, 0.5, ''],
        [13, 5.62, 73.06, 0.5, 'a piece costs more than at 12'],
        [24, 3.5, 84, 0.5, ''],
      ],
      within: 1e-3,
      source: 'by hand: 24 / 12 / 0.5, 36.50 / 13 / 0.5 up to a cent, 42 / 24 / 0.5',
    },
  ],
  notes:
    'Cost = set-up + rounds x round cost + pieces x piece cost, rounds being whole; price as in POUR_PRICE. Just past a full round a piece costs more; the table says so.',
  compute: ({ quantities, setUpCost, roundCost, pieceCost, piecesPerRound, ...asked }) => {
    const { gain, gainIs, step, currency } = asked;
    const costAt = (quantity: number) =>
      toMinor(
        setUpCost + roundCost * Math.ceil(quantity / piecesPerRound) + pieceCost * quantity,
        currency,
        'cost',
      );
    const terms = plainTerms({ currency, aim: aimOf(gain, gainIs), priceStep: step });
    return priceBreaks(quantities, costAt, terms).map((row) => {
      const { quantity, price } = row;
      if (price.kind !== 'price') return [quantity, price.because, '', '', ''];
      const each = fromMinor(price.perPiece, currency);
      const total = fromMinor(price.total, currency);
      return [quantity, each, total, price.margin ?? '', breakText(row)];
    });
  },
});
