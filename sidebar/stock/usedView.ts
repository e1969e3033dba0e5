import { amountField } from '../../shared/money/stock/recordsOfUse.ts';
import type { UseLine, UseReason } from '../../shared/money/stock/runUse.ts';
import { countText } from '../../shared/words/quantityText.ts';
import { button, el } from '../page/el.ts';
import { sentence } from '../page/sentence.ts';
import type { Store } from '../panel/store.ts';
import { leaveTrials } from '../trials/openTrials.ts';
import { openStock, sendUse, typeAmount } from './openStock.ts';
import { lotText, packAmountText } from './packAmountText.ts';

/** What a run takes out of stock, to be weighed against the bench and written. */
export function usedView(store: Store): HTMLElement {
  const { use, busy } = store.get();
  if (use === undefined) return el('div');
  const isOff = busy !== '';
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
    ...use.lines.map((line, index) => lineCard(line, index, store)),
    ...(use.lines.length === 0 ? [emptyText()] : []),
    el(
      'div',
      { class: 'actions' },
      button(
        { id: 'post', label: 'Take out of stock', look: 'main', isOff: isOff || !isOpen },
        () => void sendUse(store),
      ),
      button({ id: 'toStock', label: 'Stock', isOff }, () => void openStock(store)),
      button({ id: 'plan', label: 'Back to the plan', isOff }, () => void leaveTrials(store)),
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

function lineCard(line: UseLine, index: number, store: Store): HTMLElement {
  const { material, lot, unit, onHand, note } = line;
  return el(
    'section',
    { class: 'card' },
    el('h2', {}, material),
    el(
      'p',
      { class: 'small' },
      `${sentence(lotText(lot))} On hand ${packAmountText(onHand, unit)}.`,
    ),
    ...(note === undefined ? [] : [el('p', { class: 'small' }, sentence(note))]),
    ...(['used', 'scrapped'] as const).map((reason) => amountPart(line, reason, index, store)),
  );
}

const LABELS = { used: 'Used', scrapped: 'Scrapped' } as const;

function amountPart(line: UseLine, reason: UseReason, index: number, store: Store): HTMLElement {
  const posted = line[reason];
  if (posted) {
    const where = posted.rows.length === 1 ? 'row' : 'rows';
    return el(
      'p',
      {},
      `${LABELS[reason]}: ${packAmountText(posted.amount, line.unit)}, in ${where} ${posted.rows.join(', ')} of Stock moves${reason === 'used' ? ` (planned ${packAmountText(line.planned, line.unit)})` : ''}.`,
    );
  }
  return amountInput(line, reason, `${reason}${index}`, store);
}

function amountInput(line: UseLine, reason: UseReason, id: string, store: Store): HTMLElement {
  const { amounts, problems, busy } = store.get();
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
  input.disabled = busy !== '';
  input.addEventListener('input', () => typeAmount(store, field, input.value));
  const words = broken.map(({ text }) => sentence(text)).join(' ');
  return el(
    'div',
    { class: 'field' },
    el('label', { for: id }, label),
    input,
    ...(isBroken ? [el('p', { id: `${id}-error`, class: 'error' }, words)] : []),
  );
}
