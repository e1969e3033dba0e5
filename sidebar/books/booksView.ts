import type { BooksSummary } from '../../shared/money/books/booksSummary.ts';
import { EXPORTS } from '../../shared/money/books/exportTable.ts';
import { sentence } from '../../shared/words/sentence.ts';
import { card } from '../page/card.ts';
import { el } from '../page/el.ts';
import { list } from '../page/list.ts';
import { mendPart, missingItem } from '../panel/mendPart.ts';
import type { Store } from '../panel/store.ts';
import type { ViewOf } from '../panel/view.ts';
import { workButton } from '../panel/workButton.ts';
import { returnToPlan } from '../plan/readSelected.ts';
import { exciseCard } from './exciseCard.ts';
import { monthsCard } from './monthsCard.ts';
import { openBooks, refreshOverview, saveExport } from './openBooks.ts';
import { receivableCard } from './receivableCard.ts';

/** Sales, costs and taxes of the shop, what customers owe, and files for the bookkeeper. */
export function booksView({ books }: ViewOf<'books'>, store: Store): HTMLElement {
  return el(
    'div',
    {},
    el('h1', { tabindex: '-1' }, 'Books'),
    ...bodyOf(books, store),
    el(
      'div',
      { class: 'actions' },
      workButton({ id: 'readBooks', label: 'Read the books again' }, store, openBooks),
      workButton({ id: 'plan', label: 'Back to the plan' }, store, returnToPlan),
    ),
  );
}

function bodyOf(books: BooksSummary, store: Store): readonly HTMLElement[] {
  return [
    el('p', { class: 'small' }, `As of ${books.day}, in ${books.currency}.`),
    ...mendPart(books.problems.map(missingItem), books.problems.length),
    books.months.length === 0 ? emptyText() : monthsCard(books, store),
    exciseCard(books),
    receivableCard(books),
    filesCard(store),
    ...assumptionsOf(books),
  ];
}

function emptyText(): HTMLElement {
  return el(
    'p',
    { class: 'empty' },
    'No sale yet. An order is a sale on the day that stands under Shipped on in Orders, at its Price agreed.',
  );
}

function filesCard(store: Store): HTMLElement {
  return card(
    'Files and overview',
    ...EXPORTS.map((what) =>
      workButton({ id: `export ${what}`, label: `Save ${what} as CSV` }, store, () =>
        saveExport(store, what),
      ),
    ),
    el(
      'p',
      { class: 'small' },
      'Comma separated, UTF-8 with a byte order mark. A text that begins like a formula gets an apostrophe in front; numbers stay numbers.',
    ),
    workButton({ id: 'overview', label: 'Update the overview' }, store, refreshOverview),
  );
}

function assumptionsOf({ assumptions }: BooksSummary): readonly HTMLElement[] {
  if (assumptions.length === 0) return [];
  return [
    el('section', {}, el('h2', {}, 'Taken for granted'), list(assumptions.map(sentence), 'small')),
  ];
}
