import { el } from '../page/el.ts';
import { labeled } from '../page/labeled.ts';
import type { Store } from './store.ts';
import { isBusy } from './workButton.ts';

/** Initials, typed once for every view that asks for them. */
export function whoField(label: string, store: Store): HTMLElement {
  const input = el('input', { id: 'who', type: 'text', maxlength: '20', value: store.get().who });
  input.disabled = isBusy(store);
  input.addEventListener('input', () => store.follow({ who: input.value }));
  return labeled(label, input);
}
