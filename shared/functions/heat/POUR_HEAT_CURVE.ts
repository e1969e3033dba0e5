import { heatUpCourse } from '../../heat/heatUp/heatUpCourse.ts';
import { curveParameters, curveTimes } from '../curveParameters.ts';
import { defineSpill } from '../defineSpill.ts';
import { BLOCK, heatingMoldOf, rampPlate, SETTING, WARM_UP } from '../heatingMoldOf.ts';

export const POUR_HEAT_CURVE = defineSpill({
  name: 'POUR_HEAT_CURVE',
  family: 'heat',
  about: 'Mold top over the minutes since the plate was switched on, ready to chart.',
  params: {
    setting: SETTING,
    ...BLOCK,
    warmUp: WARM_UP,
    ...curveParameters(1800, 60),
    heatLoss: {
      kind: 'number',
      about:
        'Heat lost over the published figure for such faces, as POUR_HEAT_FIT finds it; about 0.5 under a lid.',
      bounds: { greaterThan: 0, atMost: 20 },
      default: 1,
    },
  },
  returns: [
    { name: 'time', about: 'Since switch-on', kind: 'number', measure: 'minutes' },
    { name: 'mold top', about: 'Temperature then', kind: 'number', measure: 'temperature' },
  ],
  examples: [
    {
      args: [132, 152.4, 101.6, 25.4, 100, 22, 'bare', 0, 16.05681, 16.05681, '', 'metric'],
      result: [
        [0, 22],
        [16.05681, 100],
      ],
      within: 1e-5,
      source: 'SCIPYHEATUP: 963.409 s to 100 °C',
    },
    {
      args: [132, 152.4, 101.6, 25.4, 100, 22, 'bare', 0, 60, 60, '', 'metric'],
      result: [
        [0, 22],
        [60, 115],
      ],
      within: 0.02,
      source: 'HEATSTUDY: ends at 115 °C',
    },
  ],
  notes:
    'The block is at one temperature throughout and loses heat by free convection and radiation that vary with its temperature; room air is still. The contact conductance decides nearly everything: fit yours with POUR_HEAT_FIT.',
  compute: ({ setting, warmUp, shown, between, heatLoss, ...block }) => {
    const times = curveTimes(shown, between);
    const setup = {
      plate: rampPlate(setting, block.room, warmUp),
      molds: [{ ...heatingMoldOf(block), lossShare: heatLoss }],
      roomTemperature: block.room,
    };
    const duration = Math.max(shown, between);
    const { samples } = heatUpCourse(setup, { target: setting, duration, interval: between });
    return times.map((seconds, index) => [seconds, samples[index]?.tops[0] ?? '']);
  },
});
