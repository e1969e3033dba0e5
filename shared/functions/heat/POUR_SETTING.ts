import { blockSetting } from '../../heat/heatUp/blockInRoom.ts';
import { defineFunction } from '../defineFunction.ts';
import { BLOCK, blockOf, pastDial, TARGET } from '../heatingMoldOf.ts';

export const POUR_SETTING = defineFunction({
  name: 'POUR_SETTING',
  family: 'heat',
  about: 'Plate setting at which the mold top settles above a target.',
  params: {
    target: TARGET,
    ...BLOCK,
    margin: {
      kind: 'number',
      measure: 'temperatureDifference',
      about:
        'How far above the target the mold would settle; without it the last degree takes for ever.',
      bounds: { atLeast: 0, atMost: 100 },
      default: 10,
    },
    highest: {
      kind: 'number',
      field: 'highest setting',
      measure: 'temperature',
      about: 'End of the dial.',
      bounds: { greaterThan: 0, atMost: 400 },
      default: 204.44444444444446,
    },
  },
  returns: [
    {
      name: 'setting',
      about: 'Plate setting, unrounded, or why none will do',
      kind: 'number',
      measure: 'temperature',
    },
  ],
  examples: [
    {
      args: [115, 152.4, 101.6, 25.4, 100, 22, 'bare', 0, 200, 'metric'],
      result: 133,
      within: 0.02,
      source: 'HEATSTUDY read backward: a plate at 132 °C ends at 115 °C',
    },
    {
      args: [212, 6, 4, 1, 100, 72, 'bare', 18, 250],
      result:
        'not reached: the dial ends at 250 °F and 262 °F is needed; cover the mold, or a flatter contact',
      source:
        'with a constant loss 230 + 0.1907 x 158 = 260, by hand; the rest is this model’s own',
    },
  ],
  notes:
    'Dials are off by 15 °C and more: check the mold top with a surface probe, or infrared on tape or matt paint.',
  compute: ({ target, margin, highest, ...block }, system) => {
    const setting = blockSetting(blockOf(block), target, margin);
    return [setting <= highest ? setting : pastDial(setting, highest, system)];
  },
});
