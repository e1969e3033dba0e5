import { DEFECT_KEYS } from '../../shared/book/tables/pourLog.ts';
import type { LogForm } from '../../shared/commands/logCommands.ts';
import { type FormKey, fieldsFor } from '../../shared/log/formColumn.ts';
import { button, el } from '../page/el.ts';
import type { Store } from '../panel/store.ts';
import type { LogView } from '../panel/view.ts';
import { isBusy } from '../panel/workButton.ts';
import { showPlan } from '../plan/readSelected.ts';
import { correctionCard, loggedEntryText } from './correctionCard.ts';
import { logField } from './logField.ts';
import { moreFields } from './moreFields.ts';
import { openLog, sendLog } from './openLog.ts';
import { runField } from './runField.ts';
import { tearTestField } from './tearTestField.ts';

/** The log form of an order. What is typed stays until the workbook says that it is written. */
export function logView(view: LogView, store: Store): HTMLElement {
  const made = el(
    'form',
    { novalidate: '', 'aria-label': 'What came out' },
    ...partsOf(view, store),
  );
  made.addEventListener('submit', (event) => {
    event.preventDefault();
    void sendLog(store);
  });
  const all = el('fieldset', { class: 'whole' }, made);
  all.disabled = isBusy(store);
  return all;
}

function partsOf(view: LogView, store: Store): readonly HTMLElement[] {
  const { form } = view;
  const fields = fieldsFor(form.layers.length);
  const group = (legend: string, keys: readonly FormKey[], look = '') =>
    el(
      'fieldset',
      { class: look },
      el('legend', {}, legend),
      ...keys.filter((key) => fields.includes(key)).map((key) => logField(key, view, store)),
    );
  const readings: readonly FormKey[] = fields.filter((key) => /^(moldTop|pour\d|gap\d)/.test(key));
  return [
    el('h1', { tabindex: '-1' }, headingOf(form)),
    ...aboutCorrection(form),
    el(
      'p',
      {},
      `${form.pattern} v${form.version}, ${form.mold}. ${form.good} of ${form.quantity} good logged so far.`,
    ),
    runField(view, store),
    logField('who', view, store),
    group('Readings', readings),
    group('Pieces', ['poured', 'good'], 'pair'),
    group('Bad pieces by kind; blank is none', DEFECT_KEYS, 'pair'),
    tearTestField(view, store),
    logField('pieceWeight', view, store),
    moreFields(view, store),
    logField('notes', view, store),
    actionsOf(form, store),
    ...(form.correction ? [] : [correctionCard(form, store)]),
  ];
}

function headingOf({ order, correction }: LogForm): string {
  return correction ? `Correct row ${correction.entry.row}, order ${order}` : `Log order ${order}`;
}

function aboutCorrection({ correction }: LogForm): readonly HTMLElement[] {
  if (correction === undefined) return [];
  const text = `${loggedEntryText(correction.entry)}. What you write becomes a new row; row ${correction.entry.row} stays on the sheet and counts nowhere.`;
  return [el('p', {}, text)];
}

function actionsOf({ correction }: LogForm, store: Store): HTMLElement {
  const label = correction ? 'Write the correction' : 'Write to the log';
  const send = el(
    'button',
    { id: 'send', type: 'submit', class: 'main' },
    isBusy(store) ? 'Writing…' : label,
  );
  const back = button({ id: 'back', label: 'Back to the plan' }, () => showPlan(store));
  return el(
    'div',
    { class: 'actions' },
    send,
    ...(correction
      ? [button({ id: 'another', label: 'Log a new round instead' }, () => void openLog(store))]
      : []),
    back,
    el('p', { class: 'small' }, 'What you typed is kept when you go back.'),
  );
}
