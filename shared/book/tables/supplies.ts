import type { Table } from '../column.ts';

export const SUPPLIES = {
  sheet: 'Supplies',
  about: 'what goes with the pieces besides plastisol, such as hooks, bags and labels',
  columns: {
    mold: {
      kind: 'text',
      heading: 'Mold',
      width: 140,
      refers: { sheet: 'Molds', column: 'mold' },
      about: 'Mold whose pieces take it. Blank: the pieces of every mold.',
    },
    material: {
      kind: 'text',
      heading: 'Material',
      width: 160,
      required: true,
      refers: { sheet: 'Materials', column: 'material' },
      about: 'A material listed in Materials.',
    },
    amount: {
      kind: 'number',
      heading: 'Amount',
      width: 80,
      places: 2,
      required: true,
      bounds: { greaterThan: 0 },
      about: 'How much of it, in the material’s pack unit.',
    },
    per: {
      kind: 'choice',
      heading: 'Per',
      width: 75,
      required: true,
      choices: ['piece', 'pack', 'order'],
      about: 'For each good piece, for each pack of good pieces, or once an order.',
    },
    notes: { kind: 'text', heading: 'Notes', width: 200, about: 'Anything to remember.' },
  },
} as const satisfies Table;
