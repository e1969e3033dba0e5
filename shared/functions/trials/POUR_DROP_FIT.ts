import { dropVolume } from '../../heat/fit/dropVolume.ts';
import { DEFAULTS } from '../../material/defaults.ts';
import { figureAdviceText } from '../../trials/figureAdviceText.ts';
import { defineFunction } from '../defineFunction.ts';
import { POSITIVE } from '../positive.ts';

export const POUR_DROP_FIT = defineFunction({
  name: 'POUR_DROP_FIT',
  family: 'trials',
  about: 'Volume of one drop from a bottle, from drops counted onto a scale.',
  params: {
    weight: { kind: 'number', measure: 'doseMass', about: 'Of all the drops.', bounds: POSITIVE },
    drops: {
      kind: 'number',
      about: 'How many; 50 make a useful trial.',
      bounds: { atLeast: 1, atMost: 100_000, whole: true },
    },
    density: {
      kind: 'number',
      measure: 'density',
      about: 'Of the liquid.',
      bounds: POSITIVE,
      default: DEFAULTS.colorantDensity.value,
    },
    scaleError: {
      kind: 'number',
      field: 'error of the scale',
      measure: 'doseMass',
      about: 'How far the scale is off, two times out of three.',
      bounds: POSITIVE,
      default: 2e-5,
    },
    dropSpread: {
      kind: 'number',
      field: 'spread of the drops',
      measure: 'fraction',
      about: 'How far one drop is from the mean.',
      bounds: { atLeast: 0, atMost: 1 },
      default: 0.1,
    },
  },
  returns: [
    { name: 'drop', about: 'Volume of one drop', kind: 'number', measure: 'dropVolume' },
    {
      name: 'standard error',
      about: 'Two times out of three it is off by less',
      kind: 'number',
      measure: 'dropVolume',
    },
    { name: 'verdict', about: 'What to make of it', kind: 'text' },
  ],
  examples: [
    {
      args: [1, 20, 1, 0.01, 0.1],
      result: [50, 1.2247448713915892, 'good: known to ±2 %'],
      within: 1e-9,
      source:
        'GNUUNITS: twenty metric drops make a milliliter; the error is 50 µL by sqrt(0.01^2 + 0.1^2 / 20), by hand',
    },
  ],
  notes:
    'Weight over count and density; the density’s own error is not in it. Hold the bottle as when dosing: a drop grows with the tip and shrinks with heat.',
  compute: ({ weight, drops, density, scaleError, dropSpread }) => {
    const found = dropVolume({ mass: weight, drops, density, scaleError, dropSpread });
    const words = figureAdviceText(found, DEFAULTS.doseTolerance.value / 2, 'count more drops');
    return [found.value, found.standardError, words];
  },
});
