import type { Table } from '../column.ts';

export const PAYMENT_KINDS = ['deposit', 'payment', 'refund'] as const;

export const PAYMENTS = {
  sheet: 'Payments',
  about: 'money received from a customer, or given back',
  growth: 'append only',
  columns: {
    entry: {
      kind: 'text',
      heading: 'Entry',
      width: 90,
      about: 'A number of yours, such as that of the receipt.',
    },
    date: {
      kind: 'date',
      heading: 'Date',
      width: 90,
      required: true,
      about: 'Day the money came in or went back.',
    },
    order: {
      kind: 'text',
      heading: 'Order',
      width: 80,
      required: true,
      refers: { sheet: 'Orders', column: 'order' },
      about: 'Order it is for.',
    },
    kind: {
      kind: 'choice',
      heading: 'Kind',
      width: 90,
      required: true,
      choices: PAYMENT_KINDS,
      about: 'A deposit comes before the sale; a refund goes back to the customer.',
    },
    money: {
      kind: 'money',
      heading: 'Money',
      width: 85,
      required: true,
      bounds: { greaterThan: 0, atMost: 1e9 },
      about: 'How much, always more than 0; a refund is told by its kind.',
    },
    method: { kind: 'text', heading: 'Method', width: 100, about: 'Cash, check, card, transfer.' },
    notes: { kind: 'text', heading: 'Notes', width: 200, about: 'Anything to remember.' },
  },
} as const satisfies Table;
