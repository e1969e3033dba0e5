import { lotText, packAmountText, packRateText } from '../../shared/money/packAmountText.ts';
import type { PurchaseLine } from '../../shared/money/stock/purchaseList.ts';
import type { StockLine, StockSummary } from '../../shared/money/stock/stockSummary.ts';
import { purchaseReasonText } from '../../shared/paper/purchases/purchaseReasonText.ts';
import { moneyText } from '../../shared/words/moneyText.ts';
import { countText } from '../../shared/words/quantityText.ts';
import { sentence } from '../../shared/words/sentence.ts';
import { card } from '../page/card.ts';
import { el } from '../page/el.ts';
import { list } from '../page/list.ts';
import { mendPart, missingItem } from '../panel/mendPart.ts';
import type { Store } from '../panel/store.ts';
import type { StockView } from '../panel/view.ts';
import { workButton } from '../panel/workButton.ts';
import { returnToPlan } from '../plan/readSelected.ts';
import { openPurchases, openStock, openUse } from './openStock.ts';
import { traceCard } from './traceCard.ts';

/** What is on hand with its value and lots, what to mend, what to buy, and where a lot went. */
export function stockView(view: StockView, store: Store): HTMLElement {
  return el(
    'div',
    {},
    el('h1', { tabindex: '-1' }, 'Stock'),
    ...bodyOf(view, store),
    el(
      'div',
      { class: 'actions' },
      workButton({ id: 'readStock', label: 'Read the stock again' }, store, openStock),
      workButton({ id: 'plan', label: 'Back to the plan' }, store, returnToPlan),
    ),
  );
}

function bodyOf(view: StockView, store: Store): readonly HTMLElement[] {
  const { stock } = view;
  const { currency, total } = stock;
  if (stock.lines.length === 0 && stock.purchases.lines.length === 0)
    return [emptyText(), ...problemsOf(stock)];
  return [
    el('p', { class: 'key' }, moneyText(total, currency)),
    el('p', { class: 'small' }, `Value on hand in ${currency}, at the weighted average.`),
    ...problemsOf(stock),
    purchasesCard(stock, store),
    ...unpostedCard(stock, store),
    traceCard(view, store),
    el('h2', {}, 'On hand'),
    el('ul', { class: 'stocks' }, ...stock.lines.map((line) => lineItem(line, stock))),
  ];
}

function emptyText(): HTMLElement {
  return el(
    'p',
    { class: 'empty' },
    'Nothing has moved yet. Type each purchase into Stock moves: date, material, lot, amount in its pack unit, reason purchase, and the money paid. Then read the stock again.',
  );
}

function problemsOf({ problems, problemCount, uncounted }: StockSummary): readonly HTMLElement[] {
  const items = [
    ...problems.map(missingItem),
    ...uncounted.map(({ order, text }) =>
      el('li', {}, el('strong', {}, `Order ${order} is not counted: `), sentence(text)),
    ),
  ];
  return mendPart(items, problemCount + uncounted.length);
}

function purchasesCard(stock: StockSummary, store: Store): HTMLElement {
  const { purchases, currency } = stock;
  const { lines, total, unpriced } = purchases;
  if (lines.length === 0)
    return card(
      'To buy',
      el('p', {}, 'Nothing: stock covers the open orders and stands above every reorder point.'),
    );
  const unknown = unpriced === 0 ? '' : `, ${countText(unpriced, 'line')} without a price`;
  return card(
    'To buy',
    el('ul', { class: 'doses' }, ...lines.map((line) => purchaseItem(line, stock))),
    el('p', {}, el('strong', {}, `Together ${moneyText(total, currency)}`), `${unknown}.`),
    workButton({ id: 'purchases', label: 'Purchase list to print' }, store, openPurchases),
  );
}

/** Runs that were logged and whose material still stands in the book. */
function unpostedCard({ unposted }: StockSummary, store: Store): readonly HTMLElement[] {
  if (unposted.length === 0) return [];
  return [
    card(
      'Logged, not taken out yet',
      el('p', { class: 'small' }, 'Until their material is taken out, the stock reads too high.'),
      ...unposted.map((one, index) =>
        workButton(
          { id: `unposted${index}`, label: `Run ${one.run}, order ${one.order}` },
          store,
          () => openUse(store, one),
        ),
      ),
    ),
  ];
}

function purchaseItem(line: PurchaseLine, { currency }: StockSummary): HTMLElement {
  const { material, packs, packSize, unit, money, noPacks } = line;
  const what =
    noPacks === undefined
      ? `${countText(packs, 'pack')} of ${packAmountText(packSize ?? 0, unit)}${money === undefined ? '' : `, ${moneyText(money, currency)}`}. `
      : `${sentence(noPacks)} `;
  return el('li', {}, el('strong', {}, `${material}: `), what, sentence(purchaseReasonText(line)));
}

function lineItem(line: StockLine, { currency }: StockSummary): HTMLElement {
  const { material, unit, onHand, value } = line;
  return el(
    'li',
    {},
    el('strong', {}, material),
    ` ${packAmountText(onHand, unit)}, ${moneyText(value, currency)}`,
    ...flagsOf(line).map((text) => el('p', { class: 'warning' }, text)),
    el(
      'details',
      {},
      el('summary', {}, `Lots and price${hiddenOf(material)}`),
      list(detailsOf(line, currency), 'small'),
    ),
  );
}

/** Summaries of several materials read alike: the ear hears which one it is. */
function hiddenOf(material: string): string {
  return ` of ${material}`;
}

function flagsOf({ negative, isLow, reorderLevel, unit }: StockLine): readonly string[] {
  return [
    ...(negative === undefined
      ? []
      : [`Below nothing since row ${negative.row} of Stock moves (${negative.date}).`]),
    ...(isLow && reorderLevel !== undefined
      ? [`At or below its reorder point of ${packAmountText(reorderLevel, unit)}.`]
      : []),
  ];
}

function detailsOf(line: StockLine, currency: StockSummary['currency']): readonly string[] {
  const { lots, unit, average, lastDifference: off } = line;
  return [
    ...lots.map(
      ({ lot, left, value }) =>
        `${sentence(lotText(lot)).replace(/\.$/, '')}: ${packAmountText(left, unit)}, ${moneyText(value, currency)} as paid`,
    ),
    ...(average === undefined
      ? ['No price known']
      : [`Average ${packRateText(average, unit, currency)}`]),
    ...(off === undefined
      ? []
      : [
          `Count of ${off.date} (row ${off.row}): ${packAmountText(off.counted, unit)} there, ${packAmountText(off.expected, unit)} expected, ${moneyText(off.value, currency)}`,
        ]),
  ];
}
