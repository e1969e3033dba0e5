import { setTemperatureFromPucks } from '../../heat/fit/setTemperatureFromPucks.ts';
import { puckText } from '../../trials/bench/puckText.ts';
import { defineSpill } from '../defineSpill.ts';
import { CUP_RANGE, layerOf, MOLD_TOP, THICKNESS } from '../heatingMoldOf.ts';

const FOR_EACH = { matches: { list: 'seconds' }, oneForAll: true } as const;

export const POUR_SET_FIT = defineSpill({
  name: 'POUR_SET_FIT',
  family: 'trials',
  about: 'Set temperature of a plastisol from pucks that were tilted until nothing moved.',
  params: {
    seconds: {
      kind: 'list',
      item: 'seconds',
      field: 'seconds',
      measure: 'seconds',
      about: 'For each puck, from the pour to the first tilt at which nothing moved.',
      bounds: { greaterThan: 0, atMost: 3600 },
      most: 50,
    },
    every: {
      kind: 'number',
      field: 'seconds between tilts',
      measure: 'seconds',
      about: 'Seconds from tilt to tilt.',
      bounds: { greaterThan: 0, atMost: 600 },
    },
    thicknesses: {
      kind: 'list',
      item: 'puck thickness',
      measure: 'length',
      about: 'Of each puck, or one for all.',
      bounds: THICKNESS.bounds,
      ...FOR_EACH,
    },
    moldTops: {
      kind: 'list',
      item: 'mold top',
      measure: 'temperature',
      about: 'Under each puck, or one for all.',
      bounds: MOLD_TOP.bounds,
      ...FOR_EACH,
    },
    cupTemperatures: {
      kind: 'list',
      item: 'cup temperature',
      measure: 'temperature',
      about: 'Of each puck at its pour, or one for all.',
      bounds: CUP_RANGE,
      ...FOR_EACH,
    },
  },
  returns: [
    { name: 'parameter', about: 'What was found', kind: 'text' },
    { name: 'value', about: 'Mean over the pucks', kind: 'number', measure: 'temperature' },
    {
      name: 'standard error',
      about: 'Two times out of three it is off by less',
      kind: 'number',
      measure: 'temperatureDifference',
    },
    { name: 'verdict', about: 'What to make of it', kind: 'text' },
  ],
  examples: [
    {
      args: [[39.5], 5, 3, 60, 165, 'metric'],
      result: [['set temperature', 92, 1.22, 'one puck: pour two more to see how they scatter']],
      within: 0.02,
      source:
        'HEATSTUDY: a 3 mm slab on a 60 °C mold is down to 92 °C in 37 s; the error is this model’s own',
    },
  ],
  notes:
    'Mean temperature of a wide flat puck, by the model of POUR_OPEN_TIME, when it stopped between two tilts. What all pucks share (thickness, loss in pouring) is not in the error; the figure serves that model best.',
  compute: ({ seconds, every, thicknesses, moldTops, cupTemperatures }) => {
    const trials = seconds.map((time, index) => ({
      puck: layerOf({
        thickness: thicknesses[index] ?? Number.NaN,
        moldTop: moldTops[index] ?? Number.NaN,
        pour: cupTemperatures[index] ?? Number.NaN,
        shapeFactor: 1,
      }),
      seconds: time,
      interval: every,
    }));
    const found = setTemperatureFromPucks(trials);
    return [
      [
        'set temperature',
        found.value,
        found.standardError,
        puckText(trials.length, found.standardError),
      ],
    ];
  },
});
