import { pigmentCover } from '../../batch/pigmentCover.ts';
import { DEFAULTS } from '../../material/defaults.ts';
import { defineFunction } from '../defineFunction.ts';
import { NOT_NEGATIVE, POSITIVE } from '../positive.ts';

export const POUR_LOADING = defineFunction({
  name: 'POUR_LOADING',
  family: 'batch',
  about:
    'Pigment in a layer: share of the base by weight, and grams on a square meter of the layer.',
  params: {
    pigment: {
      kind: 'number',
      measure: 'doseMass',
      about: 'Pigment or colorant in the cup.',
      bounds: NOT_NEGATIVE,
    },
    base: { kind: 'number', measure: 'baseMass', about: 'Base in the cup.', bounds: POSITIVE },
    thickness: {
      kind: 'number',
      measure: 'length',
      about: 'Thickness of the layer.',
      bounds: POSITIVE,
    },
    density: {
      kind: 'number',
      measure: 'density',
      about: 'Density of the layer.',
      bounds: POSITIVE,
      default: DEFAULTS.density.value,
    },
  },
  returns: [
    { name: 'loading', about: 'Share of the base by weight', kind: 'number', measure: 'fraction' },
    {
      name: 'cover',
      about: 'Pigment over an area of the layer',
      kind: 'number',
      measure: 'pigmentCover',
    },
  ],
  examples: [
    {
      args: [1, 100, 3, 1, 'metric'],
      result: [0.01, 30],
      within: 1e-9,
      source: '10 x 1 % x 3 mm x 1 g/mL, by hand',
    },
  ],
  notes: 'Half the thickness needs twice the loading for the same cover.',
  compute: ({ pigment, base, thickness, density }) => [
    pigment / base,
    pigmentCover(pigment / base, thickness, density),
  ],
});
