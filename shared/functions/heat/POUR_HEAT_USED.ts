import { heatUsed } from '../../heat/heatUsed.ts';
import { defineFunction } from '../defineFunction.ts';

export const POUR_HEAT_USED = defineFunction({
  name: 'POUR_HEAT_USED',
  family: 'heat',
  about: 'Time at heat as the minutes at 170 °C (338 °F) that age plastisol as much.',
  params: {
    temperature: {
      kind: 'number',
      measure: 'temperature',
      about: 'Temperature it was held at.',
      bounds: { atLeast: 0, atMost: 250 },
    },
    held: {
      kind: 'number',
      field: 'minutes held',
      measure: 'minutes',
      about: 'Minutes at that temperature.',
      bounds: { atLeast: 0, atMost: 360_000 },
    },
  },
  returns: [
    {
      name: 'equivalent minutes',
      about: 'Minutes at 170 °C (338 °F); add them up over every heating',
      kind: 'number',
      measure: 'minutes',
    },
  ],
  examples: [
    {
      args: [180, 10, 'metric'],
      result: 25,
      within: 0.03,
      source: 'PVCAGEING: Arrhenius at 150 kJ/mol, factor 2.5 in two figures',
    },
    { args: [160, 10, 'metric'], result: 3.9, within: 0.02, source: 'the same, factor 0.39' },
  ],
  notes:
    'Arrhenius, 150 kJ/mol, fitted between 160 and 220 °C. A budget of 60 such minutes is a weak figure; color and smell decide.',
  compute: ({ temperature, held }) => [
    heatUsed([{ from: temperature, to: temperature, seconds: held }]),
  ],
});
