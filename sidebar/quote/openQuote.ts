import type { QuoteForm, StartQuotePayload } from '../../shared/commands/quoteCommands.ts';
import { PRICING_KEYS, type QuoteKey } from '../../shared/money/quote/quoteFieldTypes.ts';
import { keepDraft, keptDraft } from '../panel/draft.ts';
import type { Store } from '../panel/store.ts';
import { work } from '../panel/work.ts';
import { factsKey, isAskable, type QuoteOnShow } from './quoteOnShow.ts';

/**
 * Opens the quote of an order, of the selected row, or a blank one. What was typed for it and is not known to be written comes
 * back with its own token, so that sending it again cannot make two quotes.
 */
export async function openQuote(store: Store, from: StartQuotePayload): Promise<void> {
  const form = await work(store, 'Opening the quote…', 'startQuote', from);
  if (form === undefined) return;
  const kept = keptDraft(form.order, 'quote');
  const onShow = fresh(form);
  const quote: QuoteOnShow =
    kept === undefined
      ? onShow
      : {
          ...onShow,
          form: { ...form, token: kept.token },
          values: { ...onShow.values, ...kept.values },
        };
  store.set({ view: 'quote', quote, notice: undefined, problems: [] });
  if (form.order === '' && kept !== undefined) await readFacts(store);
}

/** A blank form; what was typed before goes. */
export async function newQuote(store: Store): Promise<void> {
  keepDraft(undefined, 'quote');
  await openQuote(store, {});
}

function fresh(form: QuoteForm): QuoteOnShow {
  return { form, values: form.values, facts: form.facts, factsOf: factsKey(form.values) };
}

/** Follows typing; the view draws what follows from it in place. */
export function typeQuote(store: Store, key: QuoteKey, text: string): void {
  const { quote } = store.get();
  if (quote === undefined) return;
  const values = { ...quote.values, [key]: text };
  keepDraft({ order: quote.form.order, token: quote.form.token, values }, 'quote');
  store.follow({ quote: { ...quote, values } });
}

/** Works out what the typed goods cost, and again when they were changed meanwhile. */
export async function readFacts(store: Store): Promise<void> {
  for (;;) {
    const { quote } = store.get();
    if (quote === undefined || quote.form.order !== '' || !isAskable(quote.values)) return;
    const asked = factsKey(quote.values);
    const { values } = quote;
    const answer = await work(store, 'Working out the price…', 'quoteFor', { values });
    const now = store.get().quote;
    if (now === undefined) return;
    if (answer !== undefined) {
      const notice = { kind: 'done', texts: ['The price is worked out.'] } as const;
      store.set({ quote: { ...now, facts: answer.facts, factsOf: asked }, notice });
    }
    if (store.get().busy !== '' || factsKey(now.values) === asked) return;
  }
}

/** Makes the quote that is on show; the order's row and the sheet *Quotes* get it. */
export async function sendQuote(store: Store): Promise<void> {
  const { quote } = store.get();
  if (quote === undefined) return;
  const { form, values } = quote;
  const { order, token } = form;
  const terms = Object.fromEntries(PRICING_KEYS.map((key) => [key, values[key] ?? '']));
  const payload = order === '' ? { token, values } : { order, token, values: terms };
  const made = await work(store, 'Making the quote…', 'makeQuote', payload);
  if (made === undefined) return;
  keepDraft(undefined, 'quote');
  const name = `Quote ${made.quote} of order ${made.order}`;
  const texts = [
    made.made === 'now'
      ? `${name} is made. It stands in Orders and in Quotes.`
      : `${name} had been made already, so nothing was written. What you changed since is not in it.`,
  ];
  const aim = { by: values.by ?? '', aim: values.aim ?? '' };
  const next = fresh(made.form);
  store.set({
    quote: { ...next, values: { ...next.values, ...(made.made === 'now' ? aim : {}) } },
    notice: { kind: 'done', texts },
  });
}

/** The customer says yes: price, pattern version and day are fixed. */
export async function takeQuote(store: Store): Promise<void> {
  const { quote } = store.get();
  if (quote?.form.quoted === undefined) return;
  const named = { order: quote.form.order, quote: quote.form.quoted.quote };
  const answer = await work(store, 'Writing the acceptance…', 'acceptQuote', named);
  if (answer === undefined) return;
  const texts = [
    answer.accepted === 'now'
      ? `Order ${named.order} is accepted: price and pattern version are fixed.`
      : `Order ${named.order} was accepted on ${answer.on} already, so nothing was written.`,
  ];
  store.set({ quote: fresh(answer.form), notice: { kind: 'done', texts } });
}

/** Opens the page that prints the quote. */
export async function printIt(store: Store): Promise<void> {
  const { quote } = store.get();
  if (quote?.form.quoted === undefined) return;
  const named = { order: quote.form.order, quote: quote.form.quoted.quote };
  const shown = await work(store, 'Opening the print page…', 'printQuote', named);
  if (shown === undefined) return;
  store.set({ notice: { kind: 'done', texts: [`The print page of ${shown.quote} is open.`] } });
}
