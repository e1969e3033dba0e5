import type { Table } from '../column.ts';
import { ORDERS_FIGURES } from './ordersFigures.ts';
import { ORDERS_MONEY } from './ordersMoney.ts';

export const ORDER_STATUSES = [
  'asked',
  'accepted',
  'planned',
  'poured',
  'packed',
  'shipped',
  'canceled',
] as const;

/** One line of a customer's order. The columns after *Shipped on* fill themselves. */
export const ORDERS = {
  sheet: 'Orders',
  about: 'one order line: a pattern poured in a mold, a quantity, a date',
  columns: {
    order: {
      kind: 'text',
      heading: 'Order',
      width: 70,
      required: true,
      about: 'Your order number, different on every line.',
    },
    date: { kind: 'date', heading: 'Date', width: 90, about: 'Day the order came in.' },
    due: { kind: 'date', heading: 'Due', width: 90, about: 'Day the customer wants it.' },
    customer: { kind: 'text', heading: 'Customer', width: 110, about: 'Customer number or name.' },
    mold: {
      kind: 'text',
      heading: 'Mold',
      width: 130,
      required: true,
      refers: { sheet: 'Molds', column: 'mold' },
      about: 'A mold listed in Molds.',
    },
    pattern: {
      kind: 'text',
      heading: 'Pattern',
      width: 130,
      required: true,
      refers: { sheet: 'Patterns', column: 'pattern' },
      about: 'A color pattern listed in Patterns.',
    },
    version: {
      kind: 'number',
      heading: 'Version',
      width: 65,
      places: 0,
      bounds: { atLeast: 1, whole: true },
      about: 'Pattern version; blank takes the newest.',
    },
    quantity: {
      kind: 'number',
      heading: 'Quantity',
      width: 75,
      places: 0,
      required: true,
      bounds: { atLeast: 1, atMost: 100000, whole: true },
      about: 'Good pieces the customer gets.',
    },
    plate: {
      kind: 'text',
      heading: 'Plate',
      width: 110,
      refers: { sheet: 'Plates', column: 'plate' },
      about: 'Hot plate for the run; blank takes the first in Plates.',
    },
    moldsInUse: {
      kind: 'number',
      heading: 'Molds in use',
      width: 75,
      places: 0,
      bounds: { atLeast: 1, atMost: 50, whole: true },
      about: 'How many copies of the mold are poured in one round; blank means one.',
    },
    pourOn: { kind: 'date', heading: 'Pour on', width: 90, about: 'Day of the run.' },
    firstPour: {
      kind: 'clock',
      heading: 'First pour at',
      width: 90,
      about:
        'Clock time of the first pour, such as 9:30 or 1:15 pm. The plate goes on before that.',
    },
    priceAgreed: {
      kind: 'money',
      heading: 'Price agreed',
      width: 90,
      bounds: { atLeast: 0 },
      about: 'Price of the whole line as agreed with the customer.',
    },
    status: {
      kind: 'choice',
      heading: 'Status',
      width: 105,
      choices: ORDER_STATUSES,
      about: 'Where the order stands. Logging an outcome moves it to poured.',
    },
    notes: {
      kind: 'text',
      heading: 'Notes',
      width: 180,
      about: 'Anything the pourer should read; printed on the run sheet.',
    },
    ...ORDERS_MONEY,
    ...ORDERS_FIGURES,
  },
} as const satisfies Table;
