import { moneyText } from '../../words/moneyText.ts';
import { countText, listText, shareText } from '../../words/quantityText.ts';
import { EXCISE_SOURCE, exciseText } from '../excise/exciseText.ts';
import type { Price } from '../price/price.ts';
import type { PriceBreak } from '../price/priceBreaks.ts';
import type { QuoteFacts } from './quoteFacts.ts';

/** A label with what belongs to it. */
export type QuoteFact = readonly [label: string, words: string];

/** A quote as the customer reads it, all in words; nothing of what it costs the shop. */
export interface QuoteDocument {
  readonly shopName: string;
  /** Number, dates, customer, currency. */
  readonly head: readonly QuoteFact[];
  /** What is sold. */
  readonly goods: readonly QuoteFact[];
  /** What it adds up from, line by line. */
  readonly lines: readonly QuoteFact[];
  /** Total first, then what is due when. */
  readonly sums: readonly QuoteFact[];
  /** Quantity, price of a piece, price of the pieces. */
  readonly breaks: readonly (readonly [quantity: string, each: string, pieces: string])[];
  readonly notes: readonly string[];
  readonly terms: readonly string[];
}

/** Which quote it is. */
export interface QuoteIdentity {
  readonly quote: string;
  readonly order: string;
  /** `yyyy-mm-dd` */
  readonly quotedOn: string;
  readonly validUntil: string;
}

/** The quote of an order as plain data; the look is the page's. */
export function quoteDocument(
  facts: QuoteFacts,
  { price, breaks }: { readonly price: Price; readonly breaks: readonly PriceBreak[] },
  identity: QuoteIdentity,
): QuoteDocument {
  const { shop, customer, mold, quantity, due } = facts;
  const { currency } = price;
  const money = (minor: number) => moneyText(minor, currency);
  return {
    shopName: shop.shopName,
    head: [
      ['Quote', identity.quote],
      ['Date', identity.quotedOn],
      ['Valid until', identity.validUntil],
      ['Order', identity.order],
      ...optional('Customer', customer),
      ['All amounts in', currency],
    ],
    goods: [
      ['Pattern', patternWords(facts)],
      ['Mold', mold],
      ['Quantity', countText(quantity, 'piece')],
      ...optional('Wanted by', due ?? ''),
    ],
    lines: price.lines.map(({ label, minor }) => [label, money(minor)]),
    sums: [
      ['Total', money(price.total)],
      ...(price.deposit === 0
        ? []
        : ([
            [`Deposit, ${shareText(shop.depositShare)} when you accept`, money(price.deposit)],
            ['Balance', money(price.balance)],
          ] as const)),
    ],
    breaks: breakRows(breaks),
    notes: notesOf(facts, price, identity),
    terms: shop.quoteTerms.split(/\r?\n/).filter((line) => line.trim() !== ''),
  };
}

function optional(label: string, words: string): readonly QuoteFact[] {
  return words === '' ? [] : [[label, words]];
}

function patternWords({ pattern, version, layers }: QuoteFacts): string {
  const colors =
    layers.length === 1
      ? `one color, ${layers[0]}`
      : `${layers.length} layers, ${listText(layers)}`;
  return `${pattern}, version ${version}: ${colors}`;
}

/** A table of one row would say what the lines say. */
function breakRows(breaks: readonly PriceBreak[]): QuoteDocument['breaks'] {
  const rows = breaks.flatMap(({ quantity, price }) =>
    price.kind === 'price'
      ? [
          [
            String(quantity),
            moneyText(price.perPiece, price.currency),
            moneyText(price.subtotal, price.currency),
          ] as const,
        ]
      : [],
  );
  return rows.length < 2 ? [] : rows;
}

function notesOf(
  { due }: QuoteFacts,
  { excise, currency }: Price,
  { validUntil }: QuoteIdentity,
): readonly string[] {
  return [
    `The price holds if you accept by ${validUntil}.`,
    ...(due === undefined ? [] : ['The day is confirmed when you accept.']),
    ...(excise.reason === 'off' ? [] : [`${exciseText(excise, currency)}.`]),
    ...(excise.reason === 'taxable' ? [EXCISE_SOURCE] : []),
  ];
}
