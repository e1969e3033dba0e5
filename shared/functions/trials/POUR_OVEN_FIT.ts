import { CUP_SHARE } from '../../heat/cupTimeInBand.ts';
import { microwaveEfficiency } from '../../heat/fit/microwaveEfficiency.ts';
import { DEFAULTS } from '../../material/defaults.ts';
import { figureAdviceText } from '../../trials/figureAdviceText.ts';
import { defineFunction } from '../defineFunction.ts';
import { POSITIVE } from '../positive.ts';

/** Share of the figure that leaves a cook time to the next stir. */
const ENOUGH = 0.1;

export const POUR_OVEN_FIT = defineFunction({
  name: 'POUR_OVEN_FIT',
  family: 'trials',
  about: 'Share of a microwave’s rated output that reaches the cup, from one weighed heating.',
  params: {
    plastisol: {
      kind: 'number',
      measure: 'baseMass',
      about: 'Plastisol in the cup.',
      bounds: POSITIVE,
    },
    start: {
      kind: 'number',
      field: 'start temperature',
      measure: 'temperature',
      about: 'Before, stirred.',
      bounds: { atLeast: -10, atMost: 190 },
    },
    end: {
      kind: 'number',
      field: 'end temperature',
      measure: 'temperature',
      about: 'After, stirred.',
      bounds: { atLeast: -10, atMost: 250 },
    },
    seconds: {
      kind: 'number',
      measure: 'seconds',
      about: 'Seconds with the oven on.',
      bounds: { greaterThan: 0, atMost: 3600 },
    },
    power: {
      kind: 'number',
      field: 'rated power',
      measure: 'power',
      about: 'Rated output of the oven.',
      bounds: { greaterThan: 0, atMost: 5000 },
    },
    readingError: {
      kind: 'number',
      field: 'error of a reading',
      measure: 'temperatureDifference',
      about: 'How far a reading is off, two times out of three.',
      bounds: { greaterThan: 0, atMost: 50 },
      default: 2,
    },
  },
  returns: [
    { name: 'share', about: 'Of the rated output', kind: 'number', measure: 'fraction' },
    {
      name: 'standard error',
      about: 'Two times out of three it is off by less',
      kind: 'number',
      measure: 'fraction',
    },
    { name: 'verdict', about: 'What to make of it', kind: 'text' },
  ],
  examples: [
    {
      args: [240, 22, 167, 158, 1000, '', 'metric'],
      result: [0.45, 0.011, 'good: known to ±2 %'],
      within: 0.07,
      source:
        'HEATSTUDY read backward: 240 g by 145 K at 1000 W in 158 s for a share of 0.45; the error by hand',
    },
  ],
  notes:
    'Heat taken up over rated output and time, the cup counted as a share of the plastisol; start from cold and heat by 50 °C or more in one burst. The time counts as good to 1 s, the weight to 1 %. What the cup loses meanwhile counts as not absorbed. Never above the SDS maximum; fumes go outdoors.',
  compute: ({ plastisol, start, end, seconds, power, readingError }) => {
    const specificHeat = DEFAULTS.specificHeat.value * (1 + CUP_SHARE);
    const found = microwaveEfficiency({
      bodies: [{ mass: plastisol, specificHeat }],
      start,
      end,
      seconds,
      ratedPower: power,
      temperatureError: readingError,
      timeError: 1,
      massShareError: 0.01,
    });
    const words = figureAdviceText(found, ENOUGH, 'heat further from cold in one burst');
    return [found.value, found.standardError, words];
  },
});
