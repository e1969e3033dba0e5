import type { CostLine } from '../../shared/money/cost/costLine.ts';
import type { CurrencyCode } from '../../shared/money/currency.ts';
import { EXCISE_SOURCE, exciseWords } from '../../shared/money/excise/exciseWords.ts';
import type { Price } from '../../shared/money/price/price.ts';
import { breakWords } from '../../shared/money/price/priceBreaks.ts';
import type { QuoteFacts } from '../../shared/money/quote/quoteFacts.ts';
import type { QuotePrices } from '../../shared/money/quote/quotePrices.ts';
import { sayMoney } from '../../shared/money/sayMoney.ts';
import { sayCount, sayShare } from '../../shared/runSheet/say.ts';
import { formatPlain } from '../../shared/units/format.ts';
import type { QuoteForm } from '../../shared/verbs/quoteVerbs.ts';
import { el } from '../page/el.ts';
import { isAskable, pricedNow, type QuoteOnShow } from '../page/quoteOnShow.ts';
import { sentence } from '../page/sentence.ts';
import { moneyTable } from './moneyTable.ts';

/** The price, big, or why there is none. */
export function priceKey(quote: QuoteOnShow): readonly HTMLElement[] {
  const priced = pricedNow(quote);
  if (priced.kind === 'no facts') return emptyPrice(quote);
  if (priced.kind === 'problems')
    return priced.problems.map(({ text }) => el('p', { class: 'warning' }, `No price: ${text}.`));
  const { price } = priced.prices;
  if (price.kind === 'no price')
    return [el('p', { class: 'warning' }, sentence(`No price: ${price.because}`))];
  const money = (minor: number) => sayMoney(minor, price.currency);
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
      : [el('p', {}, `Margin ${shareOf(price.margin)}, for the shop only.`)]),
  ];
}

/** What the price adds up from, and the prices of other quantities. */
export function priceCard(quote: QuoteOnShow): readonly HTMLElement[] {
  const priced = pricedNow(quote);
  if (priced.kind !== 'prices' || priced.prices.price.kind !== 'price') return [];
  const { price } = priced.prices;
  return [priceBox(price, priced.facts), ...breaksCard(priced.prices)];
}

function emptyPrice({ form, values }: QuoteOnShow): readonly HTMLElement[] {
  if (form.order !== '') return [];
  const text = isAskable(values)
    ? 'The price of this is not worked out yet.'
    : 'Choose mold and pattern and type the quantity: the price shows here.';
  return [el('p', { class: 'empty' }, text)];
}

function priceBox(price: Price, { shop }: QuoteFacts): HTMLElement {
  const { currency, excise } = price;
  const money = (minor: number) => sayMoney(minor, currency);
  const sums = [
    ['Total', money(price.total)],
    ...(price.deposit === 0
      ? []
      : [[`Deposit ${sayShare(shop.depositShare)}`, money(price.deposit)]]),
  ];
  const lines = price.lines.map(({ label, minor }) => [label, money(minor)]);
  return el(
    'section',
    { class: 'card' },
    el('h2', {}, 'What it adds up from'),
    moneyTable({ rows: lines, sums }),
    el('p', { class: 'small' }, `All amounts in ${currency}.`),
    ...(excise.reason === 'off'
      ? []
      : [el('p', { class: 'small' }, `${exciseWords(excise, currency)}.`)]),
    ...(excise.reason === 'taxable' ? [el('p', { class: 'small' }, EXCISE_SOURCE)] : []),
  );
}

function breaksCard({ breaks }: QuotePrices): readonly HTMLElement[] {
  if (breaks.length < 2) return [];
  const rows = breaks.map(({ quantity, price }) =>
    price.kind === 'price'
      ? [
          String(quantity),
          sayMoney(price.perPiece, price.currency),
          sayMoney(price.subtotal, price.currency),
        ]
      : [String(quantity), 'none', ''],
  );
  const odd = breaks.flatMap((one) => {
    const words = breakWords(one);
    const reason = one.price.kind === 'price' ? words : one.price.because;
    return reason === '' ? [] : [`${one.quantity}: ${reason}.`];
  });
  return [
    el(
      'section',
      { class: 'card' },
      el('h2', {}, 'Price by quantity'),
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

/** Margin, cost and what was taken for granted: never printed on a quote. */
export function shopCards(quote: QuoteOnShow): readonly HTMLElement[] {
  const priced = pricedNow(quote);
  const facts = quote.facts;
  if (priced.kind === 'no facts' || facts === undefined) return [];
  const price = priced.kind === 'prices' ? priced.prices.price : undefined;
  return [
    el(
      'section',
      { class: 'card inside' },
      el('h2', {}, 'For the shop only'),
      el('p', { class: 'small' }, 'None of this is on the printed quote.'),
      ...(quote.form.accepted !== undefined
        ? agreedParts(quote.form.accepted)
        : price?.kind === 'price'
          ? marginParts(price, facts)
          : []),
      ...costParts(facts),
      ...assumptionsOf(facts),
    ),
  ];
}

function agreedParts({ margin }: NonNullable<QuoteForm['accepted']>): readonly HTMLElement[] {
  if (margin === undefined) return [];
  return [el('p', { class: 'key' }, `Margin ${shareOf(margin)} of the price agreed`)];
}

function marginParts(price: Price, { shop }: QuoteFacts): readonly HTMLElement[] {
  const { margin, markup, net, cost, currency } = price;
  const gain = net - cost;
  const low = margin === undefined || margin < shop.targetMargin - 5e-4;
  const warning =
    gain < 0
      ? `This is ${sayMoney(-gain, currency)} below the cost.`
      : low
        ? `Under the target margin of ${shareOf(shop.targetMargin)}.`
        : '';
  return [
    el('p', { class: 'key' }, `Margin ${margin === undefined ? 'none' : shareOf(margin)}`),
    el(
      'p',
      {},
      `${sayMoney(gain, currency)} of ${sayMoney(net, currency)} kept${markup === undefined ? '' : `, a markup of ${shareOf(markup)}`}.`,
    ),
    ...(warning === '' ? [] : [el('p', { class: 'warning' }, warning)]),
  ];
}

function costParts({ cost, quantity, pieces, matching }: QuoteFacts): readonly HTMLElement[] {
  const { currency, lines, total, perGood } = cost;
  return [
    el(
      'p',
      {},
      `It costs ${sayMoney(total, currency)}, ${sayMoney(Math.round(perGood), currency)} for each of ${quantity}: ${sayCount(pieces.toPour, 'piece')} poured in ${sayCount(pieces.rounds, 'round')}${matching === 'new pattern' ? ', colors matched first' : ''}.`,
    ),
    el(
      'details',
      {},
      el('summary', {}, 'The cost line by line'),
      moneyTable({
        rows: lines.map((line) => [lineLabel(line, currency), sayMoney(line.minor, currency)]),
        sums: [['Cost', sayMoney(total, currency)]],
      }),
    ),
  ];
}

function lineLabel({ label, amount, unit, rate, from }: CostLine, currency: CurrencyCode): string {
  if (amount === undefined || rate === undefined) return `${label}: not known`;
  // The rate of overhead is a share, and its label says so.
  if (unit === currency) return label;
  const words = unit === undefined ? '' : ` ${unit}`;
  const source = from === undefined ? '' : from === 'stock' ? ', stock price' : ', list price';
  return `${label}: ${short(amount)}${words} at ${short(rate)}${source}`;
}

/** A figure and its sign stay on one line. */
function shareOf(share: number): string {
  return sayShare(share).replace(' ', '\u00a0');
}

function short(value: number): string {
  return formatPlain(Number(value.toPrecision(3)));
}

function assumptionsOf({ assumptions }: QuoteFacts): readonly HTMLElement[] {
  if (assumptions.length === 0) return [];
  const items = assumptions.map((text) => el('li', {}, sentence(text)));
  return [el('h3', {}, 'Taken for granted'), el('ul', { class: 'small' }, ...items)];
}
