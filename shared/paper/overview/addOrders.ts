import type { PurchaseLine } from '../../money/stock/purchaseList.ts';
import { fromMinor } from '../../money/toMinor.ts';
import { formatPlain } from '../../units/formatPlain.ts';
import { moneyText } from '../../words/moneyText.ts';
import { addHeading, addOverviewTable, addWide, type OverviewDraft } from './addOverviewTable.ts';
import { DAYS_AHEAD, type Overview } from './overview.ts';

/** Months of yields that the sheet shows at most, the newest. */
const MONTHS = 12;

/** Orders that are to leave the shop soon. */
export function addOrders(draft: OverviewDraft, { due }: Overview): void {
  addHeading(draft, `Orders due in the next ${DAYS_AHEAD} days`);
  if (due.length === 0) {
    addWide(draft, 'None.', 'text');
    return;
  }
  addOverviewTable(
    draft,
    [
      { heading: 'Order', style: 'strong' },
      { heading: 'Due', style: 'text' },
      { heading: 'Customer', style: 'text' },
      { heading: 'Mold', style: 'text' },
      { heading: 'Pattern', style: 'text' },
      { heading: 'Status', style: 'text' },
      { heading: 'Late', style: 'text' },
      { heading: 'Pieces', style: 'count' },
    ],
    due.map(({ order, due: day, customer, mold, pattern, pieces, status, isLate }) => [
      ...[order, day, customer, mold, pattern, status, isLate ? 'late' : undefined, pieces],
    ]),
  );
}

/** Value of the stock and what to buy. */
export function addStock(draft: OverviewDraft, { stock, books }: Overview): void {
  const { currency } = books;
  const { total, purchases, uncounted } = stock;
  addHeading(draft, `Stock: ${moneyText(total, currency)} at the weighted average`);
  if (purchases.lines.length === 0) addWide(draft, 'Nothing to buy for the open orders.', 'text');
  else
    addOverviewTable(
      draft,
      [
        { heading: 'To buy', style: 'strong' },
        { heading: 'Supplier', style: 'text' },
        { heading: 'Short for', style: 'text' },
        { heading: 'Due', style: 'text' },
        { heading: 'On hand', style: 'text' },
        { heading: 'Needed', style: 'text' },
        { heading: 'Packs', style: 'count' },
        { heading: 'About', style: 'money' },
      ],
      purchases.lines.map((line) => [
        line.material,
        line.supplier,
        line.shortFrom?.order ?? (line.isLow ? 'reorder' : undefined),
        line.shortFrom?.due,
        amountOf(line.onHand, line),
        amountOf(line.needed, line),
        line.noPacks === undefined ? line.packs : undefined,
        line.money === undefined ? undefined : fromMinor(line.money, currency),
      ]),
    );
  for (const { order, text } of uncounted)
    addWide(draft, `Not counted, order ${order}: ${text}.`, 'note');
}

function amountOf(amount: number, { unit }: PurchaseLine): string {
  const number = formatPlain(Number(amount.toPrecision(3)));
  return unit === undefined || unit === 'each' ? number : `${number} ${unit}`;
}

/** Good pieces of all poured, by month. */
export function addYields(draft: OverviewDraft, { yields }: Overview): void {
  addHeading(draft, 'Good pieces by month');
  if (yields.length === 0) {
    addWide(draft, 'Nothing is logged yet.', 'text');
    return;
  }
  addOverviewTable(
    draft,
    [
      { heading: 'Month', style: 'text' },
      { heading: 'Poured', style: 'count' },
      { heading: 'Good', style: 'count' },
      { heading: 'Good share', style: 'share' },
    ],
    yields
      .slice(-MONTHS)
      .map(({ month, poured, good }) => [
        month,
        poured,
        good,
        poured > 0 ? good / poured : undefined,
      ]),
  );
}
