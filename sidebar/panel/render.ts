import { booksView } from '../books/booksView.ts';
import { causesView } from '../causes/causesView.ts';
import { dayView } from '../day/dayView.ts';
import { loggedView } from '../log/loggedView.ts';
import { logView } from '../log/logView.ts';
import { el } from '../page/el.ts';
import { planView } from '../plan/planView.ts';
import { qualityView } from '../quality/qualityView.ts';
import { quoteView } from '../quote/quoteView.ts';
import { stockView } from '../stock/stockView.ts';
import { usedView } from '../stock/usedView.ts';
import { timersView } from '../timers/timersView.ts';
import { trialsView } from '../trials/trialsView.ts';
import type { PageState } from './pageState.ts';
import type { Store } from './store.ts';
import type { View } from './view.ts';

/** Draws the state; the focus stays on the element of the same id, or goes to the first field that needs mending. */
export function render(store: Store): void {
  const state = store.get();
  const place = document.getElementById('view');
  if (place === null) return;
  const focused = document.activeElement?.id || place.dataset['focus'] || '';
  const caret = caretOf(document.activeElement);
  const shown = nameOf(state.view);
  const isOther = place.dataset['view'] !== shown && place.hasChildNodes();
  place.replaceChildren(drawnView(state.view, store));
  place.dataset['view'] = shown;
  // While the page is busy its buttons are off and hold no focus: it is remembered for the draw after.
  place.dataset['focus'] = state.busy === '' ? '' : focused;
  place.setAttribute('aria-busy', String(state.busy !== ''));
  drawStatus(state);
  if (isOther) showFromTop(place);
  else keepFocus(focused, caret);
}

/** What is on show; the form of a correction is another one than that of a new round. */
function nameOf(view: View): string {
  const entry = view.kind === 'log' ? view.form.correction?.entry.entry : undefined;
  return entry === undefined ? view.kind : `correction of ${entry}`;
}

/** A new view starts at its heading, for the eye and for the ear. */
function showFromTop(place: HTMLElement): void {
  window.scrollTo(0, 0);
  place.querySelector<HTMLElement>('h1')?.focus({ preventScroll: true });
}

function keepFocus(focused: string, caret: number | null): void {
  const broken = document.querySelector<HTMLElement>('[aria-invalid="true"]');
  if (broken) {
    broken.focus();
    return;
  }
  const place = focused === '' ? null : document.getElementById(focused);
  place?.focus();
  if (place && caret !== null && caretOf(place) !== null)
    (place as HTMLInputElement).setSelectionRange(caret, caret); // only a text field has a caret
}

/** Where typing goes on in a text field: an answer that comes meanwhile must not move it. */
function caretOf(place: Element | null): number | null {
  return place instanceof HTMLInputElement ? place.selectionStart : null;
}

function drawnView(view: View, store: Store): HTMLElement {
  switch (view.kind) {
    case 'plan':
      return planView(store);
    case 'log':
      return logView(view, store);
    case 'logged':
      return loggedView(view, store);
    case 'trials':
      return trialsView(view, store);
    case 'use':
      return usedView(view, store);
    case 'stock':
      return stockView(view, store);
    case 'quality':
      return qualityView(view, store);
    case 'causes':
      return causesView(view, store);
    case 'quote':
      return quoteView(view, store);
    case 'books':
      return booksView(view, store);
    case 'day':
      return dayView(view, store);
    case 'timers':
      return timersView(view, store);
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
