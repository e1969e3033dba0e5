import { openTime } from '../../heat/openTime.ts';
import { DEFAULTS } from '../../material/defaults.ts';
import { defineFunction } from '../defineFunction.ts';
import { layerOf, MOLD_TOP, POUR, SHAPE, THICKNESS } from '../heatingMoldOf.ts';

export const POUR_OPEN_TIME = defineFunction({
  name: 'POUR_OPEN_TIME',
  family: 'heat',
  about: 'Seconds until a poured layer no longer moves.',
  params: {
    thickness: THICKNESS,
    moldTop: MOLD_TOP,
    pour: POUR,
    setTemperature: {
      kind: 'number',
      measure: 'temperature',
      about: 'Mean temperature at which the layer stops moving.',
      bounds: { atLeast: 40, atMost: 150 },
      default: DEFAULTS.setTemperature.value,
    },
    shapeFactor: SHAPE,
  },
  returns: [
    { name: 'open time', about: 'Seconds, or "stays open"', kind: 'number', measure: 'seconds' },
  ],
  examples: [
    {
      args: [2, 60, 165, '', '', 'metric'],
      result: 19,
      within: 0.05,
      source: 'HEATSTUDY: 2 mm slab, 60 °C mold, in whole seconds',
    },
    {
      args: [3, 60, 165, '', '', 'metric'],
      result: 37,
      within: 0.05,
      source: 'HEATSTUDY: 3 mm slab',
    },
    {
      args: [3, 100, 165, '', '', 'metric'],
      result: 'stays open',
      source: 'HEATSTUDY: a 3 mm slab on a 100 °C mold settles at a mean of 93.6 °C',
    },
  ],
  notes:
    'One layer on its own, exact; a layer on others stays open about three times as long: POUR_WINDOW solves a stack. A slab in a metal mold of constant temperature, its free surface open to still air; for other cavities use volume over wetted metal area. The cup loses 7 °C in pouring. Not for silicone or plaster molds.',
  compute: ({ thickness, moldTop, pour, setTemperature, shapeFactor }) => {
    const answer = openTime(layerOf({ thickness, moldTop, pour, shapeFactor }), setTemperature);
    return [answer.kind === 'seconds' ? answer.seconds : answer.kind];
  },
});
