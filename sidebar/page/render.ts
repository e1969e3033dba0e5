import { loggedView } from '../views/loggedView.ts';
import { logView } from '../views/logView.ts';
import { planView } from '../views/planView.ts';
import { el } from './el.ts';
import type { PageState } from './state.ts';
import type { Store } from './store.ts';

/** Draws the state; the focus stays on the element of the same id, or goes to the first field that needs mending. */
export function render(store: Store): void {
  const state = store.get();
  const focused = document.activeElement?.id ?? '';
  document.getElementById('view')?.replaceChildren(viewOf(store));
  document.getElementById('view')?.setAttribute('aria-busy', String(state.busy !== ''));
  drawStatus(state);
  const broken = document.querySelector<HTMLElement>('[aria-invalid="true"]');
  if (broken) broken.focus();
  else if (focused !== '') document.getElementById(focused)?.focus();
}

function viewOf(store: Store): HTMLElement {
  switch (store.get().view) {
    case 'plan':
      return planView(store);
    case 'log':
      return logView(store);
    case 'logged':
      return loggedView(store);
  }
}

/** The one live region: it stays in the page, only its text changes, so that it is read out. */
function drawStatus({ busy, notice }: PageState): void {
  const status = document.getElementById('status');
  if (status === null) return;
  status.className = busy !== '' ? 'busy' : (notice?.kind ?? '');
  status.replaceChildren(...(busy !== '' ? [busy] : noticeParts(notice)));
}

function noticeParts(notice: PageState['notice']): readonly (Node | string)[] {
  if (notice === undefined) return [];
  const word = el('strong', {}, notice.kind === 'problem' ? 'Please mend: ' : 'Done: ');
  const [only = '', ...more] = notice.texts;
  if (more.length === 0) return [word, only];
  return [word, el('ul', {}, ...notice.texts.map((text) => el('li', {}, text)))];
}
