import { layerContactTemperature } from '../../heat/contactTemperature.ts';
import { DEFAULTS } from '../../material/defaults.ts';
import { defineFunction } from '../defineFunction.ts';
import { POUR } from '../heatingMoldOf.ts';

export const POUR_CONTACT = defineFunction({
  name: 'POUR_CONTACT',
  family: 'heat',
  about:
    'Temperature at which a new layer meets the one below; above the bond temperature they bond.',
  params: {
    surface: {
      kind: 'number',
      measure: 'temperature',
      about: 'Surface of the layer below as the pour lands.',
      bounds: { atLeast: -20, atMost: 250 },
    },
    pour: POUR,
  },
  returns: [
    {
      name: 'contact temperature',
      about:
        'Compare it with the bond temperature, 116 °C (241 °F) until your own tear tests say otherwise',
      kind: 'number',
      measure: 'temperature',
    },
  ],
  examples: [
    {
      args: [88, 165, 'metric'],
      result: 123,
      within: 1e-9,
      source: 'HEATSTUDY: 88 °C surface and 158 °C as poured; the plain average',
    },
  ],
  notes:
    'Two bodies of one plastic meet at the average of their surfaces. The cup loses 7 °C in pouring. Oil, dust or release agent between the layers spoil a bond that is hot enough.',
  compute: ({ surface, pour }) => [
    layerContactTemperature(surface, pour - DEFAULTS.pourLoss.value),
  ],
});
