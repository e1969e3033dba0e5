import { cupTimeInBand } from '../../heat/cupTimeInBand.ts';
import { defineFunction } from '../defineFunction.ts';
import { CUP_RANGE, ROOM } from '../heatingMoldOf.ts';
import { POSITIVE } from '../positive.ts';

export const POUR_CUP_TIME = defineFunction({
  name: 'POUR_CUP_TIME',
  family: 'heat',
  about: 'Minutes that a stirred cup stays hot enough to pour.',
  params: {
    plastisol: {
      kind: 'number',
      measure: 'baseMass',
      about: 'Plastisol in the cup.',
      bounds: POSITIVE,
    },
    start: {
      kind: 'number',
      field: 'cup temperature',
      measure: 'temperature',
      about: 'As the cup leaves the heat.',
      bounds: CUP_RANGE,
      default: 175,
    },
    lowest: {
      kind: 'number',
      field: 'lowest pour temperature',
      measure: 'temperature',
      about: 'Below this the cup goes back to be heated.',
      bounds: CUP_RANGE,
      default: 155,
    },
    room: ROOM,
  },
  returns: [
    { name: 'minutes', about: 'Minutes in the pour band', kind: 'number', measure: 'minutes' },
  ],
  examples: [
    {
      args: [240, 175, 165, 22, 'metric'],
      result: 2,
      within: 0.08,
      source: 'HEATSTUDY: 240 g from 175 to 165 °C in 2.0 min, for a cup of another shape',
    },
  ],
  notes:
    'A cup as wide as it is high, stirred before each pour; unstirred the wall gels while the core is hot.',
  compute: ({ plastisol, start, lowest, room }) => {
    const time = cupTimeInBand({ mass: plastisol, roomTemperature: room }, start, lowest);
    return [time.kind === 'reached' ? time.seconds : 'never: the room is as hot'];
  },
});
