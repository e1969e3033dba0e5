import { runTime } from '../../day/runTime.ts';
import { defineFunction } from '../defineFunction.ts';
import { NOT_NEGATIVE } from '../positive.ts';

export const POUR_RUN_TIME = defineFunction({
  name: 'POUR_RUN_TIME',
  family: 'day',
  about: 'From the first mold on the plate to the last piece out of its mold.',
  params: {
    rounds: {
      kind: 'number',
      about: 'Fillings of the molds.',
      bounds: { atLeast: 1, atMost: 10_000, whole: true },
    },
    heatUp: {
      kind: 'number',
      measure: 'minutes',
      about: 'From setting a mold on the plate to the first pour, the wait after ready included.',
      bounds: NOT_NEGATIVE,
    },
    pouring: {
      kind: 'number',
      measure: 'minutes',
      about: 'From the first pour of a round to the end of its top-off.',
      bounds: NOT_NEGATIVE,
    },
    cooling: {
      kind: 'number',
      measure: 'minutes',
      about: 'Off the plate until the pieces are out.',
      bounds: NOT_NEGATIVE,
    },
    moldSets: {
      kind: 'number',
      about: 'Sets of molds that take turns on the plate.',
      bounds: { atLeast: 1, atMost: 50, whole: true },
      default: 1,
    },
  },
  returns: [{ name: 'run time', about: 'In all', kind: 'number', measure: 'minutes' }],
  examples: [
    { args: [3, 30, 10, 60], result: 300, source: '3 × (30 + 10 + 60), by hand' },
    {
      args: [3, 30, 10, 60, 2],
      result: 200,
      source: 'on the plate at 0, 40 and 100: the first set is empty again at 100, by hand',
    },
    {
      args: [3, 30, 10, 60, 3],
      result: 180,
      source: 'on the plate at 0, 40 and 80, by hand',
    },
  ],
  notes:
    'A round goes on when the plate is free and its molds are empty. Hands, cups and nights set no limit here; the plan of a pour day has them. Every round is taken to heat up as long as the first, so that it errs to the long side.',
  compute: ({ moldSets, ...times }) => [runTime({ ...times, sets: moldSets })],
});
