import type { BooksSummary } from '../../shared/money/books/booksSummary.ts';
import type { ExciseQuarter } from '../../shared/money/excise/exciseQuarters.ts';
import { EXCISE_SOURCE } from '../../shared/money/excise/exciseText.ts';
import { moneyText } from '../../shared/words/moneyText.ts';
import { countText, shareText } from '../../shared/words/quantityText.ts';
import { card } from '../page/card.ts';
import { el } from '../page/el.ts';
import { type Fact, facts } from '../page/facts.ts';
import { figuresTable } from '../page/figuresTable.ts';
import { folded } from '../page/folded.ts';

/** Quarters that are shown at most, the newest. */
const QUARTERS = 8;

/** The excise by quarter as a preparer of the return asks for it, with its cautions. */
export function exciseCard(books: BooksSummary): HTMLElement {
  const { isExciseOn, quarters, exciseYears, currency } = books;
  if (!isExciseOn)
    return card(
      'Excise by quarter',
      el('p', {}, 'Excise is off in Shop. Ask a tax adviser whether that is right.'),
    );
  const shown = quarters.slice(-QUARTERS);
  const money = (minor: number) => moneyText(minor, currency);
  return card(
    'Excise by quarter',
    el('p', { class: 'warning' }, EXCISE_SOURCE),
    ...(shown.length === 0
      ? [el('p', {}, 'No sale yet.')]
      : [
          figuresTable('Excise by quarter', {
            heads: ['Quarter', 'Taxed on', 'Tax'],
            rows: shown.map(({ year, quarter, base, tax }) => [
              `${year} Q${quarter}`,
              money(base),
              money(tax),
            ]),
            sums: exciseYears.map(({ year, base, tax }) => [String(year), money(base), money(tax)]),
          }),
          ...shown.map((quarter) => detailsOf(quarter, books)),
        ]),
  );
}

function detailsOf(found: ExciseQuarter, { currency }: BooksSummary): HTMLElement {
  const { year, quarter, sales, gross, taxed, untaxed, base, rates, tax, adjustments, due } = found;
  const money = (minor: number) => moneyText(minor, currency);
  const reasons = Object.entries(untaxed).filter(([, minor]) => minor !== 0);
  const rows: readonly Fact[] = [
    ['All sales', `${money(gross)}, ${countText(sales, 'sale')}`],
    ['Taxed sales', money(taxed)],
    ...reasons.map(([reason, minor]): Fact => [`Not taxed, ${reason}`, money(minor)]),
    ['Taxed on', money(base)],
    ['Rate', rates.map(shareText).join(', ') || 'none'],
    ['Tax', money(tax)],
    [
      'Adjustments of earlier quarters',
      adjustments.count === 0
        ? 'none'
        : `${money(adjustments.tax)} on ${money(adjustments.base)}, ${countText(adjustments.count, 'correction')}`,
    ],
    ['Return due', `${due}, or the next business day`],
  ];
  return folded(`For the return of ${year} Q${quarter}`, facts(rows));
}
