import type { Column } from '../column.ts';
import { EXCISE_STATUSES, SALE_KINDS } from '../settings/exciseChoices.ts';

/** Columns of *Orders* about price, tax and the days that the books go by; typed, or written by the add-on. */
export const ORDERS_MONEY = {
  rush: {
    kind: 'choice',
    heading: 'Rush',
    width: 65,
    choices: ['rush'],
    about: 'Marked: the shop’s rush surcharge is added. Blank: no rush.',
  },
  discount: {
    kind: 'number',
    heading: 'Discount',
    width: 70,
    places: 1,
    measure: 'fraction',
    bounds: { atLeast: 0, lessThan: 1 },
    about: 'Taken off the price of the pieces in a quote.',
  },
  shipping: {
    kind: 'money',
    heading: 'Shipping',
    width: 75,
    bounds: { atLeast: 0 },
    about: 'What the customer is charged for shipping. No excise tax is due on it.',
  },
  saleKind: {
    kind: 'choice',
    heading: 'Sale kind',
    width: 85,
    choices: SALE_KINDS,
    about:
      'Retail is a sale to the angler: sales tax is added. Blank means wholesale. Ask a tax adviser.',
  },
  exciseStatus: {
    kind: 'choice',
    heading: 'Excise status',
    width: 105,
    choices: EXCISE_STATUSES,
    about: 'Blank means taxable, where the shop’s excise setting is on. Ask a tax adviser.',
  },
  quote: {
    kind: 'text',
    heading: 'Quote',
    width: 75,
    about: 'Number of the quote that the customer was sent. The add-on writes it.',
  },
  quotedOn: { kind: 'date', heading: 'Quoted on', width: 90, about: 'Day of the quote.' },
  validUntil: {
    kind: 'date',
    heading: 'Valid until',
    width: 90,
    about: 'Last day that the quoted price holds.',
  },
  acceptedOn: {
    kind: 'date',
    heading: 'Accepted on',
    width: 90,
    about: 'Day the customer said yes.',
  },
  shippedOn: {
    kind: 'date',
    heading: 'Shipped on',
    width: 90,
    about: 'Day the order left the shop: the day of the sale for books and taxes.',
  },
} as const satisfies Readonly<Record<string, Column>>;
