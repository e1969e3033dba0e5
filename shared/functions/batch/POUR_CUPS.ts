import { layerBatch } from '../../batch/layerBatch.ts';
import { DEFAULTS } from '../../material/defaults.ts';
import { BASE_DENSITY, CUP_FILL, TEMPERATURE_RISE } from '../baseDensity.ts';
import { defineFunction } from '../defineFunction.ts';
import { POSITIVE } from '../positive.ts';

export const POUR_CUPS = defineFunction({
  name: 'POUR_CUPS',
  family: 'batch',
  about: 'Equal cups for an amount of plastisol, and what goes into each.',
  params: {
    plastisol: {
      kind: 'number',
      measure: 'liquidVolume',
      about: 'Cold plastisol to share out.',
      bounds: POSITIVE,
    },
    cupFill: CUP_FILL,
    density: BASE_DENSITY,
    temperatureRise: TEMPERATURE_RISE,
  },
  returns: [
    { name: 'cups', about: 'Equal cups', kind: 'number' },
    { name: 'volume each', about: 'Cold volume in each', kind: 'number', measure: 'liquidVolume' },
    { name: 'weight each', about: 'Weight in each', kind: 'number', measure: 'baseMass' },
  ],
  examples: [
    {
      args: [500, 200, 1.04, 0, 'metric'],
      result: [3, 166.6667, 173.3333],
      within: 1e-6,
      source: '500 / 3 and x 1.04, by hand',
    },
  ],
  notes: 'Swelling by 6.5e-4 per K is counted against the cup.',
  compute: ({ plastisol, cupFill, density, temperatureRise }) => {
    const batch = layerBatch({
      pieces: 1,
      cavityVolume: plastisol,
      share: 1,
      density,
      overpour: 0,
      cupLoss: 0,
      colorCheck: 0,
      cupFill,
      expansion: DEFAULTS.expansion.value,
      temperatureRise,
    });
    return [batch.cups, batch.cupVolume, batch.cupMass];
  },
});
