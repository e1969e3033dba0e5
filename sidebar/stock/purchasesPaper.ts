import type { PurchasesAnswer } from '../../shared/commands/stockCommands.ts';
import type { PurchaseLine } from '../../shared/money/stock/purchaseList.ts';
import { moneyText } from '../../shared/words/moneyText.ts';
import { countText } from '../../shared/words/quantityText.ts';
import { el } from '../page/el.ts';
import { sentence } from '../page/sentence.ts';
import { packAmountText } from './packAmountText.ts';
import { purchaseReasonText } from './purchaseReasonText.ts';

/** The purchase list as it is printed: a table for each supplier, with a box to tick. */
export function purchasesPaper(answer: PurchasesAnswer): readonly HTMLElement[] {
  const { shopName, date, currency, purchases } = answer;
  const { lines, total, unpriced } = purchases;
  const suppliers = [...new Set(lines.map(({ supplier }) => supplier))];
  const unknown =
    unpriced === 0 ? '' : ` ${countText(unpriced, 'line')} without a price not counted.`;
  return [
    el('h1', {}, 'Purchase list'),
    el('p', {}, [shopName, date, `amounts in ${currency}`].filter((one) => one !== '').join(', ')),
    ...(lines.length === 0
      ? [
          el(
            'p',
            {},
            'Nothing to buy: stock covers the open orders and stands above every reorder point.',
          ),
        ]
      : []),
    ...suppliers.map((supplier) => supplierPart(supplier, answer)),
    ...(lines.length === 0
      ? []
      : [
          el(
            'p',
            { class: 'total' },
            `Together ${moneyText(total, currency)} at the prices in the book.${unknown}`,
          ),
        ]),
    ...notesOf(answer),
  ];
}

function supplierPart(supplier: string, { purchases, currency }: PurchasesAnswer): HTMLElement {
  const lines = purchases.lines.filter((line) => line.supplier === supplier);
  const heads = ['', 'Material', 'Packs', 'Price', 'Why'];
  return el(
    'section',
    {},
    el('h2', {}, supplier === '' ? 'No supplier given' : supplier),
    el(
      'table',
      {},
      el(
        'thead',
        {},
        el(
          'tr',
          {},
          ...heads.map((text) =>
            el(
              'th',
              { scope: 'col' },
              text === '' ? el('span', { class: 'away' }, 'Bought') : text,
            ),
          ),
        ),
      ),
      el('tbody', {}, ...lines.map((line) => lineRow(line, currency))),
    ),
  );
}

function lineRow(line: PurchaseLine, currency: PurchasesAnswer['currency']): HTMLElement {
  const { material, packs, packSize, unit, money, noPacks } = line;
  const pack =
    noPacks === undefined ? `${packs} × ${packAmountText(packSize ?? 0, unit)}` : sentence(noPacks);
  return el(
    'tr',
    {},
    el('td', { class: 'tick' }, '☐'),
    el('th', { scope: 'row' }, material),
    el('td', {}, pack),
    el('td', {}, money === undefined ? 'not known' : moneyText(money, currency)),
    el('td', {}, sentence(purchaseReasonText(line))),
  );
}

function notesOf({ uncounted, assumptions }: PurchasesAnswer): readonly HTMLElement[] {
  const texts = [
    ...uncounted.map(({ order, text }) => `Order ${order} is not counted: ${text}`),
    ...assumptions,
  ];
  if (texts.length === 0) return [];
  const items = texts.map((text) => el('li', {}, sentence(text)));
  return [
    el('section', {}, el('h2', {}, 'Not counted, or taken for granted'), el('ul', {}, ...items)),
  ];
}
