import type { BooksSummary } from '../../money/books/booksSummary.ts';
import { AGES, type MonthFigures } from '../../money/books/booksTypes.ts';
import { closingChangeText } from '../../money/books/closingChangeText.ts';
import { EXCISE_SOURCE } from '../../money/excise/exciseText.ts';
import { fromMinor } from '../../money/toMinor.ts';
import { moneyText } from '../../words/moneyText.ts';
import {
  addChart,
  addHeading,
  addOverviewTable,
  addWide,
  type OverviewDraft,
} from './addOverviewTable.ts';

/** Months and quarters that the sheet shows at most, the newest. */
const MONTHS = 12;
const QUARTERS = 8;

/** Sales, cost and margin by month. */
export function addMonths(draft: OverviewDraft, books: BooksSummary): void {
  const { currency } = books;
  addHeading(draft, 'Sales and margin by month');
  if (books.months.length === 0) {
    addWide(draft, 'No order has been shipped yet.', 'text');
    return;
  }
  const amount = (minor: number) => fromMinor(minor, currency);
  const months = books.months.slice(-MONTHS);
  const columns = addOverviewTable(
    draft,
    [
      { heading: 'Month', style: 'text' },
      { heading: 'State', style: 'text' },
      { heading: 'Orders', style: 'count' },
      { heading: 'Sales', style: 'money' },
      { heading: 'Cost of goods', style: 'money' },
      { heading: 'Margin', style: 'money' },
      { heading: 'Margin share', style: 'share' },
      { heading: 'Stock lost', style: 'money' },
    ],
    months.map((figures) => [
      figures.month,
      figures.state,
      figures.orders,
      amount(figures.sales),
      amount(figures.costOfGoods),
      amount(figures.margin),
      figures.sales === 0 ? undefined : figures.margin / figures.sales,
      amount(figures.otherStock),
    ]),
  );
  for (const figures of months) addSince(draft, figures, books);
  addWide(
    draft,
    'Sales are the prices agreed, less the excise inside them, of the orders shipped in the month; shipping and taxes are not in them. Cost of goods is stock used at the weighted average, with the work, electricity, wear and overhead of the plan. Stock lost is what left stock for no order.',
    'note',
  );
  addChart(draft, `Sales and margin by month, ${currency}`, [columns[0], columns[3], columns[5]]);
}

function addSince(
  draft: OverviewDraft,
  { month, since }: MonthFigures,
  { currency }: BooksSummary,
): void {
  const words = since && closingChangeText(since, currency);
  if (words) addWide(draft, `${month}, ${words}`, 'strong');
}

/** The tax by quarter, with its cautions. */
export function addExcise(draft: OverviewDraft, books: BooksSummary): void {
  const { currency, isExciseOn, quarters } = books;
  addHeading(draft, 'Excise by quarter');
  if (!isExciseOn) {
    addWide(draft, 'Excise is off in Shop. Ask a tax adviser whether that is right.', 'text');
    return;
  }
  addWide(draft, EXCISE_SOURCE, 'note');
  if (quarters.length === 0) {
    addWide(draft, 'No sale yet.', 'text');
    return;
  }
  const amount = (minor: number) => fromMinor(minor, currency);
  const columns = addOverviewTable(
    draft,
    [
      { heading: 'Quarter', style: 'text' },
      { heading: 'Return due', style: 'text' },
      { heading: 'Sales', style: 'count' },
      { heading: 'All sales', style: 'money' },
      { heading: 'Taxed sales', style: 'money' },
      { heading: 'Taxed on', style: 'money' },
      { heading: 'Tax', style: 'money' },
      { heading: 'Adjustments', style: 'money' },
    ],
    quarters
      .slice(-QUARTERS)
      .map(({ year, quarter, sales, gross, taxed, base, tax, adjustments, due }) => [
        `${year} Q${quarter}`,
        due,
        sales,
        ...[gross, taxed, base, tax, adjustments.tax].map(amount),
      ]),
  );
  addWide(
    draft,
    'Adjustments are the tax of corrections to sales of earlier quarters, entered in this one. A due day on a weekend or holiday moves to the next business day.',
    'note',
  );
  addChart(draft, `Excise by quarter, ${currency}`, [columns[0], columns[6]]);
}

/** What customers owe, by age. */
export function addReceivable(draft: OverviewDraft, { receivable, currency }: BooksSummary): void {
  const { byAge, total, overpaid, heldTotal } = receivable;
  const amount = (minor: number) => fromMinor(minor, currency);
  addHeading(draft, 'What customers owe, by days since the sale');
  addOverviewTable(
    draft,
    [
      ...AGES.map((age) => ({ heading: `${age} days`, style: 'money' }) as const),
      { heading: 'All', style: 'money' },
      { heading: 'Overpaid', style: 'money' },
      { heading: 'Deposits held', style: 'money' },
    ],
    [
      [
        ...AGES.map((age) => amount(byAge[age])),
        amount(total),
        amount(overpaid.reduce((sum, { open }) => sum - open, 0)),
        amount(heldTotal),
      ],
    ],
  );
  for (const { order, open } of overpaid)
    addWide(draft, `Order ${order} is overpaid by ${moneyText(-open, currency)}.`, 'strong');
}
