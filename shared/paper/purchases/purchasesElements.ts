import { element, headCell, textList, titledSection } from '../../elements/element.ts';
import type { PlainElement } from '../../elements/plainElement.ts';
import { packAmountText } from '../../money/packAmountText.ts';
import type { PurchaseLine } from '../../money/stock/purchaseList.ts';
import type { StockSummary } from '../../money/stock/stockSummary.ts';
import { moneyText } from '../../words/moneyText.ts';
import { countText } from '../../words/quantityText.ts';
import { sentence } from '../../words/sentence.ts';
import { purchaseReasonText } from './purchaseReasonText.ts';

/** What the printed purchase list shows. */
export interface PurchasesDocument
  extends Pick<StockSummary, 'currency' | 'purchases' | 'uncounted' | 'assumptions'> {
  readonly shopName: string;
  /** `yyyy-mm-dd` */
  readonly date: string;
}

/** The purchase list as it is printed: a table for each supplier, with a box to tick. */
export function purchasesElements(document: PurchasesDocument): PlainElement {
  const { shopName, date, currency, purchases } = document;
  const { lines, total, unpriced } = purchases;
  const suppliers = [...new Set(lines.map(({ supplier }) => supplier))];
  const unknown =
    unpriced === 0 ? '' : ` ${countText(unpriced, 'line')} without a price not counted.`;
  const nothing =
    'Nothing to buy: stock covers the open orders and stands above every reorder point.';
  const together = `Together ${moneyText(total, currency)} at the prices in the book.${unknown}`;
  const head = [shopName, date, `amounts in ${currency}`].filter((one) => one !== '').join(', ');
  return element('article', 'purchases', [
    element('h1', '', ['Purchase list']),
    element('p', '', [head]),
    ...(lines.length === 0 ? [element('p', '', [nothing])] : []),
    ...suppliers.map((supplier) => supplierPart(supplier, document)),
    ...(lines.length === 0 ? [] : [element('p', 'total', [together])]),
    ...notesOf(document),
  ]);
}

function supplierPart(supplier: string, { purchases, currency }: PurchasesDocument): PlainElement {
  const lines = purchases.lines.filter((line) => line.supplier === supplier);
  const heads = [element('span', 'away', ['Bought']), 'Material', 'Packs', 'Price', 'Why'];
  return titledSection('', supplier === '' ? 'No supplier given' : supplier, [
    element('table', '', [
      element('thead', '', [
        element(
          'tr',
          '',
          heads.map((head) => headCell('col', head)),
        ),
      ]),
      element(
        'tbody',
        '',
        lines.map((line) => lineRow(line, currency)),
      ),
    ]),
  ]);
}

function lineRow(line: PurchaseLine, currency: PurchasesDocument['currency']): PlainElement {
  const { material, packs, packSize, unit, money, noPacks } = line;
  const pack =
    noPacks === undefined ? `${packs} × ${packAmountText(packSize ?? 0, unit)}` : sentence(noPacks);
  return element('tr', '', [
    element('td', 'tick', ['☐']),
    headCell('row', material),
    element('td', '', [pack]),
    element('td', '', [money === undefined ? 'not known' : moneyText(money, currency)]),
    element('td', '', [sentence(purchaseReasonText(line))]),
  ]);
}

function notesOf({ uncounted, assumptions }: PurchasesDocument): readonly PlainElement[] {
  const texts = [
    ...uncounted.map(({ order, text }) => `Order ${order} is not counted: ${text}`),
    ...assumptions,
  ];
  if (texts.length === 0) return [];
  return [
    titledSection('', 'Not counted, or taken for granted', [textList('', texts.map(sentence))]),
  ];
}
