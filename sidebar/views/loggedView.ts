import { sayCount } from '../../shared/runSheet/say.ts';
import type { PiecesChange } from '../../shared/verbs/logVerbs.ts';
import { logAnother, planAgain } from '../page/actions.ts';
import { button, el } from '../page/el.ts';
import { openUse } from '../page/stockActions.ts';
import type { Store } from '../page/store.ts';

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
      `${logged.good} of ${sayCount(logged.quantity, 'good piece')} logged so far. Status: ${logged.status === '' ? 'none' : logged.status}.`,
    ),
    ...changesOf(logged.changes),
    el(
      'div',
      { class: 'actions' },
      button(
        { id: 'another', label: 'Log another round', look: 'main', isOff },
        () => void logAnother(store),
      ),
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
