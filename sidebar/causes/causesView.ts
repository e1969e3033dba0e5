import type { CausesSummary } from '../../shared/outcomes/causes/causesSummary.ts';
import { countText } from '../../shared/words/quantityText.ts';
import { choiceField } from '../page/choiceField.ts';
import { el } from '../page/el.ts';
import type { Store } from '../panel/store.ts';
import type { ViewOf } from '../panel/view.ts';
import { isBusy, workButton } from '../panel/workButton.ts';
import { returnToPlan } from '../plan/readSelected.ts';
import { causeParts } from './causeParts.ts';
import { openCauses, printCauses } from './openCauses.ts';
import { roundLine } from './roundLine.ts';

/** What went wrong in one round of the log. */
export function causesView({ causes }: ViewOf<'causes'>, store: Store): HTMLElement {
  return el(
    'div',
    {},
    el('h1', { tabindex: '-1' }, 'What went wrong'),
    ...bodyOf(causes, store),
    el(
      'div',
      { class: 'actions' },
      ...(causes.shown === undefined
        ? []
        : [workButton({ id: 'printCauses', label: 'Open to print' }, store, printCauses)]),
      workButton({ id: 'selectedCauses', label: 'Read the selected row of Pour log' }, store, () =>
        openCauses(store, { from: 'selected' }),
      ),
      workButton({ id: 'plan', label: 'Back to the plan' }, store, returnToPlan),
    ),
  );
}

function bodyOf(causes: CausesSummary, store: Store): readonly HTMLElement[] {
  const { shown } = causes;
  if (shown === undefined)
    return [
      el(
        'p',
        { class: 'empty' },
        'No round of Pour log has a bad piece or a joint that gave way. After a run press Log what came out, count the bad pieces by kind, and their likely causes show here.',
      ),
    ];
  return [
    chooser(causes, store),
    el('h2', {}, `Row ${shown.row}: ${shown.label}`),
    el(
      'p',
      {},
      `${shown.pattern}, ${shown.mold}: ${shown.good} of ${countText(shown.poured, 'piece')} good.`,
    ),
    ...causeParts(shown),
  ];
}

function chooser({ rounds, shown }: CausesSummary, store: Store): HTMLElement {
  const isListed = rounds.some(({ row }) => row === shown?.row);
  const choices = shown === undefined || isListed ? rounds : [shown, ...rounds];
  return choiceField(
    {
      id: 'badRound',
      label: 'Round, the last bad one first',
      value: String(shown?.row),
      isOff: isBusy(store),
    },
    choices.map((one) => [String(one.row), roundLine(one)]),
    (row) => void openCauses(store, { row }),
  );
}
