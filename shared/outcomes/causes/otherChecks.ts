import type { Defect } from './runFigures.ts';

/** What makes a defect whatever the heat: phrases without capital and full stop, most usual first. */
interface Checks {
  readonly look: readonly string[];
  /** Key of a source, or `TRADE` */
  readonly source: string;
}

/** What to check where the heat record does not explain a defect. */
export const OTHER_CHECKS: Readonly<Record<Defect, Checks>> = {
  coldCrack: {
    look: [
      'a layer poured in two goes',
      'a draft over the mold, from a door or a fan',
      'a mold standing only partly on the hot part of the plate',
    ],
    source: 'CASTINGATLAS',
  },
  peeledLayer: {
    look: [
      'oil, release agent, dust or a film of water on the lower layer: no release between layers',
      'too much softener: oil weeps to the surface',
      'a piece torn too soon: wait a day after the pour',
    ],
    source: 'SEAMPRACTICE',
  },
  unevenLine: {
    look: [
      'mold and plate out of level',
      'a stream from too high or too fast: pour low, on a spoon or the edge',
      'cavities filled to different marks',
    ],
    source: 'TRADE',
  },
  trappedAir: {
    look: [
      'a stream that folds over itself: pour slowly, top off from the middle outward',
      'damp salt, pigment or glitter: dry it',
      'a cup poured straight after stirring: let it rest for half a minute',
      'a blocked vent',
    ],
    source: 'AIRRELEASE',
  },
  dimple: {
    look: [
      'no top-off: the plastic shrinks by 4 to 5 % of its volume before it sets',
      'topped off after the skin had set: top off while it still moves',
      'a cold draft on the top',
    ],
    source: 'HEATSTUDY',
  },
  shortFill: {
    look: [
      'a cup weighed short, or more lost in the cup than planned',
      'a blocked vent, or air with no way out',
      'poured too slowly, or stopped in between',
    ],
    source: 'TRADE',
  },
  flash: {
    look: [
      'halves not seated: clean the faces and the pins',
      'a warped mold, or clamps too light',
      'overfilled',
    ],
    source: 'TRADE',
  },
  scorch: {
    look: [
      'hot spots of the microwave: shorter bursts, stir to the bottom',
      'old or often reheated plastisol: blend in fresh',
      'a cup left standing hot between rounds: keep a note of the minutes',
    ],
    source: 'PVCAGEING',
  },
  bleed: {
    look: [
      'a colorant that dissolves in plasticizer: change it, or lay a clear layer between',
      'pieces packed warm or under pressure with other colors',
    ],
    source: 'COLORMIGRATION',
  },
  other: {
    look: [
      'weak or cloudy pieces were not cooked through: bring the whole cup to its cook temperature',
      'sticky or weeping pieces hold too much softener',
      'glitter or salt that settled: stir before each pour',
      'bent pieces were demolded or hung warm: cool them flat',
    ],
    source: 'TRADE',
  },
};
