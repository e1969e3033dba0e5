import type { CurrencyCode } from '../../shared/book/currencies.ts';
import type { QuoteForm } from '../../shared/commands/quoteCommands.ts';
import type { CostLine } from '../../shared/money/cost/costLine.ts';
import type { Price } from '../../shared/money/price/price.ts';
import type { QuoteFacts } from '../../shared/money/quote/quoteFacts.ts';
import { formatPlain } from '../../shared/units/formatPlain.ts';
import { moneyText } from '../../shared/words/moneyText.ts';
import { unbrokenShareText } from '../../shared/words/percentText.ts';
import { countText } from '../../shared/words/quantityText.ts';
import { sentence } from '../../shared/words/sentence.ts';
import { el } from '../page/el.ts';
import { folded } from '../page/folded.ts';
import { list } from '../page/list.ts';
import { moneyTable } from '../page/moneyTable.ts';
import type { QuoteView } from '../panel/view.ts';
import { pricedNow } from './pricedNow.ts';

/** Margin, cost and what was taken for granted: never printed on a quote. */
export function shopCards(quote: QuoteView): readonly HTMLElement[] {
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
  return [el('p', { class: 'key' }, `Margin ${unbrokenShareText(margin)} of the price agreed`)];
}

function marginParts(price: Price, { shop }: QuoteFacts): readonly HTMLElement[] {
  const { margin, markup, net, cost, currency } = price;
  const gain = net - cost;
  const low = margin === undefined || margin < shop.targetMargin - 5e-4;
  const warning =
    gain < 0
      ? `This is ${moneyText(-gain, currency)} below the cost.`
      : low
        ? `Under the target margin of ${unbrokenShareText(shop.targetMargin)}.`
        : '';
  return [
    el(
      'p',
      { class: 'key' },
      `Margin ${margin === undefined ? 'none' : unbrokenShareText(margin)}`,
    ),
    el(
      'p',
      {},
      `${moneyText(gain, currency)} of ${moneyText(net, currency)} kept${markup === undefined ? '' : `, a markup of ${unbrokenShareText(markup)}`}.`,
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
      `It costs ${moneyText(total, currency)}, ${moneyText(Math.round(perGood), currency)} for each of ${quantity}: ${countText(pieces.toPour, 'piece')} poured in ${countText(pieces.rounds, 'round')}${matching === 'new pattern' ? ', colors matched first' : ''}.`,
    ),
    folded(
      'The cost line by line',
      moneyTable({
        rows: lines.map((line) => [lineLabel(line, currency), moneyText(line.minor, currency)]),
        sums: [['Cost', moneyText(total, currency)]],
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

function short(value: number): string {
  return formatPlain(Number(value.toPrecision(3)));
}

function assumptionsOf({ assumptions }: QuoteFacts): readonly HTMLElement[] {
  if (assumptions.length === 0) return [];
  return [el('h3', {}, 'Taken for granted'), list(assumptions.map(sentence), 'small')];
}
