import { fillShare, PROFILES } from '../../batch/fillShare.ts';
import { requireGreater } from '../../errors/requireGreater.ts';
import { defineFunction } from '../defineFunction.ts';

export const POUR_SHARE = defineFunction({
  name: 'POUR_SHARE',
  family: 'batch',
  about:
    'Share of a cavity’s volume that one layer takes, from its fill mark and the mark before it.',
  params: {
    profile: {
      kind: 'choice',
      about: 'Cross-section of the cavity.',
      choices: PROFILES,
    },
    fillMark: {
      kind: 'number',
      measure: 'fraction',
      about: 'Height of the layer’s surface over the cavity depth.',
      bounds: { greaterThan: 0, atMost: 1 },
    },
    markBefore: {
      kind: 'number',
      measure: 'fraction',
      about: 'Height of the layer below.',
      bounds: { atLeast: 0, lessThan: 1 },
      default: 0,
    },
  },
  returns: [
    { name: 'share', about: 'Share of the cavity’s volume', kind: 'number', measure: 'fraction' },
  ],
  examples: [
    { args: ['V', 0.5], result: 0.25, source: 'similar triangles' },
    {
      args: ['ellipse', 0.25],
      result: 0.195501,
      within: 1e-5,
      source: 'CRC, circular segment, printed to 6 places',
    },
  ],
  notes: 'Holds along a cavity of one cross-section; tapering ends differ.',
  compute: ({ profile, fillMark, markBefore }) => {
    requireGreater(
      { field: 'fill mark', value: fillMark },
      { field: 'mark before', value: markBefore },
      'fraction',
    );
    return [fillShare(profile, fillMark) - fillShare(profile, markBefore)];
  },
});
