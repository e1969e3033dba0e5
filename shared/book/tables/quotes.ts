import type { Table } from '../column.ts';
import { ORDERS_MONEY } from './ordersMoney.ts';

const { rush, discount, shipping, saleKind, exciseStatus } = ORDERS_MONEY;

/** Every quote as it was made: what an order is accepted at, and printed again from, whatever changed in the book since. */
export const QUOTES = {
  sheet: 'Quotes',
  about: 'one quote as it was made; a change is a new quote',
  growth: 'append only',
  columns: {
    quote: {
      kind: 'text',
      heading: 'Quote',
      width: 95,
      required: true,
      about: 'Number of the quote: Q, year, count.',
    },
    quotedOn: { kind: 'date', heading: 'Quoted on', width: 90, about: 'Day of the quote.' },
    validUntil: {
      kind: 'date',
      heading: 'Valid until',
      width: 90,
      about: 'Last day that the price holds, as printed.',
    },
    order: {
      kind: 'text',
      heading: 'Order',
      width: 70,
      required: true,
      about: 'Order that was quoted.',
    },
    customer: { kind: 'text', heading: 'Customer', width: 110, about: 'As printed.' },
    mold: { kind: 'text', heading: 'Mold', width: 130, about: 'Mold that was quoted.' },
    pattern: { kind: 'text', heading: 'Pattern', width: 130, about: 'Pattern that was quoted.' },
    version: {
      kind: 'number',
      heading: 'Version',
      width: 65,
      places: 0,
      bounds: { atLeast: 1, whole: true },
      about: 'Pattern version that was quoted; accepting fixes it.',
    },
    quantity: {
      kind: 'number',
      heading: 'Quantity',
      width: 75,
      places: 0,
      bounds: { atLeast: 1, atMost: 100000, whole: true },
      about: 'Good pieces that were quoted.',
    },
    rush,
    discount,
    shipping,
    saleKind,
    exciseStatus,
    each: {
      kind: 'money',
      heading: 'Price of a piece',
      width: 90,
      bounds: { atLeast: 0 },
      about: 'Before charges and discount.',
    },
    price: {
      kind: 'money',
      heading: 'Price quoted',
      width: 90,
      bounds: { atLeast: 0 },
      about:
        'The whole line with its charges and discount, without shipping and sales tax; accepting makes it the price agreed.',
    },
    total: {
      kind: 'money',
      heading: 'Total',
      width: 80,
      bounds: { atLeast: 0 },
      about: 'What the customer pays, as printed.',
    },
    deposit: {
      kind: 'money',
      heading: 'Deposit',
      width: 80,
      bounds: { atLeast: 0 },
      about: 'Due when the quote is accepted, as printed.',
    },
    printed: {
      kind: 'text',
      heading: 'As printed',
      width: 120,
      about: 'The text of the quote, from which it is printed again. Written by the panel.',
    },
    entry: {
      kind: 'text',
      heading: 'Entry',
      width: 70,
      about: 'Written by the panel so that a double click makes one quote.',
    },
  },
} as const satisfies Table;
