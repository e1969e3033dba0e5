import type { QuoteForm } from '../../shared/commands/quoteCommands.ts';
import { moneyText } from '../../shared/words/moneyText.ts';
import { el } from '../page/el.ts';
import type { Store } from '../panel/store.ts';
import type { QuoteView } from '../panel/view.ts';
import { isBusy, workButton } from '../panel/workButton.ts';
import { printIt, readFacts, takeQuote } from './openQuote.ts';
import { pricedNow } from './pricedNow.ts';

/** What can be done with the price on show: quote it, print the quote, take the customer's yes. */
export function quoteButtons(quote: QuoteView, store: Store): readonly HTMLElement[] {
  const { form } = quote;
  const change = changeOf(quote);
  return [
    ...(form.notQuotable === undefined ? [makeButton(quote, store)] : []),
    ...statusOf(quote, change),
    ...quotedButtons(form, store),
  ];
}

/** Each names the quote that it is about. */
function quotedButtons(
  { quoted, accepted, notQuotable, currency }: QuoteForm,
  store: Store,
): readonly HTMLElement[] {
  if (quoted?.total === undefined) return [];
  const { quote, total, isExpired } = quoted;
  const print = workButton({ id: 'printQuote', label: `Print quote ${quote}` }, store, printIt);
  if (accepted !== undefined || notQuotable !== undefined) return [print];
  const label = `The customer accepts ${quote}: ${moneyText(total, currency)}`;
  return [print, workButton({ id: 'accept', label, isOff: isExpired }, store, takeQuote)];
}

function makeButton(quote: QuoteView, store: Store): HTMLElement {
  const priced = pricedNow(quote);
  if (priced.kind === 'no facts' && quote.form.order === '')
    return workButton({ id: 'showPrice', label: 'Show the price', look: 'main' }, store, readFacts);
  // Once it is quoted at this price, there is nothing to make.
  const isQuoted = quote.form.quoted?.total !== undefined && changeOf(quote) === '';
  const hasPrice = priced.kind === 'prices' && priced.prices.price.kind === 'price';
  const made = el(
    'button',
    { id: 'makeQuote', type: 'submit', class: isQuoted ? 'plain' : 'main' },
    quote.form.quoted === undefined ? 'Make the quote' : 'Make the quote again',
  );
  made.disabled = isBusy(store) || !hasPrice;
  return made;
}

/** What the quote that was made says, and how that differs from what is on show. */
function statusOf({ form }: QuoteView, change: string): readonly HTMLElement[] {
  const { quoted, accepted, currency } = form;
  const lines: string[] = [];
  if (quoted !== undefined)
    lines.push(
      quoted.total === undefined
        ? `Quote ${quoted.quote} is not in Quotes: it cannot be printed or accepted here.`
        : `Quote ${quoted.quote} of ${quoted.quotedOn}: ${moneyText(quoted.total, currency)} in all, ${quoted.isExpired ? 'expired on' : 'valid until'} ${quoted.validUntil}.`,
    );
  if (accepted !== undefined) {
    const price = accepted.price === undefined ? '' : ` at ${moneyText(accepted.price, currency)}`;
    lines.push(`Accepted on ${accepted.on}${price}.`);
  }
  if (change !== '') lines.push(change);
  return lines.map((text) => el('p', { class: 'small' }, text));
}

/** The quote in the book need not be the price on show: nobody should take one for the other. */
function changeOf(quote: QuoteView): string {
  const { quoted, accepted, notQuotable } = quote.form;
  if (quoted?.total === undefined || accepted !== undefined || notQuotable !== undefined) return '';
  const priced = pricedNow(quote);
  const now =
    priced.kind === 'prices' && priced.prices.price.kind === 'price'
      ? priced.prices.price.total
      : undefined;
  if (now === quoted.total) return '';
  return `What is on show is another price than quote ${quoted.quote}, which is printed and accepted as it was made. Make the quote again to change it.`;
}
