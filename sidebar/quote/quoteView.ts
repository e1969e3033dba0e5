import { AIM_KINDS, type QuoteKey } from '../../shared/money/quote/quoteFieldTypes.ts';
import { readPricing } from '../../shared/money/quote/readPricing.ts';
import { turnedAim } from '../../shared/money/quote/turnedAim.ts';
import { sentence } from '../../shared/words/sentence.ts';
import { el } from '../page/el.ts';
import { facts } from '../page/facts.ts';
import { missingItem } from '../panel/mendPart.ts';
import { type Store, shown } from '../panel/store.ts';
import { type QuoteView, withProblems } from '../panel/view.ts';
import { workButton } from '../panel/workButton.ts';
import { returnToPlan } from '../plan/readSelected.ts';
import { goodsFields, pricingFields } from './goodsFields.ts';
import { newQuote, openQuote, readFacts, sendQuote, typeQuote } from './openQuote.ts';
import { priceCard, priceKey } from './priceCard.ts';
import { isCostKey, pricedNow } from './pricedNow.ts';
import { quoteButtons } from './quoteButtons.ts';
import { type Following, mark, quoteField } from './quoteField.ts';
import { shopCards } from './shopCards.ts';

/** A price with breaks and margin for an order or for what is typed, and the quote that is made of it. */
export function quoteView(quote: QuoteView, store: Store): HTMLElement {
  const { form } = quote;
  const made = el(
    'form',
    { novalidate: '', 'aria-label': 'Quote' },
    el('h1', { tabindex: '-1' }, form.order === '' ? 'Quote' : `Quote for order ${form.order}`),
    ...goodsOf(quote, store),
    // Read out as it turns; what it adds up from is not.
    el('div', { id: 'quoteKey', 'aria-live': 'polite' }, ...priceKey(quote)),
    ...termsOf(quote, store),
    el('div', { id: 'quotePrice' }, ...priceCard(quote)),
    el('div', { id: 'quoteShop' }, ...shopCards(quote)),
    el('div', { id: 'quoteActions', class: 'actions' }, ...quoteButtons(quote, store)),
    ...waysOut(store),
  );
  made.addEventListener('submit', (event) => {
    event.preventDefault();
    void submit(store);
  });
  return made;
}

/** The way on by the enter key: to the price while there is none, then to the quote. */
async function submit(store: Store): Promise<void> {
  const quote = shown(store, 'quote');
  if (quote === undefined || quote.form.notQuotable !== undefined) return;
  if (pricedNow(quote).kind === 'no facts' && quote.form.order === '') await readFacts(store);
  else await sendQuote(store);
}

function goodsOf(quote: QuoteView, store: Store): readonly HTMLElement[] {
  const { form } = quote;
  if (form.order === '')
    return [
      group(
        'What is asked for',
        goodsFields(form).map((field) => quoteField(field, quote, following(store))),
      ),
    ];
  const known = quote.facts;
  return [
    ...(form.missing.length === 0
      ? []
      : [
          el('p', {}, 'There is no price yet. Mend this on the sheets first:'),
          el('ul', { class: 'warnings' }, ...form.missing.map(missingItem)),
        ]),
    ...(known === undefined
      ? []
      : [
          facts([
            ...(known.customer === '' ? [] : [['Customer', known.customer] as const]),
            ['Pattern', `${known.pattern} v${known.version}`],
            ['Mold', known.mold],
            ['Quantity', String(known.quantity)],
            ...(known.due === undefined ? [] : [['Due', known.due] as const]),
          ]),
        ]),
  ];
}

function termsOf(quote: QuoteView, store: Store): readonly HTMLElement[] {
  const { form, values } = quote;
  if (form.notQuotable !== undefined)
    return [el('p', { class: 'small' }, sentence(form.notQuotable))];
  return [
    group(
      'Terms of the sale',
      pricingFields(form, values).map((field) => quoteField(field, quote, following(store))),
    ),
  ];
}

function group(legend: string, fields: readonly HTMLElement[]): HTMLElement {
  return el('fieldset', {}, el('legend', {}, legend), ...fields);
}

/** Prices turn at each key; what is wrong is said when the field is left. */
function following(store: Store): Following {
  return {
    typed: (key, text) => {
      if (key === 'by') turnAim(store, text);
      typeQuote(store, key, text);
      drawFigures(store);
    },
    done: (key) => {
      if (key === 'by') store.set({ view: withProblems(store.get().view, []) });
      else if (isCostKey(key)) void readFacts(store);
      else markTerms(store, key);
    },
  };
}

/** Another way to set the price starts with the price on show, so that nothing jumps. */
function turnAim(store: Store, to: string): void {
  const quote = shown(store, 'quote');
  const kind = AIM_KINDS.find((one) => one === to);
  if (quote === undefined || kind === undefined) return;
  const known = quote.facts;
  const read = known && readPricing(quote.values, known.shop);
  const text = known && read?.kind === 'pricing' ? turnedAim(known, read.pricing, kind) : '';
  typeQuote(store, 'aim', text);
}

function markTerms(store: Store, key: QuoteKey): void {
  const quote = shown(store, 'quote');
  const shop = quote?.facts?.shop;
  if (quote === undefined || shop === undefined) return;
  const read = readPricing(quote.values, shop);
  const problems = read.kind === 'refused' ? read.problems : [];
  const texts = problems.filter(({ field }) => field === key).map(({ text }) => sentence(text));
  mark(key, texts.join(' '));
  const others = quote.problems.filter(({ field }) => field !== key);
  const own = problems.filter(({ field }) => field === key);
  store.follow({ view: { ...quote, problems: [...others, ...own] } });
}

/** Draws what follows from the fields, and leaves the fields alone. */
function drawFigures(store: Store): void {
  const quote = shown(store, 'quote');
  if (quote === undefined) return;
  document.getElementById('quoteKey')?.replaceChildren(...priceKey(quote));
  document.getElementById('quotePrice')?.replaceChildren(...priceCard(quote));
  document.getElementById('quoteShop')?.replaceChildren(...shopCards(quote));
  document.getElementById('quoteActions')?.replaceChildren(...quoteButtons(quote, store));
}

function waysOut(store: Store): readonly HTMLElement[] {
  return [
    workButton({ id: 'quoteSelected', label: 'Quote the selected order' }, store, () =>
      openQuote(store, { from: 'selected' }),
    ),
    workButton({ id: 'quoteNew', label: 'Start a new quote' }, store, newQuote),
    workButton({ id: 'plan', label: 'Back to the plan' }, store, returnToPlan),
  ];
}
