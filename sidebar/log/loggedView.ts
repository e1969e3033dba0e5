import type { OutcomeLogged } from '../../shared/commands/logCommands.ts';
import type { PiecesChange } from '../../shared/log/piecesChanges.ts';
import { countText } from '../../shared/words/quantityText.ts';
import { causeParts } from '../causes/causeParts.ts';
import { openCauses } from '../causes/openCauses.ts';
import { button, el } from '../page/el.ts';
import type { Store } from '../panel/store.ts';
import { logAnother, planAgain } from '../plan/readSelected.ts';
import { openUse } from '../stock/openStock.ts';

/** Where the entry stands and what it changes. */
export function loggedView(store: Store): HTMLElement {
  const { logged, busy } = store.get();
  if (logged === undefined) return el('div');
  const isOff = busy !== '';
  return el(
    'section',
    {},
    el('h1', { tabindex: '-1' }, `Order ${logged.order}`),
    el(
      'p',
      {},
      `${logged.good} of ${countText(logged.quantity, 'good piece')} logged so far. Status: ${logged.status === '' ? 'none' : logged.status}.`,
    ),
    ...causesOf(logged),
    ...changesOf(logged.changes),
    el(
      'div',
      { class: 'actions' },
      button(
        { id: 'another', label: 'Log another round', look: 'main', isOff },
        () => void logAnother(store),
      ),
      ...(logged.causes === undefined
        ? []
        : [
            button(
              { id: 'causes', label: 'What went wrong, to print', isOff },
              () => void openCauses(store, { row: String(logged.row) }),
            ),
          ]),
      button(
        { id: 'use', label: 'Take the material out of stock', isOff },
        () => void openUse(store, logged),
      ),
      button(
        { id: 'plan', label: 'Back to the plan', isOff },
        () => void planAgain(store, store.get().firstPour),
      ),
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
