import type { BooksOnShow } from '../../shared/money/books/booksOnShow.ts';
import { AGES } from '../../shared/money/books/booksTypes.ts';
import { sayCount } from '../../shared/words/say.ts';
import { sayMoney } from '../../shared/words/sayMoney.ts';
import { el } from '../page/el.ts';
import { figuresTable } from '../page/figuresTable.ts';

/** What customers owe by age, what they paid too much, and the deposits that are held. */
export function receivableCard({ receivable, currency }: BooksOnShow): HTMLElement {
  const { open, byAge, total, overpaid, held, heldTotal } = receivable;
  const money = (minor: number) => sayMoney(minor, currency);
  return el(
    'section',
    { class: 'card' },
    el('h2', {}, 'Customers owe'),
    el('p', { class: 'key' }, money(total)),
    figuresTable('What customers owe by days since the sale', {
      heads: ['Days since the sale', 'Open'],
      rows: AGES.map((age) => [age, money(byAge[age])]),
    }),
    ...(open.length === 0
      ? []
      : [
          el(
            'details',
            { class: 'more' },
            el('summary', {}, sayCount(open.length, 'order')),
            el(
              'ul',
              { class: 'stocks' },
              ...open.map(({ order, customer, total: all, paid, open: rest, days }) =>
                el(
                  'li',
                  {},
                  el('strong', {}, `Order ${order}`),
                  `${customer === '' ? '' : `, ${customer}`}: ${money(rest)} of ${money(all)} open, ${money(paid)} paid, ${sayCount(days, 'day')}`,
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
