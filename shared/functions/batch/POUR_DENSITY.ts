import { mixtureDensity } from '../../material/mixtureDensity.ts';
import { defineFunction } from '../defineFunction.ts';

export const POUR_DENSITY = defineFunction({
  name: 'POUR_DENSITY',
  family: 'batch',
  about: 'Density of base with an additive stirred in.',
  params: {
    base: {
      kind: 'number',
      field: 'base weight',
      measure: 'baseMass',
      about: 'Base in the cup.',
      bounds: { greaterThan: 0 },
    },
    baseDensity: {
      kind: 'number',
      measure: 'density',
      about: 'Density of the base.',
      bounds: { greaterThan: 0 },
    },
    additive: {
      kind: 'number',
      field: 'additive weight',
      measure: 'baseMass',
      about: 'Additive stirred in.',
      bounds: { atLeast: 0 },
    },
    additiveDensity: {
      kind: 'number',
      measure: 'density',
      about: 'True density of the additive, not of its powder.',
      bounds: { greaterThan: 0 },
    },
  },
  returns: [
    { name: 'density', about: 'Density of the mixture', kind: 'number', measure: 'density' },
  ],
  examples: [
    {
      args: [98, 1.20842, 2, 2.82, 'metric'],
      result: 1.2224,
      within: 5e-5,
      source: 'ADDITIVE, F3: 2 % mica',
    },
  ],
  notes:
    'Volumes add; air stirred in is not counted. Feed the answer back in for a second additive.',
  compute: ({ base, baseDensity, additive, additiveDensity }) => [
    mixtureDensity([
      { mass: base, density: baseDensity },
      { mass: additive, density: additiveDensity },
    ]),
  ],
});
