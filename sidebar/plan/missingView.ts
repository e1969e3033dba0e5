import type { PlanResult } from '../../shared/plan/planTypes.ts';
import { openLog } from '../log/openLog.ts';
import { el } from '../page/el.ts';
import { missingItem } from '../panel/mendPart.ts';
import type { Store } from '../panel/store.ts';
import { workButton } from '../panel/workButton.ts';
import { planAgain } from './readSelected.ts';

/** What keeps a row from having a plan, and where each thing stands. */
export function missingView(
  { order, row, missing }: Extract<PlanResult, { readonly kind: 'missing' }>,
  store: Store,
): HTMLElement {
  const buttons =
    order === ''
      ? []
      : [
          workButton({ id: 'again', label: 'Plan it again' }, store, () => planAgain(store)),
          workButton({ id: 'log', label: 'Log what came out' }, store, () => openLog(store)),
        ];
  return el(
    'section',
    {},
    el('h1', { tabindex: '-1' }, order === '' ? `Row ${row} of Orders` : `Order ${order}`),
    el('p', {}, 'There is no plan yet. Mend this on the sheets first:'),
    el('ul', { class: 'warnings' }, ...missing.map(missingItem)),
    el('div', { class: 'actions' }, ...buttons),
  );
}
