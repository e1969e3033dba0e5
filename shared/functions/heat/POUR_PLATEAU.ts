import { blockPlateau } from '../../heat/heatUp/blockInRoom.ts';
import { defineFunction } from '../defineFunction.ts';
import { BLOCK, blockOf, SETTING } from '../heatingMoldOf.ts';

export const POUR_PLATEAU = defineFunction({
  name: 'POUR_PLATEAU',
  family: 'heat',
  about: 'Where the mold top settles when the plate is left at a setting.',
  params: { setting: SETTING, ...BLOCK },
  returns: [
    {
      name: 'plateau',
      about: 'Temperature at which the mold top settles',
      kind: 'number',
      measure: 'temperature',
    },
  ],
  examples: [
    {
      args: [132, 152.4, 101.6, 25.4, 100, 22, 'bare', 'metric'],
      result: 115,
      within: 0.02,
      source: 'HEATSTUDY: ends at 115 °C with varying loss',
    },
  ],
  notes:
    'What the plate gives through its contact equals what top and sides lose to the room by free convection and radiation, at that temperature.',
  compute: ({ setting, ...block }) => [blockPlateau(blockOf(block), setting)],
});
