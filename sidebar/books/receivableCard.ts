import type { BooksSummary } from '../../shared/money/books/booksSummary.ts';
import { AGES } from '../../shared/money/books/booksTypes.ts';
import { moneyText } from '../../shared/words/moneyText.ts';
import { countText } from '../../shared/words/quantityText.ts';
import { card } from '../page/card.ts';
import { el } from '../page/el.ts';
import { figuresTable } from '../page/figuresTable.ts';
import { folded } from '../page/folded.ts';

/** What customers owe by age, what they paid too much, and the deposits that are held. */
export function receivableCard({ receivable, currency }: BooksSummary): HTMLElement {
  const { open, byAge, total, overpaid, held, heldTotal } = receivable;
  const money = (minor: number) => moneyText(minor, currency);
  return card(
    'Customers owe',
    el('p', { class: 'key' }, money(total)),
    figuresTable('What customers owe by days since the sale', {
      heads: ['Days since the sale', 'Open'],
      rows: AGES.map((age) => [age, money(byAge[age])]),
    }),
    ...(open.length === 0
      ? []
      : [
          folded(
            countText(open.length, 'order'),
            el(
              'ul',
              { class: 'stocks' },
              ...open.map(({ order, customer, total: all, paid, open: rest, days }) =>
                el(
                  'li',
                  {},
                  el('strong', {}, `Order ${order}`),
                  `${customer === '' ? '' : `, ${customer}`}: ${money(rest)} of ${money(all)} open, ${money(paid)} paid, ${countText(days, 'day')}`,
                ),
              ),
            ),
          ),
        ]),
    ...overpaid.map(({ order, open: less }) =>
      el('p', { class: 'warning' }, `Order ${order} is overpaid by ${money(-less)}.`),
    ),
    ...(held.length === 0
      ? []
      : [
          el(
            'p',
            { class: 'small' },
            `Paid on orders not shipped yet: ${money(heldTotal)}, for ${held.map(({ order }) => order).join(', ')}.`,
          ),
        ]),
  );
}
