import { boilingPoint } from '../../heat/boilingPoint.ts';
import { defineFunction } from '../defineFunction.ts';

export const POUR_BOIL = defineFunction({
  name: 'POUR_BOIL',
  family: 'heat',
  about: 'Boiling point of water at an elevation, the yardstick for a hot mold top.',
  params: {
    elevation: {
      kind: 'number',
      measure: 'elevation',
      about: 'Height above sea level.',
      bounds: { atLeast: -400, atMost: 5000 },
    },
  },
  returns: [
    {
      name: 'boiling point',
      about: 'Boiling point of water there',
      kind: 'number',
      measure: 'temperature',
    },
  ],
  examples: [
    { args: [5000], result: 203, within: 2e-3, source: 'FSIS, 5,000 ft, printed in whole degrees' },
    { args: [2000], result: 208, within: 2e-3, source: 'FSIS, 2,000 ft, printed in whole degrees' },
  ],
  notes:
    'Standard atmosphere, then the saturation line of IAPWS-IF97; a day’s weather moves it by about 1 °F.',
  compute: ({ elevation }) => [boilingPoint(elevation)],
});
