import { TEAR_KEYS, TEAR_TESTS } from '../../shared/book/tables/pourLog.ts';
import type { LogForm } from '../../shared/commands/logCommands.ts';
import { type FormKey, fieldsFor } from '../../shared/log/formColumn.ts';
import { el } from '../page/el.ts';
import type { Store } from '../panel/store.ts';
import { typeInto } from '../plan/readSelected.ts';
import { errorOf, inputLooks, labelOf, logField } from './logField.ts';

/** A tear test of each joint and several weights, folded away until they are wanted, or something in them is. */
export function moreFields(form: LogForm, store: Store): HTMLElement {
  const fields = fieldsFor(form.layers.length);
  const joints = TEAR_KEYS.filter((key) => fields.includes(key));
  const keys: readonly FormKey[] = [...joints, 'weights'];
  const { draft, problems } = store.get();
  const isWanted = keys.some(
    (key) => (draft?.values[key] ?? '') !== '' || problems.some(({ field }) => field === key),
  );
  const label = joints.length === 0 ? 'Several weights' : 'Each joint by itself, several weights';
  return el(
    'details',
    { id: 'more', class: 'more', open: isWanted ? '' : undefined },
    el('summary', {}, label),
    ...joints.map((key) => jointField(key, form, store)),
    logField('weights', form, store),
  );
}

/** How one joint came apart; blank goes with the tear test of the piece. */
function jointField(key: (typeof TEAR_KEYS)[number], form: LogForm, store: Store): HTMLElement {
  const options = TEAR_TESTS.map((test) => el('option', { value: test }, test));
  const select = el(
    'select',
    inputLooks(key, store),
    el('option', { value: '' }, 'as the piece'),
    ...options,
  );
  select.value = store.get().draft?.values[key] ?? '';
  select.addEventListener('change', () => typeInto(store, key, select.value));
  return el(
    'div',
    { class: 'field' },
    el('label', { for: key }, labelOf(key, form)),
    select,
    ...errorOf(key, store),
  );
}
