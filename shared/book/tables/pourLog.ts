import type { ChoiceColumn, Table } from '../column.ts';
import { defectCount, gapBefore, pourTemperature } from './defectCount.ts';

export const TEAR_TESTS = ['tears through', 'tears in part', 'peels clean', 'not tested'] as const;

function tearOf(from: number) {
  return {
    kind: 'choice',
    heading: `Tear ${from}-${from + 1}`,
    width: 105,
    choices: TEAR_TESTS,
    about: `How the joint between layers ${from} and ${from + 1} came apart; blank: as in Tear test.`,
  } as const satisfies ChoiceColumn;
}

export const POUR_LOG = {
  sheet: 'Pour log',
  about: 'one round of a run as it came out',
  growth: 'append only',
  columns: {
    run: {
      kind: 'text',
      heading: 'Run',
      width: 100,
      required: true,
      about: 'Run id, as on the run sheet.',
    },
    entry: {
      kind: 'text',
      heading: 'Entry',
      width: 90,
      about: 'Written by the log form so that nothing is logged twice.',
    },
    loggedAt: {
      kind: 'text',
      heading: 'Logged at',
      width: 130,
      about: 'When the row was written, in the workbook’s time zone.',
    },
    order: {
      kind: 'text',
      heading: 'Order',
      width: 70,
      required: true,
      about: 'Order that was poured.',
    },
    mold: {
      kind: 'text',
      heading: 'Mold',
      width: 130,
      required: true,
      about: 'Mold that was poured.',
    },
    pattern: {
      kind: 'text',
      heading: 'Pattern',
      width: 130,
      required: true,
      about: 'Pattern that was poured.',
    },
    version: {
      kind: 'number',
      heading: 'Version',
      width: 65,
      places: 0,
      bounds: { atLeast: 1, whole: true },
      about: 'Pattern version.',
    },
    who: { kind: 'text', heading: 'Who', width: 80, about: 'Initials of the pourer.' },
    moldTop: {
      kind: 'number',
      heading: 'Mold top',
      width: 80,
      places: 0,
      measure: 'temperature',
      bounds: { greaterThan: 0, atMost: 300 },
      about: 'Reading at the first pour.',
    },
    pour1: pourTemperature(1),
    pour2: pourTemperature(2),
    pour3: pourTemperature(3),
    pour4: pourTemperature(4),
    pour5: pourTemperature(5),
    gap12: gapBefore(1),
    gap23: gapBefore(2),
    gap34: gapBefore(3),
    gap45: gapBefore(4),
    poured: {
      kind: 'number',
      heading: 'Poured',
      width: 70,
      places: 0,
      required: true,
      bounds: { atLeast: 1, atMost: 100000, whole: true },
      about: 'Pieces poured.',
    },
    good: {
      kind: 'number',
      heading: 'Good',
      width: 65,
      places: 0,
      required: true,
      bounds: { atLeast: 0, atMost: 100000, whole: true },
      about: 'Pieces good enough to send.',
    },
    coldCrack: defectCount('Cold crack', 'Crack or fold line where the plastic set too early.'),
    peeledLayer: defectCount('Peeled layer', 'Layers that come apart.'),
    unevenLine: defectCount('Uneven line', 'Curved or uneven line between layers.'),
    trappedAir: defectCount('Trapped air', 'Bubble or void.'),
    dimple: defectCount('Dimple', 'Sunken top.'),
    shortFill: defectCount('Short fill', 'Cavity not filled.'),
    flash: defectCount('Flash', 'Thin skin outside the cavity.'),
    scorch: defectCount('Scorch', 'Yellowed or browned.'),
    bleed: defectCount('Bleed', 'Color of one layer in another.'),
    other: defectCount('Other', 'Anything else; say what in the notes.'),
    tearTest: {
      kind: 'choice',
      heading: 'Tear test',
      width: 105,
      choices: TEAR_TESTS,
      about:
        'How a piece torn across its layers came apart; it stands for every joint without a test of its own.',
    },
    pieceWeight: {
      kind: 'number',
      heading: 'Piece weight',
      width: 85,
      places: 3,
      measure: 'baseMass',
      bounds: { greaterThan: 0 },
      about: 'A finished piece of this round.',
    },
    round: {
      kind: 'number',
      heading: 'Round',
      width: 65,
      places: 0,
      bounds: { atLeast: 1, atMost: 1000, whole: true },
      about: 'Round of the run, from 1.',
    },
    tear12: tearOf(1),
    tear23: tearOf(2),
    tear34: tearOf(3),
    tear45: tearOf(4),
    weights: {
      kind: 'text',
      heading: 'Weights',
      width: 130,
      about: 'Weights of several pieces of this round with their unit, such as 0.31, 0.30 oz.',
    },
    corrects: {
      kind: 'text',
      heading: 'Corrects',
      width: 90,
      about: 'Entry of the row that this row replaces. The old row stays and counts nowhere.',
    },
    notes: { kind: 'text', heading: 'Notes', width: 220, about: 'Anything to remember.' },
  },
} as const satisfies Table;

/** Keys of the defect columns, in sheet order. */
export const DEFECT_KEYS = [
  'coldCrack',
  'peeledLayer',
  'unevenLine',
  'trappedAir',
  'dimple',
  'shortFill',
  'flash',
  'scorch',
  'bleed',
  'other',
] as const satisfies readonly (keyof typeof POUR_LOG.columns)[];

/** Keys of the tear tests of one joint, the lowest first. */
export const TEAR_KEYS = [
  'tear12',
  'tear23',
  'tear34',
  'tear45',
] as const satisfies readonly (keyof typeof POUR_LOG.columns)[];
