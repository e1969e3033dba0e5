import type { BooksOnShow } from '../../shared/money/books/booksOnShow.ts';
import type { ExciseQuarter } from '../../shared/money/excise/exciseQuarters.ts';
import { EXCISE_SOURCE } from '../../shared/money/excise/exciseWords.ts';
import { sayCount, sayShare } from '../../shared/words/say.ts';
import { sayMoney } from '../../shared/words/sayMoney.ts';
import { el } from '../page/el.ts';
import { type Fact, facts } from '../page/facts.ts';
import { figuresTable } from '../page/figuresTable.ts';

/** Quarters that are shown at most, the newest. */
const QUARTERS = 8;

/** The excise by quarter as a preparer of the return asks for it, with its cautions. */
export function exciseCard(books: BooksOnShow): HTMLElement {
  const { isExciseOn, quarters, exciseYears, currency } = books;
  if (!isExciseOn)
    return el(
      'section',
      { class: 'card' },
      el('h2', {}, 'Excise by quarter'),
      el('p', {}, 'Excise is off in Shop. Ask a tax adviser whether that is right.'),
    );
  const shown = quarters.slice(-QUARTERS);
  const money = (minor: number) => sayMoney(minor, currency);
  return el(
    'section',
    { class: 'card' },
    el('h2', {}, 'Excise by quarter'),
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

function detailsOf(found: ExciseQuarter, { currency }: BooksOnShow): HTMLElement {
  const { year, quarter, sales, gross, taxed, untaxed, base, rates, tax, adjustments, due } = found;
  const money = (minor: number) => sayMoney(minor, currency);
  const reasons = Object.entries(untaxed).filter(([, minor]) => minor !== 0);
  const rows: readonly Fact[] = [
    ['All sales', `${money(gross)}, ${sayCount(sales, 'sale')}`],
    ['Taxed sales', money(taxed)],
    ...reasons.map(([reason, minor]): Fact => [`Not taxed, ${reason}`, money(minor)]),
    ['Taxed on', money(base)],
    ['Rate', rates.map(sayShare).join(', ') || 'none'],
    ['Tax', money(tax)],
    [
      'Adjustments of earlier quarters',
      adjustments.count === 0
        ? 'none'
        : `${money(adjustments.tax)} on ${money(adjustments.base)}, ${sayCount(adjustments.count, 'correction')}`,
    ],
    ['Return due', `${due}, or the next business day`],
  ];
  return el(
    'details',
    { class: 'more' },
    el('summary', {}, `For the return of ${year} Q${quarter}`),
    facts(rows),
  );
}
