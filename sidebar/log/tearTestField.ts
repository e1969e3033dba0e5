import { TEAR_TESTS } from '../../shared/book/tables/pourLog.ts';
import { el } from '../page/el.ts';
import type { Store } from '../panel/store.ts';
import type { LogView } from '../panel/view.ts';

import { errorOf } from './logField.ts';
import { typeInto } from './openLog.ts';

/** How a torn piece came apart, as buttons large enough for a glove. */
export function tearTestField(view: LogView, store: Store): HTMLElement {
  const chosen = view.draft.values['tearTest'] ?? '';
  const isBroken = view.problems.some(({ field }) => field === 'tearTest');
  const choices = TEAR_TESTS.map((test, index) => {
    const id = index === 0 ? 'tearTest' : `tearTest-${index}`;
    const input = el('input', {
      type: 'radio',
      name: 'tearTest',
      id,
      value: test,
      'aria-invalid': isBroken && index === 0 ? 'true' : undefined,
      'aria-describedby': isBroken ? 'tearTest-error' : undefined,
    });
    input.checked = test === chosen;
    input.addEventListener('change', () => typeInto(store, 'tearTest', test));
    return el('label', { class: 'choice', for: id }, input, test);
  });
  return el(
    'fieldset',
    {},
    el('legend', {}, 'Tear test across the layers (needed)'),
    ...choices,
    ...errorOf('tearTest', view),
  );
}
