import { coolToDemold } from '../../heat/coolToDemold.ts';
import { coolingLoss } from '../../heat/heatUp/coolingLoss.ts';
import { DEFAULTS } from '../../material/defaults.ts';
import { defineFunction } from '../defineFunction.ts';
import { BLOCK_ONLY, blockOf, FINISH, ROOM, wholeTemperatureText } from '../heatingMoldOf.ts';
import { POSITIVE } from '../positive.ts';

export const POUR_COOL = defineFunction({
  name: 'POUR_COOL',
  family: 'heat',
  about: 'Minutes off the hot plate until pieces may come out of the mold.',
  params: {
    ...BLOCK_ONLY,
    depth: {
      kind: 'number',
      field: 'casting depth',
      measure: 'length',
      about: 'From the metal to the free surface, or to the middle of a closed cavity.',
      bounds: POSITIVE,
    },
    moldStart: {
      kind: 'number',
      field: 'mold temperature',
      measure: 'temperature',
      about: 'Mold as it leaves the plate.',
      bounds: { atLeast: 20, atMost: 250 },
      default: 105,
    },
    demold: {
      kind: 'number',
      field: 'demold temperature',
      measure: 'temperature',
      about: 'Pieces keep their shape below this.',
      bounds: { atLeast: 20, atMost: 100 },
      default: DEFAULTS.demoldTemperature.value,
    },
    room: ROOM,
    finish: FINISH,
  },
  returns: [
    { name: 'minutes', about: 'Minutes, or why never', kind: 'number', measure: 'minutes' },
  ],
  examples: [
    {
      args: [152.4, 101.6, 25.4, 1, 110, 85, 22, 'bare', 'metric'],
      result: 18,
      within: 0.03,
      source:
        'HEATSTUDY: a block on an insulated board from 110 to 85 °C in about 18 min, whole minutes',
    },
  ],
  notes:
    'On an insulating board in still air; a fan or a cold plate is quicker. The mold’s loss wanes as it cools: its mean over the fall counts. The casting follows the mold.',
  compute: ({ depth, moldStart, demold, ...params }, system) => {
    const block = blockOf(params);
    const mold = {
      ...block.mold,
      roomTemperature: block.roomTemperature,
      lossCoefficient: coolingLoss(block, { from: moldStart, to: demold }),
      contactConductance: 0,
    };
    const time = coolToDemold({
      mold,
      moldStart,
      castingStart: moldStart,
      castingDepth: depth,
      demoldTemperature: demold,
    });
    return [
      time.kind === 'reached'
        ? time.seconds
        : `never: it settles at ${wholeTemperatureText(time.settled, system)}`,
    ];
  },
});
