import type { CurrencyCode } from '../../shared/book/currencies.ts';
import type { BooksSummary, SaleLine } from '../../shared/money/books/booksSummary.ts';
import type { CostBasis, MoneySums } from '../../shared/money/books/booksTypes.ts';
import { closingChangeText } from '../../shared/money/books/closingChangeText.ts';
import { moneyText } from '../../shared/words/moneyText.ts';
import { countText, shareText } from '../../shared/words/quantityText.ts';
import { sentence } from '../../shared/words/sentence.ts';
import { card } from '../page/card.ts';
import { el } from '../page/el.ts';
import { figuresTable } from '../page/figuresTable.ts';
import { folded } from '../page/folded.ts';
import type { Store } from '../panel/store.ts';
import { whoField } from '../panel/whoField.ts';
import { workButton } from '../panel/workButton.ts';
import { closeTheMonth } from './openBooks.ts';

/** Months that are shown at most, the newest. */
const MONTHS = 12;

const BASIS_WORDS: Readonly<Record<CostBasis, string>> = {
  posted: 'cost from stock moves',
  'partly posted': 'cost partly from stock moves, the rest as planned',
  planned: 'cost as planned: nothing is posted for it',
  'stock only': 'cost of stock only: it has no plan',
  unknown: 'cost unknown: no plan and nothing posted',
};

/** Sales, cost and margin by month and year, with the button that closes a month. */
export function monthsCard(books: BooksSummary, store: Store): HTMLElement {
  const { months, years, currency } = books;
  return card(
    'By month',
    figuresTable('Sales, cost of goods and margin by month', {
      heads: ['Month', 'Sales', 'Cost', 'Margin'],
      rows: months.slice(-MONTHS).map((one) => [one.month, ...amounts(one, currency)]),
      sums: years.map((one) => [String(one.year), ...amounts(one, currency)]),
    }),
    ...closedWords(books),
    ...years.flatMap(({ year, corrections }) => {
      const words = closingChangeText({ change: corrections }, currency);
      return words === '' ? [] : [el('p', { class: 'small' }, `${year} ${words}.`)];
    }),
    ...months.slice(-MONTHS).flatMap(({ month, since }) => {
      const words = since === undefined ? '' : closingChangeText(since, currency);
      if (words === '') return [];
      return [el('p', { class: 'warning' }, el('strong', {}, `${month}: `), sentence(words))];
    }),
    el(
      'p',
      { class: 'small' },
      'Sales are the prices agreed, less the excise inside them. Shipping and taxes are not in them.',
    ),
    ...otherStock(books),
    ordersOf(books),
    closing(books, store),
  );
}

function amounts(
  { sales, costOfGoods, margin }: MoneySums,
  currency: CurrencyCode,
): readonly string[] {
  return [sales, costOfGoods, margin].map((minor) => moneyText(minor, currency));
}

function closedWords({ months }: BooksSummary): readonly HTMLElement[] {
  const closed = months.filter(({ state }) => state === 'closed').slice(-MONTHS);
  if (closed.length === 0) return [];
  const words = closed.map(({ month, since }) => {
    const who = since === undefined || since.who === '' ? '' : ` by ${since.who}`;
    return `${month} (${since?.closedOn ?? ''}${who})`;
  });
  return [el('p', { class: 'small' }, `Closed: ${words.join(', ')}.`)];
}

function otherStock({ months, currency }: BooksSummary): readonly HTMLElement[] {
  const lost = months.filter(({ otherStock: minor }) => minor !== 0).slice(-MONTHS);
  if (lost.length === 0) return [];
  const words = lost.map(
    ({ month, otherStock: minor }) => `${month} ${moneyText(minor, currency)}`,
  );
  return [
    el(
      'p',
      { class: 'small' },
      `Stock lost or scrapped for no order, not in the cost: ${words.join(', ')}.`,
    ),
  ];
}

function ordersOf({ latest, older, currency }: BooksSummary): HTMLElement {
  return folded(
    'By order, newest first',
    el('ul', { class: 'stocks' }, ...latest.map((line) => saleItem(line, currency))),
    ...(older > 0
      ? [el('p', { class: 'small' }, `${countText(older, 'older sale')}: save sales as CSV.`)]
      : []),
  );
}

function saleItem(
  { order, day, sales, cost, margin, basis }: SaleLine,
  currency: CurrencyCode,
): HTMLElement {
  return el(
    'li',
    {},
    el('strong', {}, `Order ${order}`),
    `, ${day}: sales ${moneyText(sales, currency)}, cost ${moneyText(cost, currency)}, margin ${moneyText(margin, currency)}${sales > 0 ? ` (${shareText(margin / sales)})` : ''}`,
    el('p', { class: 'small' }, `${sentence(BASIS_WORDS[basis])}`),
  );
}

function closing({ next }: BooksSummary, store: Store): HTMLElement {
  if (next === undefined)
    return el('p', { class: 'small' }, 'Every month that is over and has sales is closed.');
  return el(
    'div',
    {},
    whoField('Your initials', store),
    workButton({ id: 'close', label: `Close ${next}` }, store, () => closeTheMonth(store, next)),
    el(
      'p',
      { class: 'small' },
      'Closing keeps the figures of the month as they are now. What is corrected later shows as a difference.',
    ),
  );
}
