import type { NumberColumn, Table } from '../column.ts';

function defect(heading: string, about: string): NumberColumn {
  return {
    kind: 'number',
    heading,
    about,
    width: 70,
    places: 0,
    bounds: { atLeast: 0, whole: true },
  };
}

function pourTemperature(layer: number): NumberColumn {
  return {
    kind: 'number',
    heading: `Pour ${layer}`,
    width: 75,
    places: 0,
    measure: 'temperature',
    bounds: { greaterThan: 20, atMost: 300 },
    about: `Cup temperature when layer ${layer} was poured.`,
  };
}

function gap(from: number): NumberColumn {
  return {
    kind: 'number',
    heading: `Gap ${from}-${from + 1}`,
    width: 70,
    places: 1,
    measure: 'minutes',
    bounds: { atLeast: 0, atMost: 43200 },
    about: `Minutes from pouring layer ${from} to pouring layer ${from + 1}.`,
  };
}

export const TEAR_TESTS = ['tears through', 'tears in part', 'peels clean', 'not tested'] as const;

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
    gap12: gap(1),
    gap23: gap(2),
    gap34: gap(3),
    gap45: gap(4),
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
    coldCrack: defect('Cold crack', 'Crack or fold line where the plastic set too early.'),
    peeledLayer: defect('Peeled layer', 'Layers that come apart.'),
    unevenLine: defect('Uneven line', 'Curved or uneven line between layers.'),
    trappedAir: defect('Trapped air', 'Bubble or void.'),
    dimple: defect('Dimple', 'Sunken top.'),
    shortFill: defect('Short fill', 'Cavity not filled.'),
    flash: defect('Flash', 'Thin skin outside the cavity.'),
    scorch: defect('Scorch', 'Yellowed or browned.'),
    bleed: defect('Bleed', 'Color of one layer in another.'),
    other: defect('Other', 'Anything else; say what in the notes.'),
    tearTest: {
      kind: 'choice',
      heading: 'Tear test',
      width: 105,
      choices: TEAR_TESTS,
      about: 'How a piece torn across its layers came apart.',
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
