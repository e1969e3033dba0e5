import type { PurchaseLine } from '../../shared/money/stock/purchaseList.ts';
import type { StockLine, StockSummary } from '../../shared/money/stock/stockSummary.ts';
import { moneyText } from '../../shared/words/moneyText.ts';
import { countText } from '../../shared/words/quantityText.ts';
import { button, el } from '../page/el.ts';
import { sentence } from '../page/sentence.ts';
import type { Store } from '../panel/store.ts';
import { gapItem } from '../plan/missingView.ts';
import { leaveTrials } from '../trials/openTrials.ts';
import { openPurchases, openStock, openUse } from './openStock.ts';
import { lotText, packAmountText, packRateText } from './packAmountText.ts';
import { purchaseReasonText } from './purchaseReasonText.ts';
import { traceCard } from './traceCard.ts';

/** Most rows to mend that are listed at once. */
const MOST_PROBLEMS = 12;

/** What is on hand with its value and lots, what to mend, what to buy, and where a lot went. */
export function stockView(store: Store): HTMLElement {
  const { stock, busy } = store.get();
  const isOff = busy !== '';
  return el(
    'div',
    {},
    el('h1', { tabindex: '-1' }, 'Stock'),
    ...(stock ? bodyOf(stock, store) : []),
    el(
      'div',
      { class: 'actions' },
      button(
        { id: 'readStock', label: 'Read the stock again', isOff },
        () => void openStock(store),
      ),
      button({ id: 'plan', label: 'Back to the plan', isOff }, () => void leaveTrials(store)),
    ),
  );
}

function bodyOf(stock: StockSummary, store: Store): readonly HTMLElement[] {
  if (stock.lines.length === 0 && stock.purchases.lines.length === 0)
    return [emptyText(), ...problemsOf(stock)];
  const { currency, total } = stock;
  return [
    el('p', { class: 'key' }, moneyText(total, currency)),
    el('p', { class: 'small' }, `Value on hand in ${currency}, at the weighted average.`),
    ...problemsOf(stock),
    purchasesCard(stock, store),
    ...unpostedCard(stock, store),
    traceCard(store),
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
    ...problems.map(gapItem),
    ...uncounted.map(({ order, text }) =>
      el('li', {}, el('strong', {}, `Order ${order} is not counted: `), sentence(text)),
    ),
  ];
  if (items.length === 0) return [];
  const more = problemCount + uncounted.length - MOST_PROBLEMS;
  return [
    el(
      'section',
      {},
      el('h2', {}, 'Please mend'),
      el('ul', { class: 'warnings' }, ...items.slice(0, MOST_PROBLEMS)),
      ...(more > 0 ? [el('p', { class: 'small' }, `And ${more} more.`)] : []),
    ),
  ];
}

function purchasesCard(stock: StockSummary, store: Store): HTMLElement {
  const { purchases, currency } = stock;
  const isOff = store.get().busy !== '';
  const { lines, total, unpriced } = purchases;
  if (lines.length === 0)
    return el(
      'section',
      { class: 'card' },
      el('h2', {}, 'To buy'),
      el('p', {}, 'Nothing: stock covers the open orders and stands above every reorder point.'),
    );
  const unknown = unpriced === 0 ? '' : `, ${countText(unpriced, 'line')} without a price`;
  return el(
    'section',
    { class: 'card' },
    el('h2', {}, 'To buy'),
    el('ul', { class: 'doses' }, ...lines.map((line) => purchaseItem(line, stock))),
    el('p', {}, el('strong', {}, `Together ${moneyText(total, currency)}`), `${unknown}.`),
    button(
      { id: 'purchases', label: 'Purchase list to print', isOff },
      () => void openPurchases(store),
    ),
  );
}

/** Runs that were logged and whose material still stands in the book. */
function unpostedCard({ unposted }: StockSummary, store: Store): readonly HTMLElement[] {
  if (unposted.length === 0) return [];
  const isOff = store.get().busy !== '';
  const buttons = unposted.map((one, index) =>
    button(
      { id: `unposted${index}`, label: `Run ${one.run}, order ${one.order}`, isOff },
      () => void openUse(store, one),
    ),
  );
  return [
    el(
      'section',
      { class: 'card' },
      el('h2', {}, 'Logged, not taken out yet'),
      el('p', { class: 'small' }, 'Until their material is taken out, the stock reads too high.'),
      ...buttons,
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
      el('ul', { class: 'small' }, ...detailsOf(line, currency).map((text) => el('li', {}, text))),
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
