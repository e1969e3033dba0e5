import type { BooksSummary } from '../../shared/money/books/booksSummary.ts';
import { EXPORTS } from '../../shared/money/books/exportTable.ts';
import { button, el } from '../page/el.ts';
import { sentence } from '../page/sentence.ts';
import type { Store } from '../panel/store.ts';
import { gapItem } from '../plan/missingView.ts';
import { leaveTrials } from '../trials/openTrials.ts';
import { exciseCard } from './exciseCard.ts';
import { monthsCard } from './monthsCard.ts';
import { openBooks, refreshOverview, saveExport } from './openBooks.ts';
import { receivableCard } from './receivableCard.ts';

/** Most rows to mend that are listed at once. */
const MOST_PROBLEMS = 12;

/** Sales, costs and taxes of the shop, what customers owe, and files for the bookkeeper. */
export function booksView(store: Store): HTMLElement {
  const { books, busy } = store.get();
  const isOff = busy !== '';
  return el(
    'div',
    {},
    el('h1', { tabindex: '-1' }, 'Books'),
    ...(books ? bodyOf(books, store) : []),
    el(
      'div',
      { class: 'actions' },
      button(
        { id: 'readBooks', label: 'Read the books again', isOff },
        () => void openBooks(store),
      ),
      button({ id: 'plan', label: 'Back to the plan', isOff }, () => void leaveTrials(store)),
    ),
  );
}

function bodyOf(books: BooksSummary, store: Store): readonly HTMLElement[] {
  return [
    el('p', { class: 'small' }, `As of ${books.day}, in ${books.currency}.`),
    ...problemsOf(books),
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

function problemsOf({ problems }: BooksSummary): readonly HTMLElement[] {
  if (problems.length === 0) return [];
  const more = problems.length - MOST_PROBLEMS;
  return [
    el(
      'section',
      {},
      el('h2', {}, 'Please mend'),
      el('ul', { class: 'warnings' }, ...problems.slice(0, MOST_PROBLEMS).map(gapItem)),
      ...(more > 0 ? [el('p', { class: 'small' }, `And ${more} more.`)] : []),
    ),
  ];
}

function filesCard(store: Store): HTMLElement {
  const isOff = store.get().busy !== '';
  return el(
    'section',
    { class: 'card' },
    el('h2', {}, 'Files and overview'),
    ...EXPORTS.map((what) =>
      button(
        { id: `export ${what}`, label: `Save ${what} as CSV`, isOff },
        () => void saveExport(store, what),
      ),
    ),
    el(
      'p',
      { class: 'small' },
      'Comma separated, UTF-8 with a byte order mark. A text that begins like a formula gets an apostrophe in front; numbers stay numbers.',
    ),
    button(
      { id: 'overview', label: 'Update the overview', isOff },
      () => void refreshOverview(store),
    ),
  );
}

function assumptionsOf({ assumptions }: BooksSummary): readonly HTMLElement[] {
  if (assumptions.length === 0) return [];
  return [
    el(
      'section',
      {},
      el('h2', {}, 'Taken for granted'),
      el('ul', { class: 'small' }, ...assumptions.map((text) => el('li', {}, sentence(text)))),
    ),
  ];
}
