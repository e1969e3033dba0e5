import { piecesEvidenceText } from '../../shared/plan/piecesEvidenceText.ts';
import type { OrderPlan, Warning } from '../../shared/plan/planTypes.ts';
import { countText, shareText } from '../../shared/words/quantityText.ts';
import { sentence } from '../../shared/words/sentence.ts';
import { openBooks } from '../books/openBooks.ts';
import { openCauses } from '../causes/openCauses.ts';
import { openDay } from '../day/openDay.ts';
import { openLog } from '../log/openLog.ts';
import { card } from '../page/card.ts';
import { el } from '../page/el.ts';
import { labeled } from '../page/labeled.ts';
import type { OrderOnShow } from '../panel/pageState.ts';
import type { Store } from '../panel/store.ts';
import { isBusy, workButton } from '../panel/workButton.ts';
import { openQuality } from '../quality/openQuality.ts';
import { openQuote } from '../quote/openQuote.ts';
import { openStock } from '../stock/openStock.ts';
import { openTimers } from '../timers/openTimers.ts';
import { openTrials } from '../trials/openTrials.ts';
import { layerCard } from './layerCard.ts';
import { makeSheet, printSheet, seeHeat } from './makeSheet.ts';
import { missingView } from './missingView.ts';
import { plateCard } from './plateCard.ts';
import { planAgain, readSelected } from './readSelected.ts';
import { workCard } from './workCard.ts';

/** The plan of an order and what can be done with it. */
export function planView(store: Store): HTMLElement {
  const { onShow } = store.get();
  const order = onShow?.plan.order ?? '';
  const to = (id: string, label: string, open: (store: Store) => Promise<void>) =>
    workButton({ id, label }, store, open);
  return el(
    'div',
    {},
    workButton(
      { id: 'read', label: 'Read the selected order', look: onShow ? 'plain' : 'main' },
      store,
      readSelected,
    ),
    ...(onShow ? bodyOf(onShow, store) : [emptyText()]),
    to('quote', order === '' ? 'Quote' : `Quote for order ${order}`, () =>
      openQuote(store, order === '' ? {} : { order }),
    ),
    to('day', 'Pour day', openDay),
    to('openTimers', 'Timers', openTimers),
    to('stock', 'Stock', openStock),
    to('books', 'Books', openBooks),
    to('quality', 'Quality', openQuality),
    to('causes', 'What went wrong', openCauses),
    to('trials', 'Trials of your own', openTrials),
  );
}

function emptyText(): HTMLElement {
  return el(
    'p',
    { class: 'empty' },
    'Click a row on the sheet Orders, then press the button. The plan of that order shows here.',
  );
}

function bodyOf(onShow: OrderOnShow, store: Store): readonly HTMLElement[] {
  const { plan } = onShow;
  if (plan.kind === 'missing') return [missingView(plan, store)];
  return [
    headOf(plan),
    warningsOf(plan.warnings),
    piecesCard(plan),
    firstPourField(onShow, store),
    plateCard(plan),
    ...plan.layers.map((layer) => layerCard(layer, plan)),
    workCard(plan),
    actionsOf(onShow, store),
  ];
}

function headOf(plan: OrderPlan): HTMLElement {
  const molds = plan.moldsInUse === 1 ? plan.mold : `${plan.moldsInUse} × ${plan.mold}`;
  const due = plan.due === undefined ? [] : [el('p', {}, `Due ${plan.due}`)];
  const notes = plan.notes === '' ? [] : [el('p', {}, el('strong', {}, 'Note: '), plan.notes)];
  return el(
    'header',
    {},
    el('h1', { tabindex: '-1' }, `Order ${plan.order}`),
    el('p', {}, `${plan.quantity} × ${plan.pattern} v${plan.version}`),
    el('p', {}, molds),
    ...due,
    ...notes,
  );
}

function warningsOf(warnings: readonly Warning[]): HTMLElement {
  const items = warnings.map(({ text }) =>
    el('li', {}, el('strong', {}, 'Check: '), sentence(text)),
  );
  return el('ul', { class: 'warnings', 'aria-label': 'Warnings' }, ...items);
}

function piecesCard({ pieces, quantity }: OrderPlan): HTMLElement {
  return card(
    'Pieces',
    el('p', { class: 'key' }, `Pour ${pieces.toPour}`),
    el(
      'p',
      {},
      `${countText(pieces.rounds, 'round')} of ${pieces.perRound}, for ${quantity} good (chance ${shareText(pieces.attained)}).`,
    ),
    el('p', { class: 'small' }, piecesEvidenceText(pieces)),
  );
}

function firstPourField({ firstPour }: OrderOnShow, store: Store): HTMLElement {
  const input = el('input', { id: 'firstPour', type: 'time', value: firstPour });
  input.disabled = isBusy(store);
  input.addEventListener('change', () => void planAgain(store, input.value));
  return labeled('First pour at', input);
}

function actionsOf({ plan, sheet }: OrderOnShow, store: Store): HTMLElement {
  const made = sheet?.of === plan ? sheet : undefined;
  const label = made ? 'Make run sheet again' : 'Make run sheet';
  const hint = made ? `Run ${made.runId} is made.` : 'Print comes after the run sheet is made.';
  return el(
    'div',
    { class: 'actions' },
    workButton({ id: 'make', label, look: 'main' }, store, makeSheet),
    workButton({ id: 'print', label: 'Print', isOff: made === undefined }, store, printSheet),
    el('p', { class: 'small' }, hint),
    workButton({ id: 'heat', label: 'See the heat' }, store, seeHeat),
    workButton({ id: 'log', label: 'Log what came out' }, store, () => openLog(store)),
  );
}
