import { lotText, packAmountText } from '../../shared/money/packAmountText.ts';
import { amountField } from '../../shared/money/stock/recordsOfUse.ts';
import type { UseLine, UseReason } from '../../shared/money/stock/runUse.ts';
import { countText } from '../../shared/words/quantityText.ts';
import { sentence } from '../../shared/words/sentence.ts';
import { card } from '../page/card.ts';
import { el } from '../page/el.ts';
import { labeled } from '../page/labeled.ts';
import type { Store } from '../panel/store.ts';
import type { UseView } from '../panel/view.ts';
import { isBusy, workButton } from '../panel/workButton.ts';
import { returnToPlan } from '../plan/readSelected.ts';
import { openStock, sendUse, typeAmount } from './openStock.ts';

/** What a run takes out of stock, to be weighed against the bench and written. */
export function usedView(view: UseView, store: Store): HTMLElement {
  const { use } = view;
  const isOpen = use.lines.some(({ used, scrapped }) => !used || !scrapped);
  const isFresh = use.lines.every(({ used, scrapped }) => !used && !scrapped);
  return el(
    'section',
    {},
    el('h1', { tabindex: '-1' }, `Material of run ${use.run}`),
    el(
      'p',
      {},
      `Order ${use.order}: ${countText(use.poured, 'piece')} poured, ${use.good} good. Planned amounts for them stand below: put in what you weighed, also as 12.5 g or 6 drops. Blank takes nothing out.`,
    ),
    ...(isFresh ? [] : [postedNote()]),
    ...[...use.assumptions, ...use.gaps].map((text) => el('p', { class: 'small' }, sentence(text))),
    ...use.lines.map((line, index) => lineCard(line, index, view, store)),
    ...(use.lines.length === 0 ? [emptyText()] : []),
    el(
      'div',
      { class: 'actions' },
      workButton(
        { id: 'post', label: 'Take out of stock', look: 'main', isOff: !isOpen },
        store,
        sendUse,
      ),
      workButton({ id: 'toStock', label: 'Stock' }, store, openStock),
      workButton({ id: 'plan', label: 'Back to the plan' }, store, returnToPlan),
    ),
  );
}

function postedNote(): HTMLElement {
  return el(
    'p',
    { class: 'warning' },
    el('strong', {}, 'Taken out before. '),
    'What stands in Stock moves for this run is not written again. A correction is a new row on that sheet, with the run’s number: out is negative, back in is positive.',
  );
}

function emptyText(): HTMLElement {
  return el('p', { class: 'empty' }, 'No material of this run can be counted.');
}

function lineCard(line: UseLine, index: number, view: UseView, store: Store): HTMLElement {
  const { material, lot, unit, onHand, note } = line;
  return card(
    material,
    el(
      'p',
      { class: 'small' },
      `${sentence(lotText(lot))} On hand ${packAmountText(onHand, unit)}.`,
    ),
    ...(note === undefined ? [] : [el('p', { class: 'small' }, sentence(note))]),
    ...(['used', 'scrapped'] as const).map(
      (reason) =>
        postedPart(line, reason) ?? amountInput(line, reason, `${reason}${index}`, view, store),
    ),
  );
}

const LABELS = { used: 'Used', scrapped: 'Scrapped' } as const;

/** What stands in the book already; undefined where it is still to be typed. */
function postedPart(line: UseLine, reason: UseReason): HTMLElement | undefined {
  const posted = line[reason];
  if (posted === undefined) return undefined;
  const where = posted.rows.length === 1 ? 'row' : 'rows';
  return el(
    'p',
    {},
    `${LABELS[reason]}: ${packAmountText(posted.amount, line.unit)}, in ${where} ${posted.rows.join(', ')} of Stock moves${reason === 'used' ? ` (planned ${packAmountText(line.planned, line.unit)})` : ''}.`,
  );
}

function amountInput(
  line: UseLine,
  reason: UseReason,
  id: string,
  { amounts, problems }: UseView,
  store: Store,
): HTMLElement {
  const field = amountField(reason, line.key);
  const broken = problems.filter((one) => one.field === field);
  const isBroken = broken.length > 0;
  const label = `${LABELS[reason]} (${line.unit === 'each' ? 'pieces' : line.unit})`;
  const input = el('input', {
    id,
    // Fields of several materials read alike: the ear hears which one it is.
    'aria-label': `${label}, ${line.material}`,
    type: 'text',
    autocomplete: 'off',
    maxlength: '40',
    value: amounts[field] ?? '',
    'aria-invalid': isBroken ? 'true' : undefined,
    'aria-describedby': isBroken ? `${id}-error` : undefined,
  });
  input.disabled = isBusy(store);
  input.addEventListener('input', () => typeAmount(store, field, input.value));
  const words = broken.map(({ text }) => sentence(text)).join(' ');
  const error = isBroken ? [el('p', { id: `${id}-error`, class: 'error' }, words)] : [];
  return labeled(label, input, ...error);
}
