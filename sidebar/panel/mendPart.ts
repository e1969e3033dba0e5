import type { Missing } from '../../shared/book/missingCells.ts';
import { sentence } from '../../shared/words/sentence.ts';
import { el } from '../page/el.ts';

/** Most rows to mend that are listed at once. */
const MOST = 12;

/**
 * The first rows to mend, and how many more there are.
 * @param count - of all rows to mend, listed or not
 */
export function mendPart(items: readonly HTMLElement[], count: number): readonly HTMLElement[] {
  if (items.length === 0) return [];
  const more = count - MOST;
  return [
    el(
      'section',
      {},
      el('h2', {}, 'Please mend'),
      el('ul', { class: 'warnings' }, ...items.slice(0, MOST)),
      ...(more > 0 ? [el('p', { class: 'small' }, `And ${more} more.`)] : []),
    ),
  ];
}

/** One thing to mend, and where it stands. */
export function missingItem({ sheet, row, heading, text }: Missing): HTMLElement {
  const place = row === undefined ? `${sheet}, ${heading}` : `${sheet}, row ${row}, ${heading}`;
  return el('li', {}, el('strong', {}, `${place}: `), sentence(text));
}
