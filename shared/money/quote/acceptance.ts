import type { QuoteBook } from '../../book/book.ts';
import { nameKey, type OrderRow } from '../../book/bookIndex.ts';
import type { Column } from '../../book/column.ts';
import { ORDERS } from '../../book/tables/orders.ts';
import type { OrderRecord } from '../../book/tables.ts';
import { type QuoteRecord, quoteOf } from './quoteOf.ts';

/** What accepting a quote writes into the order's row. */
export type Acceptance =
  | {
      readonly kind: 'accept';
      readonly quote: string;
      readonly price: number;
      readonly cells: Pick<OrderRecord, 'version' | 'priceAgreed' | 'acceptedOn' | 'status'>;
    }
  | { readonly kind: 'before'; readonly acceptedOn: string }
  | { readonly kind: 'not now'; readonly because: string };

/** What the customer was told; an order that says otherwise now is another one. */
const TOLD = [
  'mold',
  'pattern',
  'version',
  'quantity',
  'rush',
  'discount',
  'shipping',
  'saleKind',
  'exciseStatus',
] as const;

/**
 * Whether an order's quote can be accepted on a day, and what that fixes: price, pattern version, day, status.
 * @param today - `yyyy-mm-dd`
 */
export function acceptance(book: QuoteBook, row: OrderRow, today: string): Acceptance {
  const { record } = row;
  const order = record.order ?? '';
  if (record.acceptedOn !== undefined) return { kind: 'before', acceptedOn: record.acceptedOn };
  if (record.status === 'canceled')
    return notNow(`Order ${order} is canceled: set its status to asked, then make a quote.`);
  if (record.quote === undefined) return notNow(`Order ${order} has no quote yet: make one first.`);
  const quoted = quoteOf(book, row)?.record;
  if (quoted?.price === undefined || quoted.version === undefined)
    return notNow(
      `The price of quote ${record.quote} of order ${order} cannot be read from Quotes: make the quote again.`,
    );
  const until = record.validUntil ?? quoted.validUntil ?? '';
  if (until !== '' && until < today)
    return notNow(
      `Quote ${record.quote} was valid until ${until}: make the quote again before it is accepted.`,
    );
  const change = changeOf(record, quoted);
  if (change !== undefined)
    return notNow(
      `Order ${order} was changed after quote ${record.quote}: ${change}. Make the quote again.`,
    );
  if (record.priceAgreed !== undefined && record.priceAgreed !== quoted.price)
    return notNow(
      `Order ${order} has ${record.priceAgreed} as price agreed, and quote ${record.quote} says ${quoted.price}: clear Price agreed in Orders, or make the quote again.`,
    );
  const isEarly = record.status === undefined || record.status === 'asked';
  return {
    kind: 'accept',
    quote: record.quote,
    price: quoted.price,
    cells: {
      version: quoted.version,
      priceAgreed: quoted.price,
      acceptedOn: today,
      status: isEarly ? 'accepted' : record.status,
    },
  };
}

/** The first thing that differs from what was quoted; a blank version takes what was quoted. */
function changeOf(record: OrderRecord, quoted: QuoteRecord): string | undefined {
  const changed = TOLD.find(
    (key) =>
      nameKey(record[key]) !== nameKey(quoted[key]) &&
      !(key === 'version' && record.version === undefined),
  );
  if (changed === undefined) return undefined;
  const { heading }: Column = ORDERS.columns[changed];
  return `${heading.toLowerCase()} is ${record[changed] ?? 'blank'} now and was ${quoted[changed] ?? 'blank'}`;
}

function notNow(because: string): Acceptance {
  return { kind: 'not now', because };
}
