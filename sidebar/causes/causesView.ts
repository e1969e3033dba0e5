import type { CausesSummary } from '../../shared/outcomes/causes/causesSummary.ts';
import { countText } from '../../shared/words/quantityText.ts';
import { button, el } from '../page/el.ts';
import type { Store } from '../panel/store.ts';
import { leaveTrials } from '../trials/openTrials.ts';
import { causeParts } from './causeParts.ts';
import { openCauses, printCauses } from './openCauses.ts';
import { roundLine } from './roundLine.ts';

/** What went wrong in one round of the log. */
export function causesView(store: Store): HTMLElement {
  const { causes, busy } = store.get();
  const isOff = busy !== '';
  return el(
    'div',
    {},
    el('h1', { tabindex: '-1' }, 'What went wrong'),
    ...(causes ? bodyOf(causes, store) : []),
    el(
      'div',
      { class: 'actions' },
      ...(causes?.shown === undefined
        ? []
        : [
            button(
              { id: 'printCauses', label: 'Open to print', isOff },
              () => void printCauses(store),
            ),
          ]),
      button(
        { id: 'selectedCauses', label: 'Read the selected row of Pour log', isOff },
        () => void openCauses(store, { from: 'selected' }),
      ),
      button({ id: 'plan', label: 'Back to the plan', isOff }, () => void leaveTrials(store)),
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
  const options = choices.map((one) => {
    const option = el('option', { value: String(one.row) }, roundLine(one));
    option.selected = one.row === shown?.row;
    return option;
  });
  const select = el('select', { id: 'badRound' }, ...options);
  select.disabled = store.get().busy !== '';
  select.addEventListener('change', () => void openCauses(store, { row: select.value }));
  return el(
    'div',
    { class: 'field' },
    el('label', { for: 'badRound' }, 'Round, the last bad one first'),
    select,
  );
}
