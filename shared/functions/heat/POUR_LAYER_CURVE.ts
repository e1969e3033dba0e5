import { readingAt } from '../../heat/solver/readingAt.ts';
import { curveParameters, curveTimes } from '../curveParameters.ts';
import { defineSpill } from '../defineSpill.ts';
import { AIR, notPoured, STACK, STACK_SHAPE, solveStack } from '../solveStack.ts';

export const POUR_LAYER_CURVE = defineSpill({
  name: 'POUR_LAYER_CURVE',
  family: 'heat',
  about:
    'Mean and surface temperature of every layer over the minutes since the first pour, ready to chart.',
  params: { ...STACK, shapeFactor: STACK_SHAPE, air: AIR, ...curveParameters(600, 15) },
  returns: [
    { name: 'time', about: 'Since the first pour', kind: 'number', measure: 'minutes' },
    {
      name: 'mean',
      about: 'Of the layer; it stops moving at the set temperature',
      kind: 'number',
      measure: 'temperature',
      perItemOf: 'thicknesses',
    },
    {
      name: 'surface',
      about: 'Its upper face, which the next layer meets; later the seam between them',
      kind: 'number',
      measure: 'temperature',
      perItemOf: 'thicknesses',
    },
  ],
  examples: [
    {
      args: [[3], 100, 165, '', '', '', 20, 20, 'metric'],
      result: [
        [0, 158, 157.1],
        [20, 93.6, 87.8],
      ],
      within: 0.002,
      source:
        'HEATSTUDY: a 3 mm slab on a 100 °C mold settles at a mean of 93.6 and a surface of 87.8 °C; the first surface is this model’s own',
    },
  ],
  notes:
    'The same solution as POUR_WINDOW, read on straight lines within 1 °C. A layer’s columns are blank until it is poured.',
  compute: ({ shown, between, ...stack }) => {
    const times = curveTimes(shown, between);
    const { layers } = solveStack(stack, { follow: shown });
    return times.map((time, row) => [
      time,
      ...stack.thicknesses.flatMap((_, index) => {
        const layer = layers[index];
        if (layer === undefined) return [row === 0 ? notPoured(layers.length) : '', ''];
        const reading = readingAt(layer.readings, time);
        return [reading?.mean ?? '', reading?.surface ?? ''];
      }),
    ]);
  },
});
