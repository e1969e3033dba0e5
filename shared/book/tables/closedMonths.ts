import type { Table } from '../column.ts';

/** Months as they were when they were closed; what is corrected later never changes a row. */
export const CLOSED_MONTHS = {
  sheet: 'Closed months',
  about: 'one month as its books stood when it was closed',
  growth: 'append only',
  columns: {
    entry: {
      kind: 'text',
      heading: 'Entry',
      width: 110,
      required: true,
      about: 'Written by the add-on so that no month is closed twice.',
    },
    month: {
      kind: 'text',
      heading: 'Month',
      width: 80,
      required: true,
      about: 'Year and month, such as 2026-11.',
    },
    closedOn: { kind: 'date', heading: 'Closed on', width: 90, about: 'Day it was closed.' },
    who: { kind: 'text', heading: 'Who', width: 70, about: 'Initials of who closed it.' },
    sales: {
      kind: 'money',
      heading: 'Sales',
      width: 90,
      about: 'Prices agreed of the orders shipped in the month, without the excise inside them.',
    },
    costOfGoods: {
      kind: 'money',
      heading: 'Cost of goods',
      width: 90,
      about: 'What these orders cost to make.',
    },
    margin: { kind: 'money', heading: 'Margin', width: 90, about: 'Sales less cost of goods.' },
    exciseBase: {
      kind: 'money',
      heading: 'Excise base',
      width: 90,
      about: 'What the excise was worked out on. Ask a tax adviser.',
    },
    exciseTax: {
      kind: 'money',
      heading: 'Excise tax',
      width: 90,
      about: 'Excise of the month. Ask a tax adviser.',
    },
    stockValue: {
      kind: 'money',
      heading: 'Stock value',
      width: 90,
      about: 'Stock at the end of the month, at the weighted average.',
    },
    orders: {
      kind: 'text',
      heading: 'Orders as closed',
      width: 160,
      about:
        'Written by the add-on, so that later changes can be named by order; blank where the orders are too many for a cell.',
    },
    notes: { kind: 'text', heading: 'Notes', width: 200, about: 'What was left out, and why.' },
  },
} as const satisfies Table;
