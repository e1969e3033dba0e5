import { colorantCut } from '../../batch/colorantCut.ts';
import { DEFAULTS } from '../../material/defaults.ts';
import { defineFunction } from '../defineFunction.ts';
import { POSITIVE } from '../positive.ts';

export const POUR_CUT = defineFunction({
  name: 'POUR_CUT',
  family: 'batch',
  about:
    'A weaker colorant, so that a fraction of a drop becomes drops to count: how far to cut it and what to weigh together.',
  params: {
    drops: {
      kind: 'number',
      about: 'Drops of the uncut colorant that the dose asks for.',
      bounds: POSITIVE,
    },
    leastDrops: {
      kind: 'number',
      field: 'fewest drops',
      about: 'Fewest drops of the cut to count.',
      bounds: { atLeast: 1, atMost: 1000, whole: true },
      default: DEFAULTS.leastDrops.value,
    },
    cutVolume: {
      kind: 'number',
      measure: 'spoonVolume',
      about: 'How much of the cut to make.',
      bounds: POSITIVE,
      default: 1e-5,
    },
    colorantDensity: {
      kind: 'number',
      measure: 'density',
      about: 'Density of the colorant.',
      bounds: POSITIVE,
      default: DEFAULTS.colorantDensity.value,
    },
    thinnerDensity: {
      kind: 'number',
      measure: 'density',
      about: 'Density of the clear base or softener that thins it.',
      bounds: POSITIVE,
      default: DEFAULTS.density.value,
    },
  },
  returns: [
    { name: 'parts', about: 'One part of colorant in so many parts in all', kind: 'number' },
    { name: 'drops', about: 'Drops of the cut for the dose', kind: 'number' },
    { name: 'colorant', about: 'Colorant to weigh', kind: 'number', measure: 'doseMass' },
    {
      name: 'thinner',
      about: 'Clear base or softener to weigh',
      kind: 'number',
      measure: 'doseMass',
    },
  ],
  examples: [
    {
      args: [0.25, 8, 32, 1, 1, 'metric'],
      result: [32, 8, 1, 31],
      within: 1e-9,
      source: '8 / 0.25 parts; 32 mL of density 1 in 1 + 31, by hand',
    },
  ],
  notes:
    'Parts by volume, mixed cold and shaken. What the cut adds to the cup is not taken off the base: a few drops do not matter, a few milliliters soften the piece.',
  compute: ({ drops, leastDrops, cutVolume, colorantDensity, thinnerDensity }) => {
    const parts = Math.ceil(leastDrops / drops);
    if (parts < 2) return ['no cut needed: count the drops as they are', '', '', ''];
    const cut = colorantCut({ parts, volume: cutVolume, colorantDensity, thinnerDensity });
    return [parts, Math.round(drops * parts), cut.colorantMass, cut.thinnerMass];
  },
});
