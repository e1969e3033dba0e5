import { piecesEvidenceText } from '../../shared/plan/piecesEvidenceText.ts';
import type { OrderPlan, PlanResult, Warning } from '../../shared/plan/planTypes.ts';
import { countText, shareText } from '../../shared/words/quantityText.ts';
import { openBooks } from '../books/openBooks.ts';
import { openCauses } from '../causes/openCauses.ts';
import { openDay } from '../day/openDay.ts';
import { button, el } from '../page/el.ts';
import { sentence } from '../page/sentence.ts';
import type { Store } from '../panel/store.ts';
import { openQuality } from '../quality/openQuality.ts';
import { openQuote } from '../quote/openQuote.ts';
import { openStock } from '../stock/openStock.ts';
import { openTimers } from '../timers/openTimers.ts';
import { openTrials } from '../trials/openTrials.ts';
import { layerCard } from './layerCard.ts';
import { missingView } from './missingView.ts';
import { plateCard } from './plateCard.ts';
import {
  makeSheet,
  openLog,
  planAgain,
  printSheet,
  readSelected,
  seeHeat,
} from './readSelected.ts';
import { workCard } from './workCard.ts';

/** The plan of an order and what can be done with it. */
export function planView(store: Store): HTMLElement {
  const { plan, busy } = store.get();
  const isOff = busy !== '';
  const read = button(
    { id: 'read', label: 'Read the selected order', look: plan ? 'plain' : 'main', isOff },
    () => void readSelected(store),
  );
  const trials = button(
    { id: 'trials', label: 'Trials of your own', isOff },
    () => void openTrials(store),
  );
  const quote = button(
    { id: 'quote', label: quoteLabel(plan), isOff },
    () =>
      void openQuote(store, plan === undefined || plan.order === '' ? {} : { order: plan.order }),
  );
  const books = button({ id: 'books', label: 'Books', isOff }, () => void openBooks(store));
  const quality = button({ id: 'quality', label: 'Quality', isOff }, () => void openQuality(store));
  const causes = button(
    { id: 'causes', label: 'What went wrong', isOff },
    () => void openCauses(store),
  );
  const day = button({ id: 'day', label: 'Pour day', isOff }, () => void openDay(store));
  const timers = button({ id: 'openTimers', label: 'Timers', isOff }, () => void openTimers(store));
  const stock = button({ id: 'stock', label: 'Stock', isOff }, () => void openStock(store));
  return el(
    'div',
    {},
    read,
    ...(plan ? bodyOf(plan, store) : [emptyText()]),
    quote,
    day,
    timers,
    stock,
    books,
    quality,
    causes,
    trials,
  );
}

function quoteLabel(plan: PlanResult | undefined): string {
  return plan === undefined || plan.order === '' ? 'Quote' : `Quote for order ${plan.order}`;
}

function emptyText(): HTMLElement {
  return el(
    'p',
    { class: 'empty' },
    'Click a row on the sheet Orders, then press the button. The plan of that order shows here.',
  );
}

function bodyOf(plan: PlanResult, store: Store): readonly HTMLElement[] {
  if (plan.kind === 'missing') return [missingView(plan, store)];
  return [
    headOf(plan),
    warningsOf(plan.warnings),
    piecesCard(plan),
    firstPourField(store),
    plateCard(plan),
    ...plan.layers.map((layer) => layerCard(layer, plan)),
    workCard(plan),
    actionsOf(store),
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
  return el(
    'section',
    { class: 'card' },
    el('h2', {}, 'Pieces'),
    el('p', { class: 'key' }, `Pour ${pieces.toPour}`),
    el(
      'p',
      {},
      `${countText(pieces.rounds, 'round')} of ${pieces.perRound}, for ${quantity} good (chance ${shareText(pieces.attained)}).`,
    ),
    el('p', { class: 'small' }, piecesEvidenceText(pieces)),
  );
}

function firstPourField(store: Store): HTMLElement {
  const { firstPour, busy } = store.get();
  const input = el('input', { id: 'firstPour', type: 'time', value: firstPour });
  input.disabled = busy !== '';
  input.addEventListener('change', () => void planAgain(store, input.value));
  return el('div', { class: 'field' }, el('label', { for: 'firstPour' }, 'First pour at'), input);
}

function actionsOf(store: Store): HTMLElement {
  const { busy, runId, plan, sheetOf } = store.get();
  const isOff = busy !== '';
  const isMade = runId !== '' && sheetOf === plan;
  const label = isMade ? 'Make run sheet again' : 'Make run sheet';
  const hint = isMade ? `Run ${runId} is made.` : 'Print comes after the run sheet is made.';
  return el(
    'div',
    { class: 'actions' },
    button({ id: 'make', label, look: 'main', isOff }, () => void makeSheet(store)),
    button({ id: 'print', label: 'Print', isOff: isOff || !isMade }, () => void printSheet(store)),
    el('p', { class: 'small' }, hint),
    button({ id: 'heat', label: 'See the heat', isOff }, () => void seeHeat(store)),
    button({ id: 'log', label: 'Log what came out', isOff }, () => void openLog(store)),
  );
}
