import { CUP_SHARE } from '../../heat/cupTimeInBand.ts';
import { microwaveTime } from '../../heat/microwaveTime.ts';
import { DEFAULTS } from '../../material/defaults.ts';
import { defineFunction } from '../defineFunction.ts';
import { POSITIVE } from '../positive.ts';

export const POUR_COOK = defineFunction({
  name: 'POUR_COOK',
  family: 'heat',
  about: 'Microwave seconds for a cup of plastisol, in bursts with a stir and a rest between.',
  params: {
    plastisol: {
      kind: 'number',
      measure: 'baseMass',
      about: 'Plastisol in the cup.',
      bounds: POSITIVE,
    },
    power: {
      kind: 'number',
      field: 'rated power',
      measure: 'power',
      about: 'Rated output of the oven.',
      bounds: { greaterThan: 0, atMost: 5000 },
      default: 1000,
    },
    cook: {
      kind: 'number',
      field: 'cook temperature',
      measure: 'temperature',
      about: 'Where it must get to, all through.',
      bounds: { greaterThan: 20, atMost: 196 },
      default: DEFAULTS.cookTemperature.value,
    },
    start: {
      kind: 'number',
      field: 'start temperature',
      measure: 'temperature',
      about: 'Where it starts.',
      bounds: { atLeast: -10, atMost: 190 },
      default: DEFAULTS.roomTemperature.value,
    },
    efficiency: {
      kind: 'number',
      field: 'microwave efficiency',
      measure: 'fraction',
      about:
        'Share of the rated output that reaches the cup; weigh and time one minute to find yours.',
      bounds: { greaterThan: 0, atMost: 1 },
      default: DEFAULTS.microwaveEfficiency.value,
    },
  },
  returns: [
    { name: 'seconds', about: 'Seconds with the oven on', kind: 'number', measure: 'seconds' },
    { name: 'bursts', about: 'Bursts of at most 30 s', kind: 'number' },
  ],
  examples: [
    {
      args: [240, 1000, 167, 22, '', 'metric'],
      result: [158, 6],
      within: 0.06,
      source:
        'HEATSTUDY: 240 g by 145 K at 1000 W in 158 s, with a specific heat of 1850 and its cup',
    },
  ],
  notes:
    'A starting point, 0.6 to 1.8 times the figure in practice. Never in one go: stop, stir to the bottom, read the temperature. Never above the SDS maximum; fumes go outdoors.',
  compute: ({ plastisol, power, cook, start, efficiency }) => {
    const bodies = [
      { mass: plastisol, specificHeat: DEFAULTS.specificHeat.value * (1 + CUP_SHARE) },
    ];
    const plan = microwaveTime({
      bodies,
      start,
      end: cook,
      ratedPower: power,
      efficiency,
      burst: 30,
      rest: 20,
    });
    return [plan.heating, plan.bursts];
  },
});
