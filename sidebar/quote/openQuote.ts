import type { QuoteForm, StartQuotePayload } from '../../shared/commands/quoteCommands.ts';
import { PRICING_KEYS, type QuoteKey } from '../../shared/money/quote/quoteFieldTypes.ts';
import { keepDraft, keptDraft } from '../panel/draft.ts';
import { type Store, shown } from '../panel/store.ts';
import type { QuoteView } from '../panel/view.ts';
import { done, work } from '../panel/work.ts';
import { factsKey, isAskable } from './pricedNow.ts';

/**
 * Opens the quote of an order, of the selected row, or a blank one. What was typed for it and is not known to be written comes
 * back with its own token, so that sending it again cannot make two quotes.
 */
export async function openQuote(store: Store, from: StartQuotePayload): Promise<void> {
  const form = await work(store, 'Opening the quote…', 'startQuote', from);
  if (form === undefined) return;
  const kept = keptDraft(form.order, 'quote');
  const opened = fresh(form);
  const quote: QuoteView =
    kept === undefined
      ? opened
      : {
          ...opened,
          form: { ...form, token: kept.token },
          values: { ...opened.values, ...kept.values },
        };
  store.set({ view: quote, notice: undefined });
  if (form.order === '' && kept !== undefined) await readFacts(store);
}

/** A blank form; what was typed before goes. */
export async function newQuote(store: Store): Promise<void> {
  keepDraft(undefined, 'quote');
  await openQuote(store, {});
}

function fresh(form: QuoteForm): QuoteView {
  const { values, facts } = form;
  return { kind: 'quote', form, values, facts, factsOf: factsKey(values), problems: [] };
}

/** Follows typing; the view draws what follows from it in place. */
export function typeQuote(store: Store, key: QuoteKey, text: string): void {
  const quote = shown(store, 'quote');
  if (quote === undefined) return;
  const values = { ...quote.values, [key]: text };
  keepDraft({ order: quote.form.order, token: quote.form.token, values }, 'quote');
  store.follow({ view: { ...quote, values } });
}

/** Works out what the typed goods cost, and again when they were changed meanwhile. */
export async function readFacts(store: Store): Promise<void> {
  for (;;) {
    const quote = shown(store, 'quote');
    if (quote === undefined || quote.form.order !== '' || !isAskable(quote.values)) return;
    const asked = factsKey(quote.values);
    const { values } = quote;
    const answer = await work(store, 'Working out the price…', 'quoteFor', { values });
    const now = shown(store, 'quote');
    if (now === undefined) return;
    if (answer !== undefined) {
      const view = { ...now, facts: answer.facts, factsOf: asked };
      store.set({ view, notice: done('The price is worked out.') });
    }
    if (store.get().busy !== '' || factsKey(now.values) === asked) return;
  }
}

/** Makes the quote that is on show; the order's row and the sheet *Quotes* get it. */
export async function sendQuote(store: Store): Promise<void> {
  const quote = shown(store, 'quote');
  if (quote === undefined) return;
  const { form, values } = quote;
  const { order, token } = form;
  const terms = Object.fromEntries(PRICING_KEYS.map((key) => [key, values[key] ?? '']));
  const payload = order === '' ? { token, values } : { order, token, values: terms };
  const made = await work(store, 'Making the quote…', 'makeQuote', payload);
  if (made === undefined) return;
  keepDraft(undefined, 'quote');
  const name = `Quote ${made.quote} of order ${made.order}`;
  const text =
    made.made === 'now'
      ? `${name} is made. It stands in Orders and in Quotes.`
      : `${name} had been made already, so nothing was written. What you changed since is not in it.`;
  const aim = { by: values.by ?? '', aim: values.aim ?? '' };
  const next = fresh(made.form);
  store.set({
    view: { ...next, values: { ...next.values, ...(made.made === 'now' ? aim : {}) } },
    notice: done(text),
  });
}

/** The customer says yes: price, pattern version and day are fixed. */
export async function takeQuote(store: Store): Promise<void> {
  const quote = shown(store, 'quote');
  if (quote?.form.quoted === undefined) return;
  const named = { order: quote.form.order, quote: quote.form.quoted.quote };
  const answer = await work(store, 'Writing the acceptance…', 'acceptQuote', named);
  if (answer === undefined) return;
  const text =
    answer.accepted === 'now'
      ? `Order ${named.order} is accepted: price and pattern version are fixed.`
      : `Order ${named.order} was accepted on ${answer.on} already, so nothing was written.`;
  store.set({ view: fresh(answer.form), notice: done(text) });
}

/** Opens the page that prints the quote. */
export async function printIt(store: Store): Promise<void> {
  const quote = shown(store, 'quote');
  if (quote?.form.quoted === undefined) return;
  const named = { order: quote.form.order, quote: quote.form.quoted.quote };
  const opened = await work(store, 'Opening the print page…', 'printQuote', named);
  if (opened === undefined) return;
  store.set({ notice: done(`The print page of ${opened.quote} is open.`) });
}
