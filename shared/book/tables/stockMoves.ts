import type { Table } from '../column.ts';

export const STOCK_MOVES = {
  sheet: 'Stock moves',
  about: 'one movement of a material in or out',
  growth: 'append only',
  columns: {
    date: {
      kind: 'date',
      heading: 'Date',
      width: 90,
      required: true,
      about: 'Day of the movement.',
    },
    material: {
      kind: 'text',
      heading: 'Material',
      width: 160,
      required: true,
      refers: { sheet: 'Materials', column: 'material' },
      about: 'Material that moved.',
    },
    lot: { kind: 'text', heading: 'Lot', width: 90, about: 'Lot that moved.' },
    amount: {
      kind: 'number',
      heading: 'Amount',
      width: 80,
      places: 2,
      required: true,
      about:
        'In the material’s pack unit; in is positive, out is negative. For counted: all that is there, of the lot where one is named.',
    },
    reason: {
      kind: 'choice',
      heading: 'Reason',
      width: 95,
      required: true,
      choices: ['purchase', 'used', 'scrapped', 'counted'],
      about: 'Why it moved.',
    },
    order: { kind: 'text', heading: 'Order', width: 70, about: 'Order it was used for.' },
    run: { kind: 'text', heading: 'Run', width: 90, about: 'Run it was used in.' },
    money: { kind: 'money', heading: 'Money', width: 85, about: 'Paid for a purchase.' },
    entry: {
      kind: 'text',
      heading: 'Entry',
      width: 90,
      about: 'Written by the add-on so that nothing is posted twice.',
    },
    notes: { kind: 'text', heading: 'Notes', width: 200, about: 'Anything to remember.' },
  },
} as const satisfies Table;
