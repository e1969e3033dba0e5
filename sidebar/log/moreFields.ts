import { TEAR_KEYS, TEAR_TESTS } from '../../shared/book/tables/pourLog.ts';
import { type FormKey, fieldsFor } from '../../shared/log/formColumn.ts';
import { folded } from '../page/folded.ts';
import { labeled } from '../page/labeled.ts';
import { selectOf } from '../page/selectOf.ts';
import type { Store } from '../panel/store.ts';
import type { LogView } from '../panel/view.ts';
import { errorOf, inputLooks, labelOf, logField } from './logField.ts';
import { typeInto } from './openLog.ts';

/** A tear test of each joint and several weights, folded away until they are wanted, or something in them is. */
export function moreFields(view: LogView, store: Store): HTMLElement {
  const { form, draft, problems } = view;
  const fields = fieldsFor(form.layers.length);
  const joints = TEAR_KEYS.filter((key) => fields.includes(key));
  const keys: readonly FormKey[] = [...joints, 'weights'];
  const made = folded(
    joints.length === 0 ? 'Several weights' : 'Each joint by itself, several weights',
    ...joints.map((key) => jointField(key, view, store)),
    logField('weights', view, store),
  );
  made.id = 'more';
  made.open = keys.some(
    (key) => (draft.values[key] ?? '') !== '' || problems.some(({ field }) => field === key),
  );
  return made;
}

/** How one joint came apart; blank goes with the tear test of the piece. */
function jointField(key: (typeof TEAR_KEYS)[number], view: LogView, store: Store): HTMLElement {
  const select = selectOf(inputLooks(key, view), view.draft.values[key] ?? '', [
    ['', 'as the piece'],
    ...TEAR_TESTS.map((test) => [test, test] as const),
  ]);
  select.addEventListener('change', () => typeInto(store, key, select.value));
  return labeled(labelOf(key, view.form), select, ...errorOf(key, view));
}
