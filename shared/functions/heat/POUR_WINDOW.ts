import { DEFAULTS } from '../../material/defaults.ts';
import { defineSpill } from '../defineSpill.ts';
import { AIR, notPoured, STACK, STACK_SHAPE, secondsOr, solveStack } from '../solveStack.ts';
import { NEVER_FIRM, TOP, windowText } from '../windowText.ts';

export const POUR_WINDOW = defineSpill({
  name: 'POUR_WINDOW',
  family: 'heat',
  about:
    'For each layer of a stack: how long it is open, when the next pour bonds, and what comes of the plan.',
  params: {
    ...STACK,
    bondTemperature: {
      kind: 'number',
      measure: 'temperature',
      about: 'Contact temperature above which layers bond.',
      bounds: { atLeast: 60, atMost: 160 },
      default: DEFAULTS.bondTemperature.value,
    },
    shapeFactor: STACK_SHAPE,
    air: AIR,
  },
  returns: [
    { name: 'layer', about: 'From the metal up', kind: 'number' },
    { name: 'poured', about: 'From the first pour', kind: 'number', measure: 'seconds' },
    { name: 'open time', about: 'Or "stays open"', kind: 'number', measure: 'seconds' },
    {
      name: 'next from',
      about: 'Earliest next pour, from this one, or "never firm"',
      kind: 'number',
      measure: 'seconds',
    },
    {
      name: 'next until',
      about: 'Latest next pour, from this one, or "any time"',
      kind: 'number',
      measure: 'seconds',
    },
    {
      name: 'contact',
      about: 'Where it meets the next as planned',
      kind: 'number',
      measure: 'temperature',
    },
    { name: 'verdict', about: 'What comes of the next pour as planned', kind: 'text' },
  ],
  examples: [
    {
      args: [[3], 60, 165, '', '', '', '', 'metric'],
      result: [[1, 0, 37, 33.6, 75, '', TOP]],
      within: 0.15,
      source:
        'HEATSTUDY: a 3 mm slab on a 60 °C mold, in whole seconds; a pour bonds within about 65 to 85 s; the earliest is this model’s own',
    },
    {
      args: [[3, 3], 100, 165, 1200, '', '', '', 'metric'],
      result: [
        [1, 0, 'stays open', 52.9, 'any time', 123, 'bonds'],
        [2, 1200, 288, 92.2, 'any time', '', TOP],
      ],
      within: 0.005,
      source:
        'HEATSTUDY: on a 100 °C mold a pour still bonds after 20 minutes, meeting at 123 °C; the seconds are this model’s own',
    },
  ],
  notes:
    'Conduction through the whole stack, solved in steps (see layer-timing.md): error under 0.5 % of the model’s own times, which rest on weakly known temperatures for set, firm and bond. The mold top is taken as held, where the run sheet also counts its climb; each layer lands at once, 7 °C cooler than its cup. "Never" and "any time" hold for 20 minutes after the last pour. Oil, dust or release agent spoil a bond at any temperature.',
  compute: ({ bondTemperature, ...stack }) => {
    const { layers } = solveStack(stack, { bondTemperature });
    const isStuck = layers.length < stack.thicknesses.length;
    return stack.thicknesses.map((_, index) => {
      const layer = layers[index];
      if (layer === undefined) return [index + 1, '', '', '', '', '', notPoured(layers.length)];
      const next = layers[index + 1];
      const gap = next && next.poured - layer.poured;
      return [
        index + 1,
        layer.poured,
        secondsOr(layer.open),
        secondsOr(layer.earliest),
        secondsOr(layer.latest),
        layer.joint?.contactTemperature ?? '',
        isStuck && index === layers.length - 1 ? NEVER_FIRM : windowText(layer, gap),
      ];
    });
  },
});
