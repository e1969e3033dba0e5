import { bondWindow } from '../../heat/bondWindow.ts';
import { DEFAULTS } from '../../material/defaults.ts';
import { defineFunction } from '../defineFunction.ts';
import { layerOf, MOLD_TOP, POUR, SHAPE, THICKNESS } from '../heatingMoldOf.ts';

export const POUR_NEXT_BY = defineFunction({
  name: 'POUR_NEXT_BY',
  family: 'heat',
  about:
    'Earliest and latest seconds after a layer was poured at which the next one bonds and does not mix.',
  params: {
    thickness: THICKNESS,
    moldTop: MOLD_TOP,
    pour: POUR,
    nextPour: { ...POUR, about: 'Cup temperature of the next layer.' },
    bondTemperature: {
      kind: 'number',
      measure: 'temperature',
      about: 'Contact temperature above which layers bond.',
      bounds: { atLeast: 60, atMost: 160 },
      default: DEFAULTS.bondTemperature.value,
    },
    shapeFactor: SHAPE,
  },
  returns: [
    {
      name: 'earliest',
      about: 'Seconds until the surface is firm enough, or why never',
      kind: 'number',
      measure: 'seconds',
    },
    {
      name: 'latest',
      about: 'Seconds until it no longer bonds, or "any time"',
      kind: 'number',
      measure: 'seconds',
    },
  ],
  examples: [
    {
      args: [3, 60, 165, 165, '', '', 'metric'],
      result: [33.6, 75],
      within: 0.15,
      source:
        'HEATSTUDY: a 3 mm layer in a 60 °C mold bonds if the next pour lands within about 65 to 85 s; the earliest is this model’s own',
    },
    {
      args: [3, 100, 165, 165, '', '', 'metric'],
      result: [52.9, 'any time'],
      within: 0.2,
      source:
        'HEATSTUDY: its surface settles at 88 °C, above the 74 °C needed; the earliest is this model’s own',
    },
  ],
  notes:
    'Latest: the surface is down to twice the bond temperature less the next pour’s temperature. Earliest: it is down to 110 °C (230 °F), a weakly known figure. A draft shortens both. For the first layer only, exact: the whole stack given as one thickness is off by up to 40 %; POUR_WINDOW solves stacks.',
  compute: ({ thickness, moldTop, pour, nextPour, bondTemperature, shapeFactor }) => {
    const next = { pourTemperature: nextPour - DEFAULTS.pourLoss.value, bondTemperature };
    const { earliest, latest } = bondWindow(
      layerOf({ thickness, moldTop, pour, shapeFactor }),
      next,
    );
    return [
      earliest.kind === 'seconds' ? earliest.seconds : earliest.kind,
      latest.kind === 'seconds' ? latest.seconds : latest.kind,
    ];
  },
});
