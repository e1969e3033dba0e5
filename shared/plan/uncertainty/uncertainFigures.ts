import type { HeatFigures } from '../heat/heatFigures.ts';

/** One figure that a plan's heat rests on and that nobody knows exactly, in words for people. */
interface Unknown {
  /** Goes after "mostly from". */
  readonly words: string;
  /** What a shop can do to know it better, as an instruction. */
  readonly trial: string;
}

/** Every figure of {@link HeatFigures}, the ones that matter most first: even points are most even along the first axes. */
export const UNCERTAIN_FIGURES = {
  contactConductance: {
    words: 'the contact between plate and mold',
    trial: 'log a heat trial of this mold on this plate, its top read at 5, 15 and 40 minutes',
  },
  dialOffset: {
    words: 'what the dial is off',
    trial: 'read the warm plate itself with a surface probe and enter its dial offset',
  },
  setTemperature: {
    words: 'the temperature at which a layer stops moving',
    trial: 'tilt pucks of this plastisol and log when they stop moving',
  },
  firmTemperature: {
    words: 'the temperature at which a layer no longer mixes with the next',
    trial:
      'pour a second color on test pieces after longer and longer waits, reading the surface each time',
  },
  bondTemperature: {
    words: 'the temperature at which layers bond',
    trial:
      'tear test pieces whose second layer came after longer and longer waits, reading the surface each time',
  },
  surfaceCoefficient: {
    words: 'the draft over the mold',
    trial: 'keep fans and doors off the bench, and read a layer’s surface 5 minutes after its pour',
  },
  localAirTemperature: {
    words: 'the air just above the mold',
    trial: 'hang a probe a finger’s width above the hot mold',
  },
  lossShare: {
    words: 'the heat that the mold loses to the room',
    trial: 'read the mold top once more in a heat trial when it has settled, after an hour',
  },
  pourLoss: {
    words: 'what a pour loses between cup and cavity',
    trial:
      'read the cup, pour, read the fresh layer at once with a fast probe, and enter the difference in Shop',
  },
  specificHeat: {
    words: 'the heat that the plastic holds',
    trial: 'no bench trial tells it alone; pucks at two mold temperatures tell some of it',
  },
  conductivity: {
    words: 'how fast heat goes through the plastic',
    trial: 'no bench trial tells it alone; pucks of two thicknesses tell some of it',
  },
  hotDensity: {
    words: 'the density of the hot plastic',
    trial: 'weigh a marked cup that is filled to its mark with hot plastisol',
  },
  meltToMold: {
    words: 'the contact between plastic and mold',
    trial: 'no bench trial tells it alone; thin pucks in a hot mold tell some of it',
  },
  cupCoefficient: {
    words: 'how fast a cup cools',
    trial: 'stir a full cup on the bench and log its temperature every minute',
  },
} as const satisfies Readonly<Record<keyof HeatFigures, Unknown>>;
