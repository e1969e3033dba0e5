import type { Table } from '../column.ts';

export const HEAT_TRIALS = {
  sheet: 'Heat trials',
  about: 'one reading of a mold top while it heats',
  growth: 'append only',
  columns: {
    trial: {
      kind: 'text',
      heading: 'Trial',
      width: 80,
      required: true,
      about:
        'Readings of one heating share a trial number. Five readings over forty minutes make a good trial.',
    },
    date: { kind: 'date', heading: 'Date', width: 90, about: 'Day of the trial.' },
    mold: {
      kind: 'text',
      heading: 'Mold',
      width: 140,
      required: true,
      refers: { sheet: 'Molds', column: 'mold' },
      about: 'Mold on the plate.',
    },
    plate: {
      kind: 'text',
      heading: 'Plate',
      width: 130,
      required: true,
      refers: { sheet: 'Plates', column: 'plate' },
      about: 'Plate it stood on.',
    },
    setting: {
      kind: 'number',
      heading: 'Setting',
      width: 80,
      places: 0,
      measure: 'temperature',
      required: true,
      bounds: { greaterThan: 0, atMost: 400 },
      about: 'Dial setting.',
    },
    minutes: {
      kind: 'number',
      heading: 'Minutes',
      width: 75,
      places: 1,
      measure: 'minutes',
      required: true,
      bounds: { atLeast: 0, atMost: 43200 },
      about:
        'Minutes after the cold plate was switched on with the mold on it, or after the mold was put on a hot plate.',
    },
    topTemperature: {
      kind: 'number',
      heading: 'Mold top',
      width: 85,
      places: 0,
      measure: 'temperature',
      required: true,
      bounds: { greaterThan: -20, atMost: 300 },
      about:
        'Read the half that forms the casting, away from its edges: with a surface probe, or with an infrared thermometer aimed at a patch of tape or matt paint that has taken on the heat of the metal. Aimed at bare metal it reads far too low: about 30 to 40 °C (90 to 100 °F) on a block of 100 °C (212 °F).',
    },
    roomTemperature: {
      kind: 'number',
      heading: 'Room',
      width: 75,
      places: 0,
      measure: 'temperature',
      bounds: { atLeast: -10, atMost: 50 },
      about:
        'Air around the plate that day; the mold starts at it. Blank takes the shop’s setting.',
    },
    moldsOnPlate: {
      kind: 'number',
      heading: 'Molds on plate',
      width: 75,
      places: 0,
      bounds: { atLeast: 1, atMost: 50, whole: true },
      about: 'Equal molds that heated together, the one that was read included. Blank means one.',
    },
    start: {
      kind: 'choice',
      heading: 'Plate at start',
      width: 80,
      choices: ['cold', 'hot'],
      about:
        'Cold: mold and plate began together at room temperature. Hot: a cold mold went on a plate that stood at its setting. Blank means cold.',
    },
    lid: {
      kind: 'choice',
      heading: 'Lid',
      width: 70,
      choices: ['none', 'lid'],
      about:
        'Whether a light cover stood over the molds from the start, not touching them. Blank is none.',
    },
    notes: { kind: 'text', heading: 'Notes', width: 200, about: 'Draft, probe, who read.' },
  },
} as const satisfies Table;
