import type { Table } from '../column.ts';

export const DOSE_UNITS = ['drop', 'mL', 'g', 'tsp'] as const;

export const DOSES = {
  sheet: 'Doses',
  about: 'one colorant or additive in one layer of a pattern version',
  columns: {
    pattern: {
      kind: 'text',
      heading: 'Pattern',
      width: 140,
      required: true,
      refers: { sheet: 'Patterns', column: 'pattern' },
      about: 'Pattern the dose belongs to.',
    },
    version: {
      kind: 'number',
      heading: 'Version',
      width: 65,
      places: 0,
      required: true,
      bounds: { atLeast: 1, whole: true },
      about: 'Version of the pattern.',
    },
    layer: {
      kind: 'text',
      heading: 'Layer',
      width: 100,
      required: true,
      about: 'Layer name as in Patterns.',
    },
    material: {
      kind: 'text',
      heading: 'Material',
      width: 150,
      required: true,
      refers: { sheet: 'Materials', column: 'material' },
      about: 'Colorant or additive, from Materials.',
    },
    amount: {
      kind: 'number',
      heading: 'Amount',
      width: 75,
      places: 2,
      required: true,
      bounds: { greaterThan: 0 },
      about: 'How much goes into the reference amount of base.',
    },
    unit: {
      kind: 'choice',
      heading: 'Unit',
      width: 65,
      required: true,
      choices: DOSE_UNITS,
      about: 'Unit of the amount.',
    },
    per: {
      kind: 'number',
      heading: 'Per base',
      width: 80,
      places: 2,
      measure: 'liquidVolume',
      required: true,
      bounds: { greaterThan: 0 },
      about: 'Reference amount of base, measured cold.',
    },
    notes: { kind: 'text', heading: 'Notes', width: 200, about: 'Anything to remember.' },
  },
} as const satisfies Table;
