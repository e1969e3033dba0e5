import { blockSetting } from '../../heat/heatUp/blockInRoom.ts';
import { blockTime } from '../../heat/heatUp/blockTime.ts';
import { defineFunction } from '../defineFunction.ts';
import { BLOCK, blockOf, notReached, SETTING, TARGET, WARM_UP } from '../heatingMoldOf.ts';

export const POUR_PREHEAT = defineFunction({
  name: 'POUR_PREHEAT',
  family: 'heat',
  about: 'Minutes from switching the plate on until the mold top is hot.',
  params: {
    target: TARGET,
    setting: SETTING,
    ...BLOCK,
    warmUp: WARM_UP,
  },
  returns: [
    {
      name: 'minutes',
      about: 'Minutes until the mold top is at the target, or why it never is',
      kind: 'number',
      measure: 'minutes',
    },
  ],
  examples: [
    {
      args: [100, 132, 152.4, 101.6, 25.4, 100, 22, 'bare', 0, 'metric'],
      result: 16.05682,
      within: 1e-5,
      source: 'SCIPYHEATUP: 963.409 s',
    },
    {
      args: [212, 270, 6, 4, 1, 100, 72],
      result: 14,
      within: 0.15,
      source: 'HEATSTUDY: 14 min in whole minutes, loss varying with temperature',
    },
    {
      args: [212, 200, 6, 4, 1, 100, 72],
      result: 'not reached: the mold top settles at 180 °F; set the plate to 241 °F or more',
      source:
        'with a constant loss (100 x 200 + 19.07 x 72) / 119.07 = 180 and 212 + 0.1907 x 140 = 239, by hand; the rest is this model’s own',
    },
  ],
  notes:
    'The block is at one temperature throughout and its loss varies with its temperature: the curve of POUR_HEAT_CURVE within 0.1 %. The last degrees below the plateau take long, and any error of the contact with them: keep the target below 90 % of the rise. Read the mold, not the dial.',
  compute: ({ target, setting, warmUp, ...params }, system) => {
    const block = blockOf(params);
    const time = blockTime({ ...block, plateSetting: setting, plateWarmUp: warmUp }, target);
    if (time.kind === 'reached') return [time.seconds];
    return [notReached(time.plateau, blockSetting(block, target), system)];
  },
});
