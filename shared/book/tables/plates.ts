import type { Table } from '../column.ts';

export const PLATES = {
  sheet: 'Plates',
  about: 'one hot plate or griddle',
  columns: {
    plate: {
      kind: 'text',
      heading: 'Plate',
      width: 130,
      required: true,
      about: 'Name, different on every line.',
    },
    kind: {
      kind: 'choice',
      heading: 'Kind',
      width: 120,
      required: true,
      choices: ['thin griddle', 'flat thick plate'],
      about: 'A thin griddle bows and touches the mold poorly; a thick flat plate touches well.',
    },
    usableLength: {
      kind: 'number',
      heading: 'Usable length',
      width: 80,
      places: 1,
      measure: 'length',
      bounds: { greaterThan: 0 },
      about: 'Evenly hot part.',
    },
    usableWidth: {
      kind: 'number',
      heading: 'Usable width',
      width: 80,
      places: 1,
      measure: 'length',
      bounds: { greaterThan: 0 },
      about: 'Evenly hot part.',
    },
    watts: {
      kind: 'number',
      heading: 'Watts',
      width: 70,
      places: 0,
      measure: 'power',
      bounds: { greaterThan: 0 },
      about: 'Rated power.',
    },
    lowestSetting: {
      kind: 'number',
      heading: 'Lowest setting',
      width: 85,
      places: 0,
      measure: 'temperature',
      bounds: { greaterThan: 0, atMost: 400 },
      about: 'Lowest mark of the dial.',
    },
    highestSetting: {
      kind: 'number',
      heading: 'Highest setting',
      width: 85,
      places: 0,
      measure: 'temperature',
      bounds: { greaterThan: 0, atMost: 400 },
      about: 'Highest mark of the dial.',
    },
    warmUp: {
      kind: 'number',
      heading: 'Warm-up',
      width: 75,
      places: 0,
      measure: 'minutes',
      bounds: { atLeast: 0, atMost: 7200 },
      about:
        'Minutes from cold until the bare plate is at 270 °F (132 °C); 0 for a plate that is always hot.',
    },
    contactConductance: {
      kind: 'number',
      heading: 'Contact conductance',
      width: 100,
      places: 0,
      measure: 'conductance',
      bounds: { greaterThan: 0, atMost: 20000 },
      about:
        'How well heat passes from this plate into a mold standing on it. Blank takes the default of its kind.',
    },
    deadBand: {
      kind: 'number',
      heading: 'Dead band',
      width: 75,
      places: 0,
      measure: 'temperatureDifference',
      bounds: { atLeast: 0, atMost: 60 },
      about:
        'What the plate swings from switching off to switching on again, in all. Blank takes the default of its kind: 20 °C (36 °F) for a thin griddle, 6 °C (11 °F) for a thick plate.',
    },
    lid: {
      kind: 'choice',
      heading: 'Lid',
      width: 70,
      choices: ['none', 'lid'],
      about:
        'Lid: a light cover stands over the molds, not touching them, until their tops read the target. Blank is none.',
    },
    heatLoss: {
      kind: 'number',
      heading: 'Heat loss',
      width: 75,
      places: 2,
      bounds: { greaterThan: 0, atMost: 5 },
      about:
        'Heat that molds on this plate lose to the room without a lid, over the published figure; found by heat trials. Blank is 1.',
    },
    contactError: {
      kind: 'number',
      heading: 'Contact error',
      width: 85,
      places: 0,
      measure: 'conductance',
      bounds: { greaterThan: 0, atMost: 20000 },
      about:
        'Standard error of the contact conductance, from the heat trials that gave it. Blank where it was not fitted.',
    },
    dialOffset: {
      kind: 'number',
      heading: 'Dial offset',
      width: 80,
      places: 0,
      measure: 'temperatureDifference',
      bounds: { atLeast: -60, atMost: 60 },
      about:
        'Surface as a probe reads it, less what the dial says; below 0 where the dial promises too much. Blank is 0, not known.',
    },
    circuit: {
      kind: 'text',
      heading: 'Circuit',
      width: 80,
      about:
        'Name of the circuit it is plugged into, the same for all that share it; blank when it has its own. Used to plan a pour day.',
    },
    notes: { kind: 'text', heading: 'Notes', width: 200, about: 'Anything to remember.' },
  },
} as const satisfies Table;
