import type { Table } from '../column.ts';

/** What a trial can measure, as the journal names it. */
export const FIGURE_NAMES = [
  'contact conductance',
  'contact error',
  'heat loss',
  'set temperature',
  'drop volume',
  'microwave efficiency',
  'bond temperature',
] as const;

export const MEASURED_FIGURES = {
  sheet: 'Measured figures',
  about: 'one cell that took a measured figure, or got its older one back',
  growth: 'append only',
  columns: {
    entry: {
      kind: 'text',
      heading: 'Entry',
      width: 70,
      required: true,
      about: 'Written by the panel; cells that changed together share it.',
    },
    date: { kind: 'date', heading: 'Date', width: 90, about: 'Day of the change.' },
    change: {
      kind: 'choice',
      heading: 'Change',
      width: 95,
      required: true,
      choices: ['put in use', 'taken back'],
      about: 'Whether a measured figure was put in use, or the one before it came back.',
    },
    figure: {
      kind: 'choice',
      heading: 'Figure',
      width: 140,
      required: true,
      choices: FIGURE_NAMES,
      about: 'What was measured.',
    },
    of: {
      kind: 'text',
      heading: 'Of',
      width: 140,
      about: 'The plate or the material; blank for the shop.',
    },
    trials: { kind: 'text', heading: 'Trials', width: 140, about: 'Trials it comes from.' },
    before: {
      kind: 'number',
      heading: 'Before',
      width: 80,
      places: 3,
      about: 'What stood in the cell; blank where it was blank.',
    },
    after: {
      kind: 'number',
      heading: 'After',
      width: 80,
      places: 3,
      about: 'What stands in the cell since; blank where it is blank again.',
    },
    unit: { kind: 'text', heading: 'Unit', width: 70, about: 'Unit of these numbers.' },
    standardError: {
      kind: 'number',
      heading: 'Standard error',
      width: 80,
      places: 3,
      bounds: { atLeast: 0 },
      about: 'The true figure lies within twice this nineteen times out of twenty.',
    },
    who: { kind: 'text', heading: 'Who', width: 70, about: 'Initials, where they were typed.' },
  },
} as const satisfies Table;
