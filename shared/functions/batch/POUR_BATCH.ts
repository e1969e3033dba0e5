import { layerBatch } from '../../batch/layerBatch.ts';
import { DEFAULTS } from '../../material/defaults.ts';
import { BASE_DENSITY, CUP_FILL, TEMPERATURE_RISE } from '../baseDensity.ts';
import { defineFunction } from '../defineFunction.ts';
import { NOT_NEGATIVE, POSITIVE } from '../positive.ts';

export const POUR_BATCH = defineFunction({
  name: 'POUR_BATCH',
  family: 'batch',
  about: 'Plastisol of one layer: volume, weight and number of equal cups.',
  params: {
    pieces: {
      kind: 'number',
      about: 'Pieces to pour.',
      bounds: { atLeast: 1, atMost: 1_000_000, whole: true },
    },
    cavityVolume: {
      kind: 'number',
      measure: 'liquidVolume',
      about: 'What one cavity holds.',
      bounds: POSITIVE,
    },
    share: {
      kind: 'number',
      measure: 'fraction',
      about: 'Share of the cavity that this layer takes.',
      bounds: { greaterThan: 0, atMost: 1 },
      default: 1,
    },
    density: BASE_DENSITY,
    overpour: {
      kind: 'number',
      measure: 'fraction',
      about: 'Extra for topping off and drips.',
      bounds: { atLeast: 0, atMost: 1 },
      default: DEFAULTS.overpour.value,
    },
    cupLoss: {
      kind: 'number',
      measure: 'baseMass',
      about: 'Left on the wall of each cup.',
      bounds: NOT_NEGATIVE,
      default: 0.006,
    },
    colorCheck: {
      kind: 'number',
      measure: 'baseMass',
      about: 'Drizzled out of the layer to judge its color.',
      bounds: NOT_NEGATIVE,
      default: 0.004,
    },
    cupFill: CUP_FILL,
    temperatureRise: TEMPERATURE_RISE,
  },
  returns: [
    { name: 'volume', about: 'Cold volume in all', kind: 'number', measure: 'liquidVolume' },
    { name: 'weight', about: 'Weight in all', kind: 'number', measure: 'baseMass' },
    { name: 'cups', about: 'Equal cups', kind: 'number' },
  ],
  examples: [
    {
      args: [100, 10, 0.5, 1, 0, 0, 0, 600, 0, 'metric'],
      result: [500, 500, 1],
      within: 1e-9,
      source: '100 x 10 mL x 0.5, by hand',
    },
    {
      args: [100, 10, 0.5, 1, 0, 0, 0, 200, 0, 'metric'],
      result: [500, 500, 3],
      within: 1e-9,
      source: 'the same in cups of 200 mL',
    },
  ],
  notes:
    'Mass = pieces x volume x share x density x (1 + overpour) + color check + cup loss x cups; the loss of the last cup is counted when cups are.',
  compute: (args) => {
    const batch = layerBatch({ ...args, expansion: DEFAULTS.expansion.value });
    return [batch.totalVolume, batch.totalMass, batch.cups];
  },
});
