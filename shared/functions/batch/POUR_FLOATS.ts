import { floatOrSink } from '../../material/floatOrSink.ts';
import { defineFunction } from '../defineFunction.ts';

export const POUR_FLOATS = defineFunction({
  name: 'POUR_FLOATS',
  family: 'batch',
  about: 'Whether a piece floats or sinks in fresh water, with its hook and weight.',
  params: {
    piece: {
      kind: 'number',
      field: 'piece weight',
      measure: 'baseMass',
      about: 'Plastic alone.',
      bounds: { greaterThan: 0 },
    },
    pieceDensity: {
      kind: 'number',
      measure: 'density',
      about: 'Density of the plastic.',
      bounds: { greaterThan: 0 },
    },
    rigging: {
      kind: 'number',
      field: 'hook and weight',
      measure: 'baseMass',
      about: 'Hook and weight together.',
      bounds: { atLeast: 0 },
      default: 0,
    },
    riggingDensity: {
      kind: 'number',
      measure: 'density',
      about: 'Their density: steel 7.85, tungsten 17 to 19.',
      bounds: { greaterThan: 0 },
      default: 7850,
    },
    water: {
      kind: 'number',
      field: 'water temperature',
      measure: 'temperature',
      about: 'Of the water.',
      bounds: { atLeast: 0, atMost: 100 },
      default: 15,
    },
  },
  returns: [
    { name: 'verdict', about: 'floats or sinks', kind: 'text' },
    {
      name: 'density',
      about: 'Density of piece, hook and weight together',
      kind: 'number',
      measure: 'density',
    },
    {
      name: 'weight in water',
      about: 'Pull on the line in water; below zero it floats up',
      kind: 'number',
      measure: 'doseMass',
    },
  ],
  examples: [
    {
      args: [10.4, 1.04, '', '', 20, 'metric'],
      result: ['sinks', 1.04, 0.41797],
      within: 1e-4,
      source: 'CIPMWATER: water of 0.998203 g/mL at 20 °C, Archimedes by hand',
    },
  ],
  notes: 'Fresh water; salt water is about 2.5 % denser. Trapped air is not counted.',
  compute: ({ piece, pieceDensity, rigging, riggingDensity, water }) => {
    const answer = floatOrSink({
      pieceMass: piece,
      pieceDensity,
      riggingMass: rigging,
      riggingDensity,
      waterTemperature: water,
    });
    return [answer.verdict, answer.density, answer.weightInWater];
  },
});
