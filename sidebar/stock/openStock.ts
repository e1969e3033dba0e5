import type { UseForm, UsePosted } from '../../shared/commands/stockCommands.ts';
import { amountField } from '../../shared/money/stock/recordsOfUse.ts';
import type { UseReason } from '../../shared/money/stock/runUse.ts';
import type { LoggedRun } from '../../shared/money/stock/unpostedRuns.ts';
import { formatPlain } from '../../shared/units/formatPlain.ts';
import { countText } from '../../shared/words/quantityText.ts';
import { sentence } from '../../shared/words/sentence.ts';
import { lastView } from '../panel/pageState.ts';
import { type Store, shown } from '../panel/store.ts';
import { done, work } from '../panel/work.ts';

/** Shows what a logged run takes out of stock. */
export async function openUse(store: Store, { order, run }: LoggedRun): Promise<void> {
  const use = await work(store, 'Working out the material…', 'startUse', { order, run });
  if (use === undefined) return;
  const view = { kind: 'use', use, amounts: plannedAmounts(use), problems: [] } as const;
  store.set({ view, notice: undefined });
}

/** To four digits: no scale at the bench has more. */
function plannedAmounts({ lines }: UseForm): Readonly<Record<string, string>> {
  const open = lines.filter(({ used }) => used === undefined);
  return Object.fromEntries(
    open.map(({ key, planned }) => [
      amountField('used', key),
      formatPlain(Number(planned.toPrecision(4))),
    ]),
  );
}

/** Follows typing; nothing is drawn. */
export function typeAmount(store: Store, field: string, text: string): void {
  const view = shown(store, 'use');
  if (view === undefined) return;
  store.follow({ view: { ...view, amounts: { ...view.amounts, [field]: text } } });
}

/** Writes what was used and scrapped; what stands in the book already is not written again. */
export async function sendUse(store: Store): Promise<void> {
  const view = shown(store, 'use');
  if (view === undefined) return;
  const { use, amounts } = view;
  const typed = (reason: UseReason) =>
    Object.fromEntries(
      use.lines
        .filter((line) => line[reason] === undefined)
        .map(({ key }) => [key, amounts[amountField(reason, key)] ?? ''])
        .filter(([, text]) => reason === 'used' || text !== ''),
    );
  const { order, run } = use;
  const payload = { order, run, amounts: typed('used'), scrapped: typed('scrapped') };
  const posted = await work(store, 'Writing to Stock moves…', 'postUse', payload);
  if (posted === undefined) return;
  const kind = posted.negative.length > 0 ? 'problem' : 'done';
  store.set({
    view: { ...view, use: posted.use, amounts: {}, problems: [] },
    notice: { kind, texts: postedTexts(posted) },
  });
}

function postedTexts({ posted, rows, use, negative }: UsePosted): readonly string[] {
  if (posted === 'before')
    return [`Nothing was written: Stock moves holds the material of run ${use.run} already.`];
  const place =
    rows.length === 1 ? `row ${rows[0]}` : `rows ${rows[0]} to ${rows[rows.length - 1]}`;
  return [
    `${countText(rows.length, 'row')} of run ${use.run} written to Stock moves, ${place}.`,
    ...negative.map((text) => `Stock moves, ${sentence(text)}`),
  ];
}

/** Shows what is in stock and what to buy. */
export async function openStock(store: Store): Promise<void> {
  const stock = await work(store, 'Reading the stock…', 'readStock', {});
  if (stock === undefined) return;
  const { lotName = '', trace } = lastView(store.get(), 'stock') ?? {};
  const text = stock.lines.length === 0 ? 'Stock read: nothing has moved yet.' : 'Stock read.';
  store.set({ view: { kind: 'stock', stock, lotName, trace, problems: [] }, notice: done(text) });
}

/** Follows typing; nothing is drawn. */
export function typeLot(store: Store, lotName: string): void {
  const view = shown(store, 'stock');
  if (view !== undefined) store.follow({ view: { ...view, lotName } });
}

/** Finds a lot, an order or a run in the moves. */
export async function findLot(store: Store): Promise<void> {
  const name = shown(store, 'stock')?.lotName.trim() ?? '';
  const trace = await work(store, 'Looking for it…', 'traceLot', { name });
  const view = shown(store, 'stock');
  if (trace === undefined || view === undefined) return;
  const found = trace.ofLot.length + trace.ofOrder.length;
  const notice = done(`${countText(found, 'move')} found for ${name}.`);
  store.set({ view: { ...view, trace }, notice });
}

/** Opens the purchase list as a page to print. */
export async function openPurchases(store: Store): Promise<void> {
  const opened = await work(store, 'Opening the purchase list…', 'showPurchases', {});
  if (opened === undefined) return;
  store.set({ notice: done('The purchase list is open.') });
}
