import { countText } from '../../shared/words/quantityText.ts';
import { el } from '../page/el.ts';
import { labeled } from '../page/labeled.ts';
import type { Store } from '../panel/store.ts';
import type { LogView } from '../panel/view.ts';
import { errorOf, inputLooks, logField } from './logField.ts';
import { typeInto } from './openLog.ts';

/** Which run and round the pieces belong to: a new run, or one that has rounds in the log. */
export function runField(view: LogView, store: Store): HTMLElement {
  const { form, draft } = view;
  const chosen = draft.values['run'] ?? '';
  const listed = form.runs.some(({ run }) => run === chosen) || chosen === '';
  const runs = listed ? form.runs : [{ run: chosen, rounds: 0, nextRound: 1 }, ...form.runs];
  const options = runs.map(({ run, rounds }) =>
    el(
      'option',
      { value: run },
      rounds === 0 ? `${run}, nothing logged yet` : `${run}, ${countText(rounds, 'row')} logged`,
    ),
  );
  const select = el('select', inputLooks('run', view), ...options);
  select.value = chosen;
  const round = logField('round', view, store);
  const showNext = () => {
    const next = runs.find(({ run }) => run === select.value)?.nextRound ?? 1;
    round.querySelector('input')?.setAttribute('placeholder', `the next: ${next}`);
  };
  showNext();
  select.addEventListener('change', () => {
    typeInto(store, 'run', select.value);
    showNext();
  });
  return el('div', {}, labeled('Run', select, ...errorOf('run', view)), round);
}
