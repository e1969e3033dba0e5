import type { Missing } from '../../shared/book/missingCells.ts';
import type { PlanResult } from '../../shared/plan/planTypes.ts';
import { button, el } from '../page/el.ts';
import { sentence } from '../page/sentence.ts';
import type { Store } from '../panel/store.ts';
import { openLog, planAgain } from './readSelected.ts';

/** What keeps a row from having a plan, and where each thing stands. */
export function missingView(
  { order, row, missing }: Extract<PlanResult, { readonly kind: 'missing' }>,
  store: Store,
): HTMLElement {
  const isOff = store.get().busy !== '';
  const buttons =
    order === ''
      ? []
      : [
          button(
            { id: 'again', label: 'Plan it again', isOff },
            () => void planAgain(store, store.get().firstPour),
          ),
          button({ id: 'log', label: 'Log what came out', isOff }, () => void openLog(store)),
        ];
  return el(
    'section',
    {},
    el('h1', { tabindex: '-1' }, order === '' ? `Row ${row} of Orders` : `Order ${order}`),
    el('p', {}, 'There is no plan yet. Mend this on the sheets first:'),
    el('ul', { class: 'warnings' }, ...missing.map(gapItem)),
    el('div', { class: 'actions' }, ...buttons),
  );
}

/** One thing to mend, and where it stands. */
export function gapItem({ sheet, row, heading, text }: Missing): HTMLElement {
  const place = row === undefined ? `${sheet}, ${heading}` : `${sheet}, row ${row}, ${heading}`;
  return el('li', {}, el('strong', {}, `${place}: `), sentence(text));
}
