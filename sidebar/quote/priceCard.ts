import { EXCISE_SOURCE, exciseText } from '../../shared/money/excise/exciseText.ts';
import type { Price } from '../../shared/money/price/price.ts';
import { breakText } from '../../shared/money/price/priceBreaks.ts';
import type { QuoteFacts } from '../../shared/money/quote/quoteFacts.ts';
import type { QuotePrices } from '../../shared/money/quote/quotePrices.ts';
import { moneyText } from '../../shared/words/moneyText.ts';
import { unbrokenShareText } from '../../shared/words/percentText.ts';
import { shareText } from '../../shared/words/quantityText.ts';
import { sentence } from '../../shared/words/sentence.ts';
import { card } from '../page/card.ts';
import { el } from '../page/el.ts';
import { moneyTable } from '../page/moneyTable.ts';
import type { QuoteView } from '../panel/view.ts';
import { isAskable, pricedNow } from './pricedNow.ts';

/** The price, big, or why there is none. */
export function priceKey(quote: QuoteView): readonly HTMLElement[] {
  const priced = pricedNow(quote);
  if (priced.kind === 'no facts') return emptyPrice(quote);
  if (priced.kind === 'problems')
    return priced.problems.map(({ text }) => el('p', { class: 'warning' }, `No price: ${text}.`));
  const { price } = priced.prices;
  if (price.kind === 'no price')
    return [el('p', { class: 'warning' }, sentence(`No price: ${price.because}`))];
  const money = (minor: number) => moneyText(minor, price.currency);
  const { accepted } = quote.form;
  if (accepted?.price !== undefined)
    return [
      el('p', { class: 'key' }, `${money(accepted.price)} agreed`),
      el('p', {}, `Accepted on ${accepted.on}. Below is what the target margin asks for today.`),
    ];
  return [
    el('p', { class: 'key' }, `${money(price.perPiece)} a piece`),
    el('p', { class: 'key' }, `${money(price.total)} in all`),
    ...(price.margin === undefined
      ? []
      : [el('p', {}, `Margin ${unbrokenShareText(price.margin)}, for the shop only.`)]),
  ];
}

/** What the price adds up from, and the prices of other quantities. */
export function priceCard(quote: QuoteView): readonly HTMLElement[] {
  const priced = pricedNow(quote);
  if (priced.kind !== 'prices' || priced.prices.price.kind !== 'price') return [];
  const { price } = priced.prices;
  return [priceBox(price, priced.facts), ...breaksCard(priced.prices)];
}

function emptyPrice({ form, values }: QuoteView): readonly HTMLElement[] {
  if (form.order !== '') return [];
  const text = isAskable(values)
    ? 'The price of this is not worked out yet.'
    : 'Choose mold and pattern and type the quantity: the price shows here.';
  return [el('p', { class: 'empty' }, text)];
}

function priceBox(price: Price, { shop }: QuoteFacts): HTMLElement {
  const { currency, excise } = price;
  const money = (minor: number) => moneyText(minor, currency);
  const sums = [
    ['Total', money(price.total)],
    ...(price.deposit === 0
      ? []
      : [[`Deposit ${shareText(shop.depositShare)}`, money(price.deposit)]]),
  ];
  const lines = price.lines.map(({ label, minor }) => [label, money(minor)]);
  return card(
    'What it adds up from',
    moneyTable({ rows: lines, sums }),
    el('p', { class: 'small' }, `All amounts in ${currency}.`),
    ...(excise.reason === 'off'
      ? []
      : [el('p', { class: 'small' }, `${exciseText(excise, currency)}.`)]),
    ...(excise.reason === 'taxable' ? [el('p', { class: 'small' }, EXCISE_SOURCE)] : []),
  );
}

function breaksCard({ breaks }: QuotePrices): readonly HTMLElement[] {
  if (breaks.length < 2) return [];
  const rows = breaks.map(({ quantity, price }) =>
    price.kind === 'price'
      ? [
          String(quantity),
          moneyText(price.perPiece, price.currency),
          moneyText(price.subtotal, price.currency),
        ]
      : [String(quantity), 'none', ''],
  );
  const odd = breaks.flatMap((one) => {
    const words = breakText(one);
    const reason = one.price.kind === 'price' ? words : one.price.because;
    return reason === '' ? [] : [`${one.quantity}: ${reason}.`];
  });
  return [
    card(
      'Price by quantity',
      moneyTable({ heads: ['Pieces', 'A piece', 'The pieces'], rows }),
      el(
        'p',
        { class: 'small' },
        'Each worked out from its own rounds and cups, on the same terms. Before charges, discount, shipping and sales tax.',
      ),
      ...odd.map((text) => el('p', { class: 'small' }, text)),
    ),
  ];
}
