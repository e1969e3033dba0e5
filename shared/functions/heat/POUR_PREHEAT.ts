import { moldHeatUp } from '../../heat/moldHeatUp.ts';
import { defineFunction } from '../defineFunction.ts';
import { BLOCK, moldOf, notReached, SETTING, TARGET } from '../heatParts.ts';

export const POUR_PREHEAT = defineFunction({
  name: 'POUR_PREHEAT',
  family: 'heat',
  about: 'Minutes from switching the plate on until the mold top is hot.',
  params: {
    target: TARGET,
    setting: SETTING,
    ...BLOCK,
    warmUp: {
      kind: 'number',
      measure: 'minutes',
      about: 'Minutes the plate itself takes from cold to its setting.',
      bounds: { atLeast: 0, atMost: 7200 },
      default: 0,
    },
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
      args: [212, 270, 6, 4, 1, 100, 72],
      result: 14,
      within: 0.15,
      source: 'HEATSTUDY: 14 min in whole minutes, loss varying with temperature',
    },
    {
      args: [212, 200, 6, 4, 1, 100, 72],
      result: 'not reached: the mold top settles at 180 °F; set the plate to 239 °F or more',
      source: '(100 x 200 + 19.07 x 72) / 119.07 and 212 + 0.1907 x 140, by hand',
    },
  ],
  notes:
    'The block is at one temperature throughout, its loss constant at the 100 °C figure; minutes come out within 12 % of those with a loss that varies with temperature while the target is at most 80 % of the rise. Read the mold, not the dial.',
  compute: ({ target, setting, warmUp, ...block }, system) => {
    const mold = moldOf(block);
    const { plateau, time } = moldHeatUp(
      { mold, plateSetting: setting, plateWarmUp: warmUp },
      target,
    );
    return [time.kind === 'reached' ? time.seconds : notReached(plateau, time.remedies, system)];
  },
});
