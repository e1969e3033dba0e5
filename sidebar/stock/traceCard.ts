import type { TraceAnswer } from '../../shared/commands/stockCommands.ts';
import { lotText, packAmountText } from '../../shared/money/packAmountText.ts';
import type { TraceLine } from '../../shared/money/stock/lotTrace.ts';
import { card } from '../page/card.ts';
import { el } from '../page/el.ts';
import { labeled } from '../page/labeled.ts';
import { list } from '../page/list.ts';
import type { Store } from '../panel/store.ts';
import type { StockView } from '../panel/view.ts';
import { isBusy, workButton } from '../panel/workButton.ts';
import { findLot, typeLot } from './openStock.ts';

/** Most moves that are listed at once. */
const MOST_LINES = 100;

/** A field to type a lot or an order into, and both ways from it. */
export function traceCard({ trace, lotName, problems }: StockView, store: Store): HTMLElement {
  const isBroken = problems.some(({ field }) => field === 'name');
  const input = el('input', {
    id: 'lotName',
    type: 'text',
    autocomplete: 'off',
    maxlength: '60',
    value: lotName,
    'aria-invalid': isBroken ? 'true' : undefined,
  });
  input.disabled = isBusy(store);
  input.addEventListener('input', () => typeLot(store, input.value));
  const form = el(
    'form',
    {},
    labeled('Lot, order or run', input),
    workButton({ id: 'findLot', label: 'Find' }, store, findLot),
  );
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    void findLot(store);
  });
  return card('Where did a lot go?', form, ...(trace ? answerOf(trace) : []));
}

function answerOf({ name, ofLot, ofOrder }: TraceAnswer): readonly HTMLElement[] {
  if (ofLot.length + ofOrder.length === 0)
    return [el('p', { class: 'empty' }, `No move of ${name} is in Stock moves.`)];
  return [
    ...listOf(`Lot ${name}`, ofLot.map(lotWords)),
    ...listOf(`In order or run ${name}`, ofOrder.map(orderWords)),
  ];
}

function listOf(heading: string, texts: readonly string[]): readonly HTMLElement[] {
  if (texts.length === 0) return [];
  const more = texts.length - MOST_LINES;
  return [
    el('h3', {}, heading),
    list(texts.slice(0, MOST_LINES), 'doses'),
    ...(more > 0 ? [el('p', { class: 'small' }, `And ${more} more rows.`)] : []),
  ];
}

function lotWords(line: TraceLine): string {
  const { reason, order, run, material } = line;
  const place = [order && `order ${order}`, run && `run ${run}`].filter((one) => one !== '');
  const where = place.length === 0 ? '' : ` for ${place.join(', ')}`;
  return `${material}: ${amountOf(line)} ${reason}${where}${endOf(line)}`;
}

function orderWords(line: TraceLine): string {
  const { reason, lot, material } = line;
  return `${material}, ${lotText(lot)}: ${amountOf(line)} ${reason}${endOf(line)}`;
}

function amountOf({ amount, unit }: TraceLine): string {
  return packAmountText(Math.abs(amount), unit);
}

/** Where it stands, and that nobody named the lot where that is so. */
function endOf({ date, row, reason, isLotNamed }: TraceLine): string {
  const isSure = isLotNamed || reason === 'purchase';
  return ` (${date}, row ${row}${isSure ? '' : ', lot not named: the oldest'})`;
}
