import type {
  JointFigures,
  LayerFigures,
  RunFigures,
} from '../../../shared/outcomes/causes/runFigures.ts';

/** A joint well inside its window. */
export const CLEAN_JOINT: JointFigures = Object.freeze({
  below: 'vein',
  above: 'back',
  gap: 120,
  earliest: { kind: 'seconds', seconds: 30 },
  plannedEarliest: 28,
  latest: { kind: 'any time' },
  surface: 90,
  surfaceNeeded: 71,
  contactTemperature: 125.5,
} as const);

export const CLEAN_LAYERS: readonly LayerFigures[] = Object.freeze([
  { name: 'vein', pour: 165, planned: 165, open: { kind: 'stays open', endMean: 101 } },
  { name: 'back', pour: 163, planned: 165, open: { kind: 'seconds', seconds: 150 } },
] as const);

/** A run of two layers with every figure inside its limits. */
export const CLEAN_RUN: RunFigures = Object.freeze({
  system: 'metric',
  moldTop: 101,
  topTarget: 100,
  hottestTop: 111,
  bondTemperature: 116,
  lowestPour: 155,
  hardStop: 190,
  layers: CLEAN_LAYERS,
  isTwoPiece: false,
  joints: [CLEAN_JOINT],
  heatShare: 0.4,
  overLimit: [],
  blanks: [],
} as const);

/** A vein that was down to 61 °C when the back landed: the contact is 5 K short. */
export const COLD_JOINT: JointFigures = Object.freeze({
  ...CLEAN_JOINT,
  latest: { kind: 'seconds', seconds: 40 },
  surface: 61,
  surfaceNeeded: 71,
  contactTemperature: 111,
} as const);
