import type { OutcomeLogged } from '../../shared/commands/logCommands.ts';
import type { PiecesChange } from '../../shared/log/piecesChanges.ts';
import { countText } from '../../shared/words/quantityText.ts';
import { causeParts } from '../causes/causeParts.ts';
import { openCauses } from '../causes/openCauses.ts';
import { el } from '../page/el.ts';
import type { Store } from '../panel/store.ts';
import type { LoggedView } from '../panel/view.ts';
import { workButton } from '../panel/workButton.ts';
import { planAgain } from '../plan/readSelected.ts';
import { openUse } from '../stock/openStock.ts';
import { openLog } from './openLog.ts';

/** Where the entry stands and what it changes. */
export function loggedView({ logged, next }: LoggedView, store: Store): HTMLElement {
  const { order, good, quantity, status, row, causes } = logged;
  const looks = { id: 'another', label: 'Log another round', look: 'main' } as const;
  return el(
    'section',
    {},
    el('h1', { tabindex: '-1' }, `Order ${order}`),
    el(
      'p',
      {},
      `${good} of ${countText(quantity, 'good piece')} logged so far. Status: ${status === '' ? 'none' : status}.`,
    ),
    ...causesOf(logged),
    ...changesOf(logged.changes),
    el(
      'div',
      { class: 'actions' },
      workButton(looks, store, () => openLog(store, next)),
      ...(causes === undefined
        ? []
        : [
            workButton({ id: 'causes', label: 'What went wrong, to print' }, store, () =>
              openCauses(store, { row: String(row) }),
            ),
          ]),
      workButton({ id: 'use', label: 'Take the material out of stock' }, store, () =>
        openUse(store, logged),
      ),
      workButton({ id: 'plan', label: 'Back to the plan' }, store, () => planAgain(store)),
    ),
  );
}

/** A bad round is told its likely causes at once. */
function causesOf({ causes }: OutcomeLogged): readonly HTMLElement[] {
  return causes === undefined ? [] : [el('h2', {}, 'What went wrong'), ...causeParts(causes)];
}

function changesOf(changes: readonly PiecesChange[]): readonly HTMLElement[] {
  if (changes.length === 0) return [];
  const items = changes.map(({ order, quantity, before, after }) =>
    el(
      'li',
      {},
      `Order ${order}, ${quantity} good: `,
      el(
        'strong',
        {},
        before === after ? `pour ${after}, as before` : `pour ${after}, before ${before}`,
      ),
    ),
  );
  return [el('h2', {}, 'Next time, same mold and pattern'), el('ul', { class: 'doses' }, ...items)];
}
