import { fullMolds } from '../../batch/fullMolds.ts';
import { piecesToPour } from '../../batch/piecesToPour.ts';
import { yieldBelief } from '../../batch/yieldBelief.ts';
import { DEFAULTS } from '../../material/defaults.ts';
import { defineFunction } from '../defineFunction.ts';

const COUNT = { atLeast: 0, atMost: 1_000_000, whole: true } as const;

export const POUR_PIECES = defineFunction({
  name: 'POUR_PIECES',
  family: 'batch',
  about: 'Pieces to pour so that enough come out good, from the record of good and poured pieces.',
  params: {
    goodWanted: {
      kind: 'number',
      about: 'Good pieces the customer gets.',
      bounds: { atLeast: 1, atMost: 100_000, whole: true },
    },
    good: {
      kind: 'number',
      about: 'Good pieces in the record of this mold and pattern.',
      bounds: COUNT,
      default: 0,
    },
    poured: { kind: 'number', about: 'Pieces poured in that record.', bounds: COUNT, default: 0 },
    confidence: {
      kind: 'number',
      measure: 'fraction',
      about: 'Chance of ending with enough.',
      bounds: { greaterThan: 0, atMost: 1 },
      default: DEFAULTS.confidence.value,
    },
    assumedYield: {
      kind: 'number',
      measure: 'fraction',
      about: 'Good share assumed before any record.',
      bounds: { greaterThan: 0, lessThan: 1 },
      default: DEFAULTS.yieldMean.value,
    },
    assumedWeight: {
      kind: 'number',
      about: 'How many pieces that assumption is worth.',
      bounds: { greaterThan: 0, atMost: 1_000_000 },
      default: DEFAULTS.yieldWeight.value,
    },
    cavities: {
      kind: 'number',
      about: 'Cavities filled in one round; the answer is rounded up to full rounds.',
      bounds: { atLeast: 1, atMost: 10_000, whole: true },
      default: 1,
    },
  },
  returns: [
    { name: 'pieces to pour', about: 'Pieces to pour, or why there is no number', kind: 'number' },
  ],
  examples: [
    { args: [80, 450, 500], result: 93, source: 'beta-binomial tail, recomputed with R 4.2.2' },
    { args: [80, 450, 500, 0.9, '', '', 12], result: 96, source: 'the same, in full rounds of 12' },
  ],
  notes:
    'Beta-binomial: the record and the assumption together say how good the next pieces will be. Pieces are taken as alike; a whole round lost to a cold mold is not in it.',
  compute: ({ goodWanted, good, poured, confidence, assumedYield, assumedWeight, cavities }) => {
    const belief = yieldBelief({ mean: assumedYield, weight: assumedWeight, good, poured });
    const answer = piecesToPour(goodWanted, belief, confidence);
    return [answer.kind === 'pieces' ? fullMolds(answer.pieces, cavities).pieces : answer.because];
  },
});
